// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where cable may be run under the CE Code: Table 19 and the depths of Table 53 from memory; that NMD90 may be damp and
// not wet stands on three makers' sheets.
#pragma once

#include "codebook/cable_places.h"

#include <array>

namespace legwork::ce {

using namespace how_read;

inline constexpr std::array kCablePlaceRows{
    CablePlaceRow{CableType::indoor, MayRun::yes, MayRun::no, MayRun::no, MayRun::no, memory},
    CablePlaceRow{CableType::nmwu, MayRun::yes, MayRun::yes, MayRun::yes, MayRun::yes, memory},
    CablePlaceRow{CableType::armoured, MayRun::ask, MayRun::no, MayRun::no, MayRun::no, memory},
    CablePlaceRow{CableType::teck, MayRun::yes, MayRun::yes, MayRun::yes, MayRun::yes, memory},
};
inline constexpr CablePlaces kCablePlaces{
    .rows = kCablePlaceRows,
    .wet_type = "NMWU",
    .burial = {.cable = {600, memory}, .conduit = {450, memory}, .circuit = {}},
};

} // namespace legwork::ce
