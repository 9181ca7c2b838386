// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Household cooking appliances and dryers on a service or feeder: NEC Tables 220.55 and 220.54.
#pragma once

#include "codebook/cooking_factors.h"
#include "codebook/demand_factors.h"

#include <array>

namespace legwork::nec {

using namespace how_read;

namespace appliances {
constexpr Figure told(std::int64_t percent) { return {percent, memory}; }

// By number of appliances, from one.
inline constexpr std::array kA{Figure{80, seen}, told(75), told(70), told(66), told(62), told(59), told(56),
                               told(53),         told(51), told(49), told(47), told(45), told(43), told(41),
                               told(40),         told(39), told(38), told(37), told(36), told(35), told(34),
                               told(33),         told(32), told(31), told(30)};
inline constexpr std::array kB{Figure{80, seen}, told(65), Figure{55, seen}, told(50), told(45), told(43), told(40),
                               told(36),         told(35), told(34),         told(32), told(32), told(32), told(32),
                               told(32),         told(28), told(28),         told(28), told(28), told(28), told(26),
                               told(26),         told(26), told(26),         told(26)};
// 8, 11, 14, 17 kW, then 15 kW and one for each appliance, from 41 on 25 kW and three quarters for each.
inline constexpr std::array kC{CookingSlice{3, 5'000, 3'000, seen}, CookingSlice{4, 5'000, 3'000, memory},
                               CookingSlice{7, 15'000, 1'000, memory}, CookingSlice{40, 15'000, 1'000, seen},
                               CookingSlice{0, 25'000, 750, memory}};
inline constexpr std::array kDryerRows{told(100),        told(100),        told(100),       told(100),
                                       told(85),         told(75),         told(65),        told(60),
                                       Figure{55, seen}, Figure{50, seen}, Figure{47, seen}};
} // namespace appliances

inline constexpr CookingTable kCooking{.a = appliances::kA, .b = appliances::kB, .c = appliances::kC};
inline constexpr DryerTable kDryers{.rows = appliances::kDryerRows, .last = 23, .beyond_rows = seen};

} // namespace legwork::nec
