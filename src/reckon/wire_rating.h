// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a wire is good for on its circuit; the other side that the wire rules compare is what it draws (draw.h).
#pragma once

#include "codebook/stock/uses.h"
#include "reckon/case.h"
#include "reckon/draw.h"

#include <optional>
#include <string>

namespace legwork {

struct WireRating {
    Gauge gauge = Gauge::awg14;
    Metal metal = Metal::copper;
    int celsius = 60;        // column taken
    bool cable_held = false; // taken because of the cable, whatever its terminals
    Amps ampacity;
    Amps base;    // ampacity, or the small-wire limit where that is less
    Amps breaker; // largest breaker with no easement for what the circuit feeds
    Source source = Source::seen;
    std::string_view topic; // of cite.h
};

// Nothing when the size is not made in that metal, or is too small for any power circuit.
std::optional<WireRating> wire_rating(Case const& c, Circuit const& circuit, Gauge gauge);
// The smallest wire, of the circuit's metal and terminals, that this breaker fits and whose base carries `carries`.
std::optional<Gauge> gauge_for(Case const& c, Circuit const& circuit, Amps breaker, Amps carries);
// The largest breaker on this wire when it feeds fixed heating.
Amps heating_breaker(Case const& c, WireRating const& wire);
std::string wire_name(Gauge gauge, Metal metal); // "14 AWG", "12 AWG aluminium"

// The smallest power cable of the known pieces of a run, and which piece it is (0: the home run).
struct ThinnestPiece {
    Gauge gauge = Gauge::awg14;
    std::string kind;
    int segment = 0;
    std::string after; // the box where it begins, when it has a name
};
// Taps to a cooking appliance are judged by themselves, and not among them.
std::optional<ThinnestPiece> thinnest_piece(Circuit const& circuit);
// A piece that is said to be a tap, on a circuit of cooking appliances.
bool is_cooking_tap(Circuit const& circuit, std::size_t piece);

} // namespace legwork
