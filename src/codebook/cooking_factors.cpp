// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cooking_factors.h"

#include <algorithm>
#include <numeric>

namespace legwork {

namespace {
using Nameplates = std::vector<std::int64_t>;
constexpr std::int64_t kColumnB = 3'500, kColumnC = 8'750, kFull = 12'000, kMost = 27'000, kExcessPercent = 5;

Figure percent_of(std::span<Figure const> column, std::size_t n) { return column[std::min(n, column.size()) - 1]; }

Figure column_c(CookingTable const& table, std::size_t n) {
    auto const count = static_cast<std::int64_t>(n);
    auto const at =
        std::ranges::find_if(table.c, [&](CookingSlice const& s) { return s.up_to == 0 || count <= s.up_to; });
    return {at->va + at->each_va * count, at->source};
}

std::int64_t sum(Nameplates const& all) { return std::accumulate(all.begin(), all.end(), std::int64_t{0}); }
std::int64_t share(std::int64_t va, std::int64_t percent) { return (va * percent + 50) / 100; }

void add_by_percent(std::vector<CookingStep>& steps, std::span<Figure const> column, char letter,
                    Nameplates const& some) {
    if (some.empty()) return;
    auto const p = percent_of(column, some.size());
    auto const all = sum(some);
    steps.push_back({CookingStep::By::percent, static_cast<std::int64_t>(some.size()), letter, 0, all, p.value,
                     share(all, p.value), p.source});
}

// Notes 1 and 2: 5 % more for each kW, or major part of one, that the average is above 12 kW; one below counts as 12.
void add_by_column_c(std::vector<CookingStep>& steps, CookingTable const& table, Nameplates const& some) {
    if (some.empty()) return;
    auto const n = static_cast<std::int64_t>(some.size());
    auto const [base, source] = column_c(table, some.size());
    std::int64_t counted = 0;
    for (auto const va : some) counted += std::max(va, kFull);
    auto const kilowatts = ((counted - kFull * n) * 2 + 1'000 * n) / (2'000 * n);
    auto const percent = 100 + kExcessPercent * kilowatts;
    steps.push_back({kilowatts > 0 ? CookingStep::By::percent : CookingStep::By::table, n, 'C', kilowatts, base,
                     percent, share(base, percent), source});
}

std::int64_t total(std::vector<CookingStep> const& steps) {
    std::int64_t va = 0;
    for (auto const& s : steps) va += s.va;
    return va;
}
} // namespace

CookingRow cooking_row(CookingTable const& table, int appliances) {
    auto const n = static_cast<std::size_t>(std::max(appliances, 1));
    return {percent_of(table.a, n), percent_of(table.b, n), column_c(table, n)};
}

std::vector<CookingStep> cooking_demand(CookingTable const& table, Nameplates const& nameplates) {
    Nameplates a, b, c, above;
    for (auto const va : nameplates) (va < kColumnB ? a : va <= kColumnC ? b : va <= kMost ? c : above).push_back(va);
    std::vector<CookingStep> parts;
    add_by_percent(parts, table.a, 'A', a);
    add_by_percent(parts, table.b, 'B', b);
    add_by_column_c(parts, table, c);
    Nameplates together = a;
    together.insert(together.end(), b.begin(), b.end());
    bool const none_over = std::ranges::none_of(c, [](auto va) { return va > kFull; });
    if (!together.empty() && none_over) { // note 2 is for appliances of 8 3/4 kW and more
        together.insert(together.end(), c.begin(), c.end());
        std::vector<CookingStep> all;
        add_by_column_c(all, table, together);
        if (total(all) < total(parts)) parts = std::move(all);
    }
    for (auto const va : above) parts.push_back({CookingStep::By::nameplate, 1, ' ', 0, va, 100, va, Source::memory});
    return parts;
}

} // namespace legwork
