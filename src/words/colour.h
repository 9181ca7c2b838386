// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "words/phrase.h"

#include <string_view>

namespace legwork {

// Of a conductor or tape, as a job or a kind of cable names it: "red", "white with red stripe", "white/blue". Words
// that name no colour stand as they are.
Phrase colour(std::string_view name);

} // namespace legwork
