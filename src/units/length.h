// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "units/quantity.h"

namespace legwork {

using Length = Quantity<struct LengthTag>; // grain: 1 micrometre, so that a sixteenth of an inch stays exact enough
using Area = Quantity<struct AreaTag>;     // grain: 1 square millimetre

constexpr Length from_mm(std::int64_t mm) { return {mm * 1000}; }
constexpr double metres(Length l) { return static_cast<double>(l.count) / 1e6; }
constexpr double millimetres(Length l) { return static_cast<double>(l.count) / 1e3; }
constexpr double feet(Length l) { return static_cast<double>(l.count) / 304800.0; } // 1 ft = 0.3048 m exactly
constexpr double square_metres(Area a) { return static_cast<double>(a.count) / 1e6; }
constexpr double square_feet(Area a) { return static_cast<double>(a.count) / 92903.04; } // (0.3048 m)^2

enum class UnitSystem { metric, inch };

} // namespace legwork
