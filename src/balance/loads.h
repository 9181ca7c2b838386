// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What each circuit puts on the legs in each situation, in whole VA. The one place where a share meets a load and where
// a load is rounded: everything downstream (search, recheck, sheets) works with these integers.
#pragma once

#include "building/building.h"
#include "panel/feeds.h"

#include <cstdint>
#include <map>
#include <string>
#include <vector>

namespace legwork {

struct LegVa {
    std::int64_t a = 0, b = 0;
    LegVa& operator+=(LegVa const& o) { return a += o.a, b += o.b, *this; }
    friend bool operator==(LegVa const&, LegVa const&) = default;
};

// Per situation: "connected" (every load at share 1) first, then the job's, in the file's order.
using BySituation = std::vector<LegVa>;

// What stands on the legs of a panel, or of one circuit.
struct LegLoads {
    BySituation va;
    // The line-to-neutral part, source by source in the order of `feeds`; what is switched off on a source, or on a leg
    // without voltage from it, counts 0 there.
    std::vector<BySituation> to_neutral;
};

struct CircuitLoad {
    // One pole: all of it is in `.a` of each figure and lands on the leg of the circuit's space. Two poles: on the legs
    // as given, whatever space it takes. An odd VA of a two-pole load is rounded up on each leg, so that it never
    // changes A - B and no leg is understated.
    bool on_one_leg = true;
    LegLoads loads;
};

// Names of the situations reported: "connected", then the job's.
std::vector<std::string> situation_names(Building const& building);

// VA of one pole of the circuit in a situation (null: connected), rounded once to the nearest whole VA: of a two-pole
// circuit the half on each leg. `measured` (times `to_neutral` volts) comes before `load`, that before `mca`; none: 0;
// `off`: 0.
std::int64_t pole_va(Circuit const& c, Situation const* situation, Volts to_neutral);

// The load of each circuit of a panel, in the file's order. `below` has the finished loads of sub-panels by name: a
// feeder carries its panel's legs instead of its own load, unless that panel is empty. A one-pole feeder carries
// both legs of its panel on the one it lands on.
std::vector<CircuitLoad> circuit_loads(Building const& building, Panel const& panel,
                                       std::map<std::string, LegLoads> const& below);

} // namespace legwork
