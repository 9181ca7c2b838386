// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where cable may be run under the NEC: 334.12(B) as a trade magazine has it for the indoor cable, the other types from
// memory (320.12, 330.10, 340.10). Depths of Table 300.5 on a trade page: 24, 18 and 12 in.
#pragma once

#include "codebook/cable_places.h"

#include <array>

namespace legwork::nec {

using namespace how_read;

inline constexpr std::array kCablePlaceRows{
    CablePlaceRow{CableType::indoor, MayRun::no, MayRun::no, MayRun::no, MayRun::no, seen},
    CablePlaceRow{CableType::uf, MayRun::yes, MayRun::yes, MayRun::yes, MayRun::yes, memory},
    CablePlaceRow{CableType::armoured, MayRun::no, MayRun::no, MayRun::no, MayRun::no, memory},
    CablePlaceRow{CableType::metal_clad, MayRun::yes, MayRun::ask, MayRun::ask, MayRun::ask, memory},
};
inline constexpr CablePlaces kCablePlaces{
    .rows = kCablePlaceRows,
    .wet_type = "UF",
    .burial = {.cable = {600, memory}, .conduit = {450, memory}, .circuit = Figure{300, memory}},
};

} // namespace legwork::nec
