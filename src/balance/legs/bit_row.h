// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Rows of bits, 64 to a word, the lowest first.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>

namespace legwork {

struct BitRow {
    std::uint64_t* words;
    std::size_t count;
};

// to |= from, `by` bits up (down when negative); what falls off either end is dropped. May be one row in place.
void or_shifted(BitRow to, BitRow from, std::int64_t by);

std::optional<std::size_t> first_set(BitRow row, std::size_t from);      // at `from` or above
std::optional<std::size_t> last_set_before(BitRow row, std::size_t end); // below `end`

} // namespace legwork
