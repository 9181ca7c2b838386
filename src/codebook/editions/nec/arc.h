// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Arc-fault protection, and a neutral at switches, as the NEC asks for them.
#pragma once

#include "codebook/protection_rows.h"

namespace legwork::nec {

using namespace how_read;

namespace arc {
using enum RoomPlace;
inline constexpr RoomPlaces kRooms{kitchen, counter, dining, living, bedroom, hall, closet, laundry, finished_basement};
inline constexpr RoomPlaces kPerhaps{loft, house, basement};
inline constexpr RoomPlaces kSwitchRooms{kitchen, counter, dining,   living,   bedroom,           loft, hall,
                                         stair,   laundry, bathroom, basement, finished_basement, house};
} // namespace arc

constexpr AfciTable afci(int least_amps) {
    return {.least_amps = least_amps,
            .most_amps = 20,
            .receptacles_only = false,
            .rooms = arc::kRooms,
            .perhaps = arc::kPerhaps,
            .let_off = {},
            .uses_let_off = {},
            .there = "120 V circuits",
            .what = "120 V circuits of kitchens, laundries, living rooms, bedrooms, halls and the like",
            .hangs_on = "it serves any such room",
            .no_breaker = "its breaker is of 20 A or less"};
}

// 404.2(C): the rooms as texts of all three editions have them.
inline constexpr SwitchTable kSwitches{.rooms = arc::kSwitchRooms, .lighting_only = true, .not_in_conduit = true};

} // namespace legwork::nec
