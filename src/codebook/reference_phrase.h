// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A reference as sheets say it, in the words of source.h in English.
#pragma once

#include "codebook/source.h"
#include "words/phrase.h"

namespace legwork {

// "210.4(B)", "28-108 (section number from memory)"; nothing when no code speaks of it.
Phrase section_phrase(Reference const& reference);
// "NEC 2023 210.4(B)", "common practice", "NEC 2023 (not read yet)".
Phrase reference_phrase(Reference const& reference);

} // namespace legwork
