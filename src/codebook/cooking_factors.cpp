// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cooking_factors.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <numeric>

namespace legwork {

namespace {
using Nameplates = std::vector<std::int64_t>;
constexpr auto seen = Source::seen, memory = Source::memory;
constexpr std::int64_t kColumnB = 3'500, kColumnC = 8'750, kFull = 12'000, kMost = 27'000, kExcessPercent = 5;

struct Percent {
    int value;
    Source source = memory;
};
// By number of appliances, from one.
constexpr std::array kA{Percent{80, seen}, Percent{75}, Percent{70}, Percent{66}, Percent{62}, Percent{59}, Percent{56},
                        Percent{53},       Percent{51}, Percent{49}, Percent{47}, Percent{45}, Percent{43}, Percent{41},
                        Percent{40},       Percent{39}, Percent{38}, Percent{37}, Percent{36}, Percent{35}, Percent{34},
                        Percent{33},       Percent{32}, Percent{31}, Percent{30}};
constexpr std::array kB{Percent{80, seen}, Percent{65}, Percent{55, seen}, Percent{50}, Percent{45},
                        Percent{43},       Percent{40}, Percent{36},       Percent{35}, Percent{34},
                        Percent{32},       Percent{32}, Percent{32},       Percent{32}, Percent{32},
                        Percent{28},       Percent{28}, Percent{28},       Percent{28}, Percent{28},
                        Percent{26},       Percent{26}, Percent{26},       Percent{26}, Percent{26}};

template <std::size_t N>
Percent percent_of(std::array<Percent, N> const& column, std::size_t n) {
    return column[std::min(n, N) - 1];
}

struct Demand {
    std::int64_t va;
    Source source;
};
// Column C: 8, 11, 14, 17 kW, then 15 kW and one for each appliance, from 41 on 25 kW and three quarters for each.
Demand column_c(std::size_t n) {
    auto const count = static_cast<std::int64_t>(n);
    if (n <= 4) return {5'000 + 3'000 * count, n <= 3 ? seen : memory};
    if (n <= 40) return {15'000 + 1'000 * count, n >= 8 ? seen : memory};
    return {25'000 + 750 * count, memory};
}

std::int64_t sum(Nameplates const& all) { return std::accumulate(all.begin(), all.end(), std::int64_t{0}); }
std::int64_t share(std::int64_t va, std::int64_t percent) { return (va * percent + 50) / 100; }
std::string of_them(std::size_t n) {
    return n == 1 ? std::string("1 cooking appliance") : fmt::format("{} cooking appliances", n);
}

template <std::size_t N>
void add_by_percent(std::vector<CookingStep>& steps, std::array<Percent, N> const& column, char letter,
                    Nameplates const& some) {
    if (some.empty()) return;
    auto const p = percent_of(column, some.size());
    auto const all = sum(some);
    steps.push_back({fmt::format("{}, column {}", of_them(some.size()), letter),
                     fmt::format("{} VA × {} %", all, p.value), share(all, p.value), p.source});
}

// Notes 1 and 2: 5 % more for each kW, or major part of one, that the average is above 12 kW; one below counts as 12.
void add_by_column_c(std::vector<CookingStep>& steps, Nameplates const& some) {
    if (some.empty()) return;
    auto const n = static_cast<std::int64_t>(some.size());
    auto const [base, source] = column_c(some.size());
    std::int64_t counted = 0;
    for (auto const va : some) counted += std::max(va, kFull);
    auto const kilowatts = ((counted - kFull * n) * 2 + 1'000 * n) / (2'000 * n);
    auto const percent = 100 + kExcessPercent * kilowatts;
    steps.push_back({kilowatts > 0 ? fmt::format("{}, column C, {} kW above 12 kW", of_them(some.size()), kilowatts)
                                   : fmt::format("{}, column C", of_them(some.size())),
                     kilowatts > 0 ? fmt::format("{} VA × {} %", base, percent) : "", share(base, percent), source});
}

std::int64_t total(std::vector<CookingStep> const& steps) {
    std::int64_t va = 0;
    for (auto const& s : steps) va += s.va;
    return va;
}
} // namespace

CookingRow cooking_row(int appliances) {
    auto const n = static_cast<std::size_t>(std::max(appliances, 1));
    auto const a = percent_of(kA, n), b = percent_of(kB, n);
    auto const c = column_c(n);
    return {{a.value, a.source}, {b.value, b.source}, {c.va, c.source}};
}

std::vector<CookingStep> cooking_demand(Nameplates const& nameplates) {
    Nameplates a, b, c, above;
    for (auto const va : nameplates) (va < kColumnB ? a : va <= kColumnC ? b : va <= kMost ? c : above).push_back(va);
    std::vector<CookingStep> parts;
    add_by_percent(parts, kA, 'A', a);
    add_by_percent(parts, kB, 'B', b);
    add_by_column_c(parts, c);
    Nameplates together = a;
    together.insert(together.end(), b.begin(), b.end());
    bool const none_over = std::ranges::none_of(c, [](auto va) { return va > kFull; });
    if (!together.empty() && none_over) { // note 2 is for appliances of 8 3/4 kW and more
        together.insert(together.end(), c.begin(), c.end());
        std::vector<CookingStep> all;
        add_by_column_c(all, together);
        if (total(all) < total(parts)) parts = std::move(all);
    }
    for (auto const va : above)
        parts.push_back(
            {"1 cooking appliance above 27 kW, outside the table", fmt::format("{} VA in full", va), va, memory});
    return parts;
}

} // namespace legwork
