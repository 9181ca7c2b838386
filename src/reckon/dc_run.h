// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What circuits of direct current draw, and what their wires lose out and back.
#pragma once

#include "reckon/case.h"
#include "units/length.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork {

// Volts lost along a strip's cable with all channels on: the plus carries the sum, each channel its own part.
// `ohms`: of one conductor, one way.
constexpr double strip_drop(double plus_amperes, double channel_amperes, double ohms) {
    return ohms * (plus_amperes + channel_amperes);
}

// The thinnest known wire of its run.
struct DcThinnest {
    Gauge gauge = Gauge::awg14;
    std::string kind;
    std::string after; // the box where it begins; empty in the home run
};
std::optional<DcThinnest> dc_thinnest(Circuit const& circuit);

// At the volts of its panel, the largest of load, reading and nameplate; of a feeder the sum of what is known behind
// it. Nothing where nothing is known.
std::optional<double> dc_amps(Circuit const& circuit);

struct DcPiece {
    Gauge gauge;
    Length length;
    int channels = 0; // of a strip's cable; 0: a pair of wires
};
struct DcDrop {
    std::vector<DcPiece> pieces;
    bool whole = true; // else a length or a cable is not known, and what is lost is at least what is reckoned
    double amperes = 0, volts = 0;
    Volts of;
    double ahead_percent = 0; // lost in the feeders of direct current before it
    double own_percent() const { return volts / value(of) * 100; }
    double percent() const { return own_percent() + ahead_percent; }
    Length length() const;
};
double volts_lost(std::vector<DcPiece> const& pieces, double amperes);
// Of a circuit on direct current whose current is known, and some piece of its run.
std::optional<DcDrop> dc_drop_of(Circuit const& circuit);

// What it may lose in percent (common practice): 2 of lights and strips, 3 of the rest.
int dc_drop_limit(Circuit const& circuit);

} // namespace legwork
