// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/job/measure.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
using enum Station;
using enum PanelCover;
using Rows = std::vector<HowToMeasure>;

Rows const& circuit_rows() {
    static Rows const rows{
        {"breaker", "the breaker's rating", "read it on the breaker's handle", "your eyes and a lamp", "\"________ A\"",
         "whether the breaker protects its wire, and what the circuit may carry",
         "wire-breaker-fits wire-load-fits wire-continuous", panel, closed},
        {"poles", "its number of poles", "see whether one handle or two take it off", "your eyes", "____ (1 or 2)",
         "whether it gives 120 V or 240 V, and which legs it loads", "wire-outlet panel-two-legs mw-disconnect", panel,
         closed},
        {"space", "its space",
         "trace it: plug a lamp in, switch breakers off one by one until it goes out, write the number beside that one",
         "a lamp with a plug, or a circuit tracer", "______",
         "which leg it loads, and whether a pair is on opposite legs", "mw-opposite-legs panel-legs-uneven", panel,
         closed},
        {"fuse", "the fuse's rating", "read it on the fuse or its holder", "your eyes and a lamp", "\"________ A\"",
         "whether the fuse protects its wire, and what the circuit may carry", "dc-fuse", panel, closed},
        {"cable", "the cable", "read the print on its jacket in the panel, power off", "a lamp and reading glasses",
         "\"____/____\" (size / wires besides the ground)",
         "the largest breaker it may stand on, and whether it has a wire for each job",
         "wire-breaker-fits wire-conductors mw-conductors", panel, off_dead},
        {"hot", "which wire is its hot", "look at the breaker's terminal", "a lamp", "\"____________\"",
         "which wire of a shared cable the tape note means", "tape-as-neutral", panel, off_dead},
        {"measured", "the current", "clamp the hot with everything of it running", "a clamp meter", "\"________ A\"",
         "what it adds to its leg", "panel-legs-uneven panel-main-overloaded mw-neutral-current", panel, off_live},
        {"segments", "the cables of its run", "read the print on each jacket at the boxes, power off",
         "a lamp and reading glasses", "\"____/____\" for each piece", "the smallest wire, which rules the breaker",
         "wire-breaker-fits wire-smaller-downstream", outlet, off_dead},
        {"length", "the length of the cable", "walk the run with a tape, panel to box, bends and drops included",
         "a tape or a measuring wheel", "\"________ {m}\"", "how much voltage is lost on the way, and the cut of cable",
         "wire-drop dc-drop", run, closed},
        {"box", "its first box", "follow the cable from the panel", "your eyes", "\"____________\"",
         "where a pair parts, and what the tape note is headed", "", run, closed},
        {"colors", "the colours in its cable", "open the box at its end, power off, and write them down", "a lamp",
         "[\"________\", \"________\", \"________\"]",
         "which wire may be hot and which neutral, and what tape it takes",
         "tape-white-as-hot tape-as-neutral tape-green", outlet, off_dead},
        {"outlets", "the receptacle types", "look at the slots; the type is moulded into the face", "your eyes",
         "[\"________\", \"________\"]", "whether the receptacles fit its volts and amperes",
         "wire-outlet wire-conductors", outlet, closed},
        {"outlet_count", "how many outlets it has", "switch it off and count what is dead",
         "a plug-in tester or a lamp with a plug", "______", "how much it may be loaded", "wire-outlet-count", outlet,
         closed},
        {"use", "what it feeds there",
         "switch it off and see what goes dead; `legwork explain --table uses` has the words for it",
         "a plug-in tester or a lamp with a plug", "\"____________\"",
         "whether protection against ground faults is asked for", "gfci-needed afci-needed", outlet, closed},
        {"gfci", "whether it is protected against ground faults",
         "look for a TEST button on the breaker and on the first receptacle; press it and see what goes dead",
         "your eyes, a lamp with a plug", "\"breaker\" / \"outlet\" / false", "whether protection has to be added",
         "gfci-needed", outlet, closed},
        {"afci", "whether it is protected against arc faults",
         "read the breaker's label and that of the first receptacle; press TEST and see what goes dead",
         "your eyes, a lamp with a plug", "\"breaker\" / \"outlet\" / false", "whether protection has to be added",
         "afci-needed", panel, closed},
        {"load", "the load",
         "add up the nameplates, or clamp the hot with everything of it running and write `measured`",
         "nameplates, or a clamp meter for `measured`", "\"________ VA\"", "what it adds to its leg",
         "wire-load-fits wire-continuous panel-legs-uneven mw-neutral-current", appliance, closed},
        {"mca", "the minimum circuit ampacity", "read it on the unit's nameplate", "a lamp", "\"________ A\"",
         "the smallest wire it may have", "wire-breaker-fits", appliance, closed},
        {"mop", "the largest fuse or breaker", "read it on the unit's nameplate", "a lamp", "\"________ A\"",
         "the largest breaker it may have", "wire-breaker-fits", appliance, closed},
    };
    return rows;
}

constexpr std::array<std::string_view, 3> kSizes{"breaker", "fuse", "cable"};

// Of new work. What decides says the same as of work that is there.
Rows chosen_rows(std::string_view how, std::string_view with) {
    Rows rows;
    for (auto const& row : circuit_rows())
        if (std::ranges::count(kSizes, row.key) > 0) {
            rows.push_back(row);
            rows.back().how = how;
            rows.back().with = with;
            rows.back().at = desk;
            rows.back().cover = closed;
        }
    return rows;
}

Rows const& cable_rows() {
    static Rows const rows{
        {"kind", "the cable", "read the print on its jacket in the panel, power off", "a lamp and reading glasses",
         "\"____________\"", "what is cut from which reel", "", run, closed},
        {"length", "the length of the cable", "walk the run with a tape, panel to box, bends and drops included",
         "a tape or a measuring wheel", "\"________ {m}\"", "the cut of cable", "", run, closed},
    };
    return rows;
}

Rows const& panel_rows() {
    static Rows const rows{
        {"main", "the main's rating", "read it on the main's handle", "your eyes and a lamp", "\"________ A\"",
         "what each leg may carry, and what solar or a battery may add", "panel-main-overloaded panel-backfeed", panel,
         closed},
        {"bus", "the bus rating", "read it on the label in the panel's door", "your eyes and a lamp", "\"________ A\"",
         "what solar or a battery may add, and what a block of fuses may carry", "panel-backfeed dc-source", panel,
         closed},
        {"main_at", "the end that the main is at", "look where the main, or the lugs that the feed lands on, sit",
         "your eyes", "\"top\" / \"bottom\"", "where a source's breaker has to stand", "panel-backfeed", panel, closed},
        {"spaces", "the number of spaces", "count the positions of the bus, filled or not", "your eyes", "______",
         "what there is room for", "panel-no-room panel-spare-spaces", panel, closed},
        {"tandem", "which spaces take half-size breakers", "read it on the label in the panel's door",
         "your eyes and a lamp", "[____, ____, ____, ____]", "where two circuits may share a space", "panel-no-tandem",
         panel, closed},
        {"circuits_max", "the most circuits it is marked for", "read it on the label in the panel's door",
         "your eyes and a lamp", "______", "how many poles may stand in it", "panel-circuits", panel, closed},
        {"neutral_terminals", "its neutral terminals", "count the screws of the neutral bars, used or not, power off",
         "a lamp", "______", "whether every neutral has a terminal of its own", "panel-neutral-terminals", panel,
         off_dead},
        {"output", "the source's output", "read it on its nameplate", "your eyes and a lamp", "\"________ A\"",
         "whether the bus takes it beside the main; of direct current what may run together",
         "panel-backfeed dc-source", appliance, closed},
    };
    return rows;
}

Rows const& supply_rows() {
    static Rows const rows{
        {"amps", "what the source can give", "read the rating on its breaker or nameplate", "your eyes and a lamp",
         "\"________ A\"", "what may run together on it", "panel-main-overloaded", appliance, closed},
    };
    return rows;
}

Rows const& dwelling_rows() {
    static Rows const rows{
        {"area", "the floor area", "measure each floor that people live on, wall to wall, and add them up",
         "a tape, or the building's plan", "\"________ {m}²\"",
         "the least service, and the lighting load that is reckoned for it", "load-service", building, closed},
        {"basement", "the floor area of the basement", "measure it wall to wall", "a tape, or the building's plan",
         "\"________ {m}²\"", "the lighting load that is reckoned for it", "load-service", building, closed},
        {"small_appliance_circuits", "how many circuits the kitchen's receptacles have",
         "switch them off one by one and see what goes dead", "a lamp with a plug", "______",
         "what the load calculation counts for them", "load-service", building, closed},
        {"laundry_circuits", "how many circuits the laundry's receptacles have",
         "switch them off one by one and see what goes dead", "a lamp with a plug", "______",
         "what the load calculation counts for them", "load-service", building, closed},
        {"thermostats", "how many rooms have a thermostat of their own", "count them on a walk through the rooms",
         "your eyes", "______", "which share of the heating counts", "load-service", building, closed},
        {"peak", "the largest draw of a year",
         "ask who bills the power for the year's peak, or have a recorder hung on the service for 30 days",
         "the bill, or a recording ammeter", "{ amps = \"________ A\", days = ______ }",
         "what room the present service has", "load-service", building, off_live},
        {"energy_management", "what its energy management is set to", "read its setting on the device",
         "your eyes and the device's paper", "{ limit = \"________ A\", circuits = [\"______\"] }",
         "what counts of the loads that it holds back", "load-service", building, closed},
    };
    return rows;
}
} // namespace

std::vector<HowToMeasure> const& how_to_measure(Subject thing) {
    static Rows const none;
    switch (thing) {
    case Subject::circuit: return circuit_rows();
    case Subject::cable: return cable_rows();
    case Subject::panel: return panel_rows();
    case Subject::supply: return supply_rows();
    case Subject::dwelling: return dwelling_rows();
    case Subject::job:
    case Subject::situation:
    case Subject::box:
    case Subject::accept: break;
    }
    return none;
}

std::vector<HowToMeasure> const& how_to_choose(bool proposed) {
    static Rows const by_program =
        chosen_rows("`legwork check --propose` works that out", "the load, or the nameplate");
    static Rows const by_hand = chosen_rows("choose that by what it has to carry; nothing is proposed for this circuit",
                                            "the load, or the nameplate");
    return proposed ? by_program : by_hand;
}

std::string_view name(Station at) {
    switch (at) {
    case Station::desk: return "desk";
    case Station::panel: return "panel";
    case Station::run: return "run";
    case Station::outlet: return "outlet";
    case Station::appliance: return "appliance";
    case Station::building: break;
    }
    return "building";
}

std::string_view name(PanelCover cover) {
    switch (cover) {
    case PanelCover::closed: return "closed";
    case PanelCover::off_dead: return "off and dead";
    case PanelCover::off_live: break;
    }
    return "off and live";
}

} // namespace legwork
