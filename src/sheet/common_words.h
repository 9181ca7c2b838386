// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Phrases that several sheets say.
#pragma once

#include "codebook/reference_phrase.h"
#include "words/phrase.h"

#include <string_view>

namespace legwork {

// Of a conductor or tape, as a job or a kind of cable names it: "red", "white with red stripe", "white/blue".
Phrase colour(std::string_view name);

} // namespace legwork
