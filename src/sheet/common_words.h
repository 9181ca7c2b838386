// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Phrases that several sheets say.
#pragma once

#include "building/building.h"
#include "codebook/reference_phrase.h"
#include "words/colour.h"
#include "words/phrase.h"

#include <string_view>

namespace legwork {

// The circuit's name in this language where the job has it, else as it is called.
std::string const& name_in(std::string_view language, Circuit const& c);
// The job's key of that name: "name", "name_fr".
std::string_view name_key_in(std::string_view language, Circuit const& c);

} // namespace legwork
