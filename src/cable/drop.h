// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Voltage drop along wires, by Ohm's law and the direct-current resistance of the wire table. Nothing of a code. The
// reactance of cables up to 4/0 is left out: at the loads of small buildings it is less than the rounding of the table.
#pragma once

#include "units/gauge.h"
#include "units/length.h"

#include <optional>
#include <span>

namespace legwork {

// One stretch of a run, from the panel outward.
struct DropPiece {
    Gauge gauge;
    Metal metal;
    Length length; // one way
};

inline constexpr double kDropCelsius = 75; // of a wire at full load; a cool one has some 10 % less resistance

// Ohms of one conductor along the pieces, one way, made as is usual (solid up to 10 AWG). Nothing when a piece is of a
// wire that the table does not have.
std::optional<double> one_way_ohms(std::span<DropPiece const> pieces, double celsius = kDropCelsius);

// Volts lost on the way out and back, `ohms` each way: one pole and its neutral, two poles and their 240 V load, or
// direct current. Of a multiwire pair: one circuit on, the other off, which is its worst on two legs.
constexpr double two_wire_drop(double amperes, double ohms) { return 2 * amperes * ohms; }
static_assert(two_wire_drop(10, 0.5) == 10);

// Volts lost where two legs, `phase_degrees` apart, share a neutral of the same wire (a pair, a feeder).
struct LegDrops {
    double a = 0, b = 0; // leg to neutral, with the neutral's part that is in line with that leg
    double between = 0;  // leg to leg: the sum of both hots; exact at 180 degrees, a little high at 120
};
LegDrops three_wire_drop(double leg_a_amperes, double leg_b_amperes, int phase_degrees, double ohms);

// The smallest gauge that brings a run to `most_ohms` one way when no piece of it is smaller. Nothing when none does.
std::optional<Gauge> gauge_within(std::span<DropPiece const> pieces, double most_ohms, double celsius = kDropCelsius);

} // namespace legwork
