// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The few words that a job file chooses from, as values: what is typed and what is resolved share them.
#pragma once

#include "units/date.h"

#include <compare>
#include <string>

namespace legwork {

// Which table of the file a key stands in.
enum class Subject { job, dwelling, supply, panel, circuit, situation, cable, box, accept };

enum class Leg { a, b };
constexpr Leg other(Leg l) { return l == Leg::a ? Leg::b : Leg::a; }
constexpr char letter(Leg l) { return l == Leg::a ? 'A' : 'B'; }

// A full-size breaker position, or one half of it.
struct Spot {
    int space = 0; // from 1
    char half = 0; // 0 full size, 'a' or 'b' half of a half-size breaker
    friend auto operator<=>(Spot const&, Spot const&) = default;
};
std::string text(Spot s); // "7", "7b"

enum class SupplyKind { split_120_240, wye_120_208, bridged_120, one_leg_120, dc_12, dc_24, dc_48 };

enum class Numbering { across, down };
enum class Corner { top_left, top_right, bottom_left, bottom_right };
enum class Hang { upright, upside_down, turned_left, turned_right };
enum class PanelEnd { top, bottom };
enum class BusLegs { by_row, by_column, listed };

enum class Tie { none, handle_tie, two_pole_breaker };
enum class Protection { unsaid, no, breaker, outlet };
enum class Wiring { cable, conduit };

} // namespace legwork
