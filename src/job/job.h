// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder job/: the job file as a person typed it, and back.
//
//     tree of toml/ --read.h--> typed::Job and the places of its keys --write.h--> the same file, some values changed
//
// Names are still words here, and may name what is not there; building/ makes things of them.
//
// The job as the person typed it: plain values, no rules. Whatever may be missing in the file is optional here.
// A key typed as "?" is missing too, and is named in `asked`.
#pragma once

#include "job/terms.h"
#include "units/gauge.h"
#include "units/length.h"
#include "units/power_cable.h"
#include "units/quantity.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace legwork::typed {

struct Supply {
    std::string name; // empty: the one unnamed source of a panel
    SupplyKind kind = SupplyKind::split_120_240;
    std::optional<Amps> amps;
    Leg leg = Leg::a;                 // of one_leg_120
    std::vector<std::string> off;     // marks switched off by hand on this source
    std::vector<std::string> asked{}; // keys typed as "?"
    friend bool operator==(Supply const&, Supply const&) = default;
};

struct FeederName {
    std::string panel, mark; // circuit `mark` of panel `panel`
    friend bool operator==(FeederName const&, FeederName const&) = default;
};

struct Panel {
    std::string name;
    bool listed = true;                     // false: known only as what feeds another
    int spaces = 0;                         // 0 when not listed
    std::optional<Supply> supply;           // `supply = "120/240"`, or what a sub-panel narrows its feeder to
    std::vector<std::string> supplies;      // names of [[supply]]
    std::optional<FeederName> feeder;       // of a sub-panel; of a DC panel the circuit of its power supply
    std::optional<std::int64_t> efficiency; // of that power supply, in millionths
    // Of a feeder from a panel that is not listed, whose mark the reader made up.
    std::optional<Amps> feeder_breaker;
    std::string feeder_cable;
    std::optional<Length> feeder_length;
    std::string fed_from;
    std::optional<Amps> main, bus, output;
    std::vector<int> tandem, blocked, dead;
    Numbering numbering = Numbering::across;
    Corner first = Corner::top_left;
    Hang hang = Hang::upright;
    std::optional<PanelEnd> main_at;
    BusLegs bus_legs = BusLegs::by_row;
    std::vector<Leg> row_legs; // listed: one a row
    std::optional<int> circuits_max, neutral_terminals;
    std::string building;
    bool existing = false;
    std::vector<std::string> asked; // keys typed as "?"
    friend bool operator==(Panel const&, Panel const&) = default;
};

struct Segment {
    std::string kind; // "12/3", "cat6"; empty when not known
    std::optional<Length> length;
    std::string to;                      // the box it ends in; empty when not said
    WirePlace where = WirePlace::unsaid; // its own; else its circuit's
    bool tap = false;                    // from the circuit to one cooking appliance, smaller than the wire before it
    friend bool operator==(Segment const&, Segment const&) = default;
};

struct Circuit {
    std::string mark, name, room, name_fr, name_es, note;
    std::string panel; // always resolved
    std::string box;   // first box; empty when not said
    std::string use;   // empty when neither said nor guessed
    bool use_guessed = false;
    std::optional<Amps> breaker; // or the fuse of a DC circuit
    int poles = 1;
    std::optional<VoltAmperes> load; // or:
    std::optional<Amps> load_amps;   // the load as a current, at the circuit's own volts
    std::optional<Amps> measured;
    std::vector<Segment> run; // from the panel outward; `cable` and `length` make one segment; empty when not known
    std::string multiwire;    // group; empty when it shares nothing
    Tie tie = Tie::none;      // resolved: two-pole breaker for poles = 2 when not said, none for a pair
    bool tie_said = false;
    std::optional<Spot> space;
    bool fixed = false, existing = false;
    std::optional<bool> continuous, motor, fastened;
    bool split = false, switch_loop = false, off = false, single = false;
    bool interlocked = false;                                        // backup heat that never runs with its heat pump
    Protection gfci = Protection::unsaid, afci = Protection::unsaid; // `true` in the file reads as breaker
    std::vector<std::string> outlets;
    std::optional<int> outlet_count;
    std::string hot;                 // colour; empty when not said
    std::vector<std::string> colors; // insulated conductors of the home run as the cable really is; empty: as usual
    std::string third;               // "switched", "traveller", "spare", "interconnect", "neutral" or empty
    Metal metal = Metal::copper;
    int terminals = 60; // °C
    Wiring wiring = Wiring::cable;
    WirePlace where = WirePlace::unsaid; // its run is laid
    std::optional<Amps> mca, mop;
    std::string building;
    std::string reach_side;        // "left", "right" or empty
    std::vector<int> reach_spaces; // empty: anywhere
    std::vector<std::string> runs_with;
    std::vector<std::string> asked; // keys typed as "?"
    friend bool operator==(Circuit const&, Circuit const&) = default;
};

struct Situation {
    std::string name;
    // Shares in millionths (exact for six decimals). A mark beats a use.
    std::int64_t other = 1'000'000;
    std::map<std::string, std::int64_t> by_use, by_mark;
    std::string supply{}; // of [[supply]]; empty when not said
    friend bool operator==(Situation const&, Situation const&) = default;
};

struct Cable { // not a circuit's home run
    std::string mark, name, kind, from, to;
    std::optional<Length> length;
    std::vector<std::string> asked;
    std::vector<std::string> carries{}; // marks of circuits
    std::string role{};                 // "feed", "on to", "switch leg", "travellers", "line", "load" or empty
    WirePlace where = WirePlace::unsaid;
    friend bool operator==(Cable const&, Cable const&) = default;
};

struct Box {
    std::string name, size;
    std::optional<Volume> volume;
    std::vector<std::string> devices;
    std::optional<bool> clamps;
    std::vector<std::string> asked;
    friend bool operator==(Box const&, Box const&) = default;
};

// The largest draw of a service over some time.
struct PeakDraw {
    Amps amps;
    int days = 0; // how long it was recorded or metered
    friend bool operator==(PeakDraw const&, PeakDraw const&) = default;
};

// Circuits that a device keeps within a limit together.
struct EnergyManagement {
    Amps limit;
    std::vector<std::string> circuits; // marks, at least one
    friend bool operator==(EnergyManagement const&, EnergyManagement const&) = default;
};

struct Dwelling {
    std::optional<Area> area;                   // without the basement; as the code measures it
    UnitSystem area_units = UnitSystem::metric; // that `area`, else `basement`, was typed in
    std::optional<Area> basement;
    // All there are, listed or not; nothing: those of the list.
    std::optional<int> small_appliance_circuits, laundry_circuits;
    std::optional<int> thermostats; // rooms whose heat is controlled by itself
    // Loads that run at the same time though they heat and cool: groups of uses and marks.
    std::vector<std::vector<std::string>> together;
    std::optional<PeakDraw> peak;
    std::optional<EnergyManagement> energy_management;
    std::vector<std::string> asked{};
    friend bool operator==(Dwelling const&, Dwelling const&) = default;
};

struct Accept {
    std::string rule, why, by, circuit, panel;
    friend bool operator==(Accept const&, Accept const&) = default;
};

struct Job {
    std::string name, code, revision; // code: "CE 2024"
    std::optional<Date> date;
    std::vector<std::string> languages{"en"};
    UnitSystem units = UnitSystem::metric;
    std::optional<Length> tails, loop;
    std::optional<Dwelling> dwelling;
    std::vector<Supply> supplies;
    std::vector<Panel> panels;
    std::vector<Circuit> circuits;
    std::vector<Situation> situations;
    std::vector<Cable> cables;
    std::vector<Box> boxes;
    std::vector<Accept> accepts;
    std::vector<std::string> asked{}; // keys of [job] typed as "?"
    friend bool operator==(Job const&, Job const&) = default;
};

Circuit const* circuit_of(Job const& job, std::string_view mark); // null when there is none
Panel const* panel_of(Job const& job, std::string_view name);     // null when there is none
Supply const* supply_of(Job const& job, std::string_view name);   // null when there is none

// The two circuits of a multiwire group, in the file's order. A job that was read has two members in every group.
struct Pair {
    Circuit const *first, *second;
};
std::vector<Pair> pairs(Job const& job);
// The other circuit of its pair; null when it shares nothing.
Circuit const* partner(Job const& job, Circuit const& c);
// The sub-panel that this circuit feeds; null when it feeds none.
Panel const* fed_panel(Job const& job, Circuit const& c);
// "K1", of a pair "K1+K2" in the file's order: what its cable is labelled with.
std::string cable_mark(Job const& job, Circuit const& c);

} // namespace legwork::typed
