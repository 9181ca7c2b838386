// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The building, resolved once from the job as typed. Names have become things: a circuit points at its panel, its use,
// its pair and the panel that it feeds; a panel knows what feeds it; a run of cable has two ends and knows whose
// circuits it carries. Whoever judges, seats, reckons or prints asks the building and compares no text of the job file.
//
//     [[supply]] Grid ----- Main ---- K1 ---\ pair, one shared home run
//                            |  \---- K2 ---/
//                            SP (a feeder) ---- Shed ---- D1 ==run==> box ==run==> box
//
// What could not be resolved is empty and never guessed: a circuit of a panel that is not there has no panel.
// Everything is total: a Job that no reader ever saw gives a building too.
#pragma once

#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/room_place.h"
#include "codebook/stock/uses.h"
#include "job/terms.h"
#include "panel/fed_from.h"
#include "panel/feeds.h"
#include "panel/hang.h"
#include "panel/layout.h"
#include "panel/lines.h"
#include "units/length.h"
#include "units/quantity.h"

#include <cstdint>
#include <deque>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

namespace typed {
struct Job;
} // namespace typed

struct WiringBox;
struct Circuit;
struct Panel;

// What can feed the building, one at a time: a [[supply]], in the file's order.
struct Supply {
    std::string name;
    SupplyKind kind = SupplyKind::split_120_240;
    std::optional<Amps> amps;
    Leg leg = Leg::a;             // of `one_leg_120`
    std::vector<std::string> off; // marks switched off by hand on this source
    std::vector<std::string> asked;
};

// One piece of a circuit's way, from the panel outward.
struct Piece {
    CableKind const* kind = nullptr; // null: not said, or no kind that there is
    std::string called;              // the kind's name as said; empty when it is not
    std::optional<Length> length;
    std::string to;                      // the box it ends in, as said; mostly empty
    WirePlace where = WirePlace::unsaid; // said of it, or of its circuit; else taken from names:
    bool where_guessed = false;
    bool tap = false; // to one cooking appliance
};

enum class Side { left, right };

// The job of a conductor that neither a hot nor the neutral needs.
enum class ThirdWire { unsaid, switched, traveller, spare, interconnect, neutral };
constexpr std::string_view word(ThirdWire w) { // as typed
    switch (w) {
    case ThirdWire::switched: return "switched";
    case ThirdWire::traveller: return "traveller";
    case ThirdWire::spare: return "spare";
    case ThirdWire::interconnect: return "interconnect";
    case ThirdWire::neutral: return "neutral";
    case ThirdWire::unsaid: break;
    }
    return {};
}

struct Pair;

struct Circuit {
    std::size_t number = 0; // in the file's order; who it is, also of a copy
    std::string mark, name, name_fr, name_es, room, note;
    Panel const* panel = nullptr;
    Use const* use = nullptr;  // null: neither said nor guessed
    bool use_guessed = false;  // from its name
    bool spare_in_use = false; // called a spare, but with a wire and a load: `use` is what its name says then
    RoomPlaces places;         // from room, name, use and building
    std::string building;      // the outbuilding that it names, and no other
    Pair const* pair = nullptr;
    // The sub-panels that it feeds. More than one is a mistake that no reader sees.
    std::vector<Panel const*> feeds;
    // The DC panels whose power supply hangs on it. Then `load` is what their circuits draw through it, where that is
    // known.
    std::vector<Panel const*> supplies_dc;
    bool listed = true; // false: the feeder from a panel that is not; its figures stand at the panel that it feeds

    std::optional<Amps> breaker; // or the fuse of a DC circuit
    int poles = 1;
    Tie tie = Tie::none; // two-pole breaker for two poles when not said; of a pair: see there
    bool tie_said = false;
    std::optional<VoltAmperes> load;
    bool load_in_amperes = false; // said as a current: what it draws at its own volts, of a heater on a wye too
    std::optional<Amps> measured, mca, mop;
    std::vector<Piece> run;        // of a pair the shared home run first; empty when nothing is said of it
    std::string box;               // the first box as said on this circuit
    std::vector<WireColor> colors; // insulated conductors of the home run as said; empty: as usual
    std::optional<WireColor> hot;  // its colour in the home run
    ThirdWire third = ThirdWire::unsaid;
    Metal metal = Metal::copper;
    int terminals = 60;            // °C
    Wiring wiring = Wiring::cable; // conduit when it or its partner says so

    std::optional<Spot> space;
    bool fixed = false, existing = false;
    std::vector<bool> reach;        // by space (0 is not used), where its wires can land; empty: anywhere
    std::optional<Side> reach_side; // as said
    std::vector<int> reach_spaces;  // as said
    std::optional<bool> continuous, motor, fastened;
    bool split = false, switch_loop = false, off = false, single = false, interlocked = false;
    Protection gfci = Protection::unsaid, afci = Protection::unsaid;
    std::vector<Receptacle const*> outlets; // those of the list that there are
    bool lists_outlets = false;
    std::optional<int> outlet_count;
    std::vector<std::size_t> runs_with; // numbers of circuits
    std::vector<std::string> asked;     // keys typed as "?"

    // The other circuit of its pair; null when it shares nothing.
    Circuit const* partner() const;
    // The sub-panel that it feeds; null when it feeds none.
    Panel const* fed_panel() const { return feeds.empty() ? nullptr : feeds.front(); }
    // It feeds a panel that has circuits: what it carries is the panel's question, not its `load`.
    bool feeds_loads() const;
    bool on_dc() const; // protected by a fuse of direct current
    bool is(PanelPart part) const { return use && use->part == part; }
    bool is_spare() const { return is(PanelPart::spare); }
    bool is_motor() const { return motor.value_or(use && use->motor); }
    bool is_source() const { return use && use->source; }
    // "K1", of a pair "K1+K2" in the file's order: what its cable is labelled with.
    std::string cable_mark() const;
    // The building that it stands in: its own, else its panel's; empty for the one that needs no name.
    std::string const& stands_in() const;
};

// Two circuits that share a neutral and a cable, in the file's order.
struct Pair {
    Circuit const *first = nullptr, *second = nullptr;
    Tie tie = Tie::none; // may be said at one member only
    bool existing() const { return first->existing && second->existing; }
};

struct Panel {
    std::size_t number = 0; // among `Building::panels`, in the file's order; of one that is not listed from there on
    bool listed = true;     // false: known only as what feeds another; it has no spaces
    std::string name, fed_from;
    Above above_named = Above::service; // what the words of `fed_from` tell
    std::string building;
    // The panel that it hangs on and the circuit there. A feeder that is said and not there is `feeder_said` alone.
    bool feeder_said = false;
    Panel const* above = nullptr;
    Circuit const* feeder = nullptr;
    std::string above_called; // as said; the panel may not be there
    // Of a DC panel: the AC circuit that its power supply hangs on. It has a source of its own, and no feeder.
    Circuit const* power_supply = nullptr;
    std::int64_t efficiency = 900'000; // of the power supply, in millionths
    std::vector<Panel const*> below;   // panels that hang on it, in the file's order
    std::vector<Circuit const*> circuits;

    // All sources that can feed it, in the file's order; at least one for a job that was read. A sub-panel has those of
    // the panel above, at most narrowed.
    std::vector<Feed> feeds;
    std::vector<Supply const*> supplies; // of [[supply]], as it names them
    std::optional<Supply> own_supply;    // its one unnamed source, or what a sub-panel narrows that above to
    Legs legs = Legs::two;
    bool takes_two_poles = true; // a two-pole breaker reaches two legs here

    Layout layout;
    int spaces = 0;
    std::vector<OnIs> handles; // by space (0 is not used)
    Numbering numbering = Numbering::across;
    Corner first = Corner::top_left;
    Hang hang = Hang::upright;
    std::optional<PanelEnd> main_at;
    BusLegs bus_legs = BusLegs::by_row;
    std::vector<Leg> row_legs;
    std::vector<int> tandem, blocked, dead;
    std::vector<std::vector<int>> lines; // of spaces that take pairs: panel/lines.h

    std::optional<Amps> main, bus, output;
    std::optional<int> circuits_max, neutral_terminals;
    bool existing = false;
    std::vector<std::string> asked;

    // Direct current: it has fuses, one bus, and no legs. The one answer to that question.
    bool is_dc() const { return !feeds.empty() && legwork::is_dc(feeds.front().kind); }
    bool is_live(int space) const { return legwork::is_live(feeds, layout, space); }
};

// Where a run ends.
struct RunEnd {
    Panel const* panel = nullptr;
    WiringBox const* box = nullptr;
    std::string called; // as sheets name it
};

// A place where cables meet: a name that the job gives, else what stands for the end of one circuit's piece.
struct WiringBox {
    std::size_t number = 0;
    std::string name;
    bool named = false;  // by the job, so that two ends of that name are one box
    std::string room;    // of the circuit that reaches it first; empty when none does
    bool listed = false; // a [[box]], of which the rest may be known:
    std::string size;    // in words: "2-gang 32 in³"
    std::optional<Volume> volume;
    std::vector<std::string> devices;
    std::optional<bool> clamps; // cable clamps inside
};

// What a piece of cable between boxes is for.
enum class RunRole { unsaid, feed, on_to, switch_leg, travellers, line, load };

// One cable between two ends.
struct Run {
    std::string mark, name;              // "K1", "K1+K2", or mark and name of a [[cable]]
    bool of_circuit = false;             // a piece of a circuit's own way; else a [[cable]]
    std::vector<Circuit const*> carries; // in the file's order; of a [[cable]] what it says, mostly none
    int segment = 0;                     // of a circuit; 0: the home run
    RunRole role = RunRole::unsaid;      // of a [[cable]]
    Piece piece;
    bool to_switch = false; // of a circuit: it ends at a switch, as far as the name of that box tells
    RunEnd from, to;        // `from` is the end nearer the panel
    bool is_home_run() const { return of_circuit && segment == 0; }
    bool is_feeder() const { return of_circuit && to.panel; }
};

struct Situation {
    std::string name;
    std::vector<std::int64_t> share; // by number of the circuit, in millionths
    Supply const* supply = nullptr;  // what feeds the building then; null when not said
};

// Uses and circuits that run at the same time though they heat and cool.
struct Together {
    std::vector<Use const*> uses;
    std::vector<Circuit const*> circuits;
    bool has(Circuit const& c) const;
};

struct Dwelling {
    std::optional<Area> area;                   // without the basement; as the code measures it
    UnitSystem area_units = UnitSystem::metric; // that `area`, else `basement`, was typed in
    std::optional<Area> basement;
    std::optional<int> small_appliance_circuits, laundry_circuits; // all there are; nothing: those of the list
    std::optional<int> thermostats;
    std::vector<Together> together;
    struct Peak { // the largest draw of a service, and over how many days it was recorded
        Amps amps;
        int days = 0;
    };
    std::optional<Peak> peak;
    struct Managed { // a device holds these back to the limit together
        Amps limit;
        std::vector<Circuit const*> circuits;
        bool has(Circuit const& c) const;
    };
    std::optional<Managed> managed;
    std::vector<std::string> asked;
};

// A finding that a person lives with.
struct Accepted {
    std::string rule, why, by;
    Circuit const* circuit = nullptr; // null when it names none
    Panel const* panel = nullptr;
    bool of_nothing = false; // names what is not there: it covers nothing
};

struct Building {
    // As typed, for what is tried with a change (trial.h); nobody else looks at it.
    std::shared_ptr<typed::Job const> said;
    std::string name, code, revision;
    std::optional<Date> date;
    std::vector<std::string> languages;
    UnitSystem units = UnitSystem::metric;
    std::optional<Length> tails, loop;
    std::vector<std::string> asked;
    std::optional<Dwelling> dwelling;
    // Each in the file's order. Things point at each other, so none of these lists ever grows after resolve().
    std::vector<Supply> supplies;
    std::vector<Panel> panels;
    std::vector<Panel> unlisted;   // known only as what feeds one of `panels`: nobody judges, balances or prints them
    std::vector<Circuit> circuits; // of the file, then the feeders from what is not listed
    std::vector<Pair> pairs;
    std::vector<Situation> situations;
    std::vector<Run> runs;       // circuits (a pair once, at its first member) piece by piece, then the [[cable]]s
    std::deque<WiringBox> boxes; // as runs reach them
    std::vector<Accepted> accepts;

    Building() = default;
    ~Building() = default;
    Building(Building&&) = default;
    Building& operator=(Building&&) = default;
    Building(Building const&) = delete;
    Building& operator=(Building const&) = delete;
};

// A breaker of this circuit is switched off by hand while that source feeds the building.
bool is_off(Feed const& feed, Circuit const& circuit);

// Null when there is none. For what people type and for plans, which name things; rules have no use for them.
Circuit const* circuit_named(Building const& building, std::string_view mark);
Panel const* panel_named(Building const& building, std::string_view name);
Run const* cable_named(Building const& building, std::string_view mark); // a [[cable]]

} // namespace legwork
