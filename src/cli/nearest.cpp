// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/nearest.h"

#include <fmt/format.h>

#include <algorithm>
#include <numeric>

namespace legwork {

namespace {

// Letters to add, drop, change or swap with their neighbour (optimal string alignment distance).
std::size_t slips(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    std::iota(d[0].begin(), d[0].end(), 0);
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1)});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

} // namespace

std::optional<std::string> did_you_mean(std::string_view typed, std::vector<std::string> const& names) {
    if (typed.size() > 64) return std::nullopt;
    std::string const* best = nullptr;
    std::size_t least = std::max<std::size_t>(2, typed.size() / 3) + 1;
    for (auto const& name : names)
        if (auto const n = slips(typed, name); n < least && n < name.size()) {
            least = n;
            best = &name;
        }
    if (!best) return std::nullopt;
    return fmt::format("did you mean \"{}\"?", *best);
}

} // namespace legwork
