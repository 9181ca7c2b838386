// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Household cooking appliances and dryers on a service or feeder: NEC Tables 220.55 and 220.54.
#pragma once

#include "codebook/cooking_factors.h"
#include "codebook/demand_factors.h"

#include <array>
#include <utility>

namespace legwork::nec {

using namespace how_read;

// `rest`: how the rows were come by that no worked example shows. All of 2023 were compared with a text of it.
namespace appliances {
// By number of appliances, from one.
template <std::size_t kRows, std::size_t... kAt>
constexpr std::array<Figure, kRows> told(std::array<int, kRows> const& percents, Source rest,
                                         std::index_sequence<kAt...>) {
    return {Figure{percents[kAt], rest}...};
}
template <std::size_t kRows>
constexpr std::array<Figure, kRows> told(std::array<int, kRows> const& percents, Source rest) {
    return told(percents, rest, std::make_index_sequence<kRows>());
}
constexpr auto column_a(Source rest) {
    auto rows = told<25>(
        {80, 75, 70, 66, 62, 59, 56, 53, 51, 49, 47, 45, 43, 41, 40, 39, 38, 37, 36, 35, 34, 33, 32, 31, 30}, rest);
    rows[0].source = seen;
    return rows;
}
// 61 and more.
constexpr auto column_b(Source rest) {
    auto rows = told<61>({80, 65, 55, 50, 45, 43, 40, 36, 35, 34, 32, 32, 32, 32, 32, 28, 28, 28, 28, 28, 26,
                          26, 26, 26, 26, 24, 24, 24, 24, 24, 22, 22, 22, 22, 22, 22, 22, 22, 22, 22, 20, 20,
                          20, 20, 20, 20, 20, 20, 20, 20, 18, 18, 18, 18, 18, 18, 18, 18, 18, 18, 16},
                         rest);
    rows[0].source = rows[2].source = seen;
    return rows;
}
// 8, 11, 14, 17 kW, then 15 kW and one for each appliance, from 41 on 25 kW and three quarters for each.
constexpr auto column_c(Source rest) {
    return std::array{CookingSlice{3, 5'000, 3'000, seen}, CookingSlice{4, 5'000, 3'000, rest},
                      CookingSlice{7, 15'000, 1'000, rest}, CookingSlice{40, 15'000, 1'000, seen},
                      CookingSlice{0, 25'000, 750, memory}};
}
constexpr auto dryer_rows(Source rest) {
    auto rows = told<11>({100, 100, 100, 100, 85, 75, 65, 60, 55, 50, 47}, rest);
    for (std::size_t i = 8; i < rows.size(); ++i) rows[i].source = seen;
    return rows;
}
inline constexpr auto kA = column_a(memory), kSeenA = column_a(seen);
inline constexpr auto kB = column_b(memory), kSeenB = column_b(seen);
inline constexpr auto kC = column_c(memory), kSeenC = column_c(seen);
inline constexpr auto kDryerRows = dryer_rows(memory), kSeenDryerRows = dryer_rows(seen);
} // namespace appliances

inline constexpr CookingTable kCooking{.a = appliances::kA, .b = appliances::kB, .c = appliances::kC};
inline constexpr CookingTable kSeenCooking{.a = appliances::kSeenA, .b = appliances::kSeenB, .c = appliances::kSeenC};
inline constexpr DryerTable kDryers{.rows = appliances::kDryerRows, .last = 23, .beyond_rows = seen};
inline constexpr DryerTable kSeenDryers{.rows = appliances::kSeenDryerRows, .last = 23, .beyond_rows = seen};

} // namespace legwork::nec
