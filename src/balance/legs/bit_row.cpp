// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/bit_row.h"

#include <algorithm>

namespace legwork {

namespace {

using Index = std::int64_t;

// Words begin to end of `to`, each from two neighbours of `from`, all of which are there. Up: from the top, down: from
// the bottom, so that in place each word is read before it is changed.
void inner(std::uint64_t* to, std::uint64_t const* from, Index begin, Index end, Index whole, int bits, bool up) {
    if (bits == 0) {
        if (up)
            for (Index i = end; i-- > begin;) to[i] |= from[i - whole];
        else
            for (Index i = begin; i < end; ++i) to[i] |= from[i - whole];
        return;
    }
    if (up)
        for (Index i = end; i-- > begin;) to[i] |= from[i - whole] << bits | from[i - whole - 1] >> (64 - bits);
    else
        for (Index i = begin; i < end; ++i) to[i] |= from[i - whole] << bits | from[i - whole - 1] >> (64 - bits);
}

} // namespace

void or_shifted(BitRow to, BitRow from, std::int64_t by) {
    // to[i] takes from[i - whole] and, when the shift is not by whole words, the top of the one below.
    auto const bits = static_cast<int>((by % 64 + 64) % 64);
    Index const whole = (by - bits) / 64, count = static_cast<Index>(from.count);
    Index const begin = std::max<Index>(0, whole);
    Index const end = std::min(static_cast<Index>(to.count), count + whole + (bits ? 1 : 0));
    if (begin >= end) return;
    auto const edge = [&](Index i) {
        auto const word = [&](Index k) { return k >= 0 && k < count ? from.words[k] : 0; };
        to.words[i] |= bits ? word(i - whole) << bits | word(i - whole - 1) >> (64 - bits) : word(i - whole);
    };
    Index const inner_begin = std::min(end, std::max(begin, whole + 1));
    Index const inner_end = std::max(inner_begin, std::min(end, count + whole));
    bool const up = by >= 0;
    if (up)
        for (Index i = end; i-- > inner_end;) edge(i);
    else
        for (Index i = begin; i < inner_begin; ++i) edge(i);
    inner(to.words, from.words, inner_begin, inner_end, whole, bits, up);
    if (up)
        for (Index i = inner_begin; i-- > begin;) edge(i);
    else
        for (Index i = inner_end; i < end; ++i) edge(i);
}

std::optional<std::size_t> first_set(BitRow row, std::size_t from) {
    for (auto w = from / 64; w < row.count; ++w) {
        auto const bits = w == from / 64 ? row.words[w] & (~std::uint64_t{0} << (from % 64)) : row.words[w];
        if (bits) return w * 64 + static_cast<std::size_t>(__builtin_ctzll(bits));
    }
    return {};
}

std::optional<std::size_t> last_set_before(BitRow row, std::size_t end) {
    end = std::min(end, row.count * 64);
    for (auto w = (end + 63) / 64; w-- > 0;) {
        auto bits = row.words[w];
        if (w == end / 64) bits &= (std::uint64_t{1} << (end % 64)) - 1;
        if (bits) return w * 64 + 63 - static_cast<std::size_t>(__builtin_clzll(bits));
    }
    return {};
}

} // namespace legwork
