// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <span>
#include <string>
#include <string_view>

namespace legwork {

// The known word that `word` is most likely a misspelling of, or empty: letters of either case count the same, one
// swapped, missing, extra or wrong letter counts one, and a third of the word may be wrong. First in the list on a tie.
std::string nearest(std::string_view word, std::span<std::string const> known);

// The way out for an unknown word: `did you mean "length"?` (of the first word of several names each of them), else the
// known words when they are few (`write one of: ...`), else `otherwise`.
std::string did_you_mean(std::string_view word, std::span<std::string const> known, std::string_view otherwise);

} // namespace legwork
