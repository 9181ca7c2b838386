// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's run and the feeders ahead of it lose, in volts and percent: the reckoning of wire-drop.
#pragma once

#include "cable/drop.h"
#include "codebook/drop_limits.h"
#include "reckon/leg_amps.h"
#include "reckon/wire_rating.h"

#include <string>
#include <vector>

namespace legwork {

// The known power cables of a run; an extra-low-voltage cable ends it, since a power supply stands before that.
struct RunLength {
    std::vector<DropPiece> pieces;
    bool whole = true; // else a length or a cable is not known, and what is lost is at least what is reckoned
    Length length;
    double ohms = 0; // of one conductor, one way
};
RunLength run_length(Circuit const& circuit);

// What a branch circuit loses from its panel to the end of its run, with all of its load there. Of a pair with the
// other circuit off: its worst on two legs, and what happens every day.
struct BranchDrop {
    RunLength run;
    double amperes = 0;
    bool load_known = true; // else a share of the breaker was taken
    double volts = 0;       // lost
    Volts of;               // of this voltage
    double percent() const { return volts / value(of) * 100; }
};
// Nothing for feeders of panels with circuits, sources, spares, what is off, direct current, and where no load and no
// breaker, or no cable, is known.
std::optional<BranchDrop> branch_drop(Case const& c, Circuit const& circuit);

// Percent lost on each leg to neutral, and between the legs.
struct LegPercents {
    double a = 0, b = 0, between = 0;
    double worst() const;
};
LegPercents operator+(LegPercents const& x, LegPercents const& y);

// What the feeder of a panel loses: in the worst situation (in_use() of leg_amps.h); without one, with everything on,
// and then no more than the share of its breaker that stands for an unknown load. On legs as they are loaded.
struct FeederDrop {
    Circuit const* feeder = nullptr;
    RunLength run;
    LegPercents own, total; // total: with the feeders ahead of it
    double amperes = 0;     // of the heavier leg
    LegAmps at;             // where it loses most, from a source of this kind
    SupplyKind kind = SupplyKind::split_120_240;
    bool held = false; // more is on it than its breaker, or the share of it, lets through
    bool load_known = true;
    std::string when;          // it loses most: "in \"Winter evening\"", "with everything on"
    bool in_situation = false; // one of the job or a load that is in none, not everything on at once
    bool calculated = false;   // at the load by the code's demand factors, which the caller put in
};
// Of each panel, in the job's order; nothing for a panel without a feeder, on direct current, or whose feeder is not
// there.
std::vector<std::optional<FeederDrop>> feeder_drops(Case const& c);

// Of every circuit of the panel and of the panels below it the load is known.
bool loads_known(Panel const& panel);

// What it loses when its legs carry this much from such a source.
LegPercents feeder_percents(Circuit const& feeder, LegAmps const& at, SupplyKind kind, double ohms);

// How far a wire is pulled that a loss asks for: "all the way", or so that the terminals of a circuit on a breaker of
// up to 20 A take what arrives there.
std::string_view how_far(Gauge gauge, Amps breaker);

// As printed: what reads "3.0 %" is not more than 3 %.
bool is_over_limit(double percent, Figure const& limit);
// More is lost than the code asks for, in the feeder by itself or in all of them up to here.
bool is_at_fault(DropLimits const& limits, FeederDrop const& drop);
// Some feeder ahead of this panel's is at fault, and tells it. `feeders`: of each panel of the job.
bool is_told_ahead(Case const& c, std::vector<std::optional<FeederDrop>> const& feeders, Panel const& panel);

} // namespace legwork
