// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is in the box of a switch at the end of a loop.
#include "cable/run.h"
#include "reckon/circuit_place.h"
#include "rules/need/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool has(CableRun const& run, ConductorJob job) {
    return std::ranges::find(run.conductors, job, &Conductor::job) != run.conductors.end();
}

// The cable from a light to its switch, where the file lists it.
CableRun const* loop_of(std::vector<CableRun> const& runs, Circuit const& c) {
    auto const at = std::ranges::find_if(
        runs, [&](CableRun const& r) { return r.segment > 0 && r.mark == c.mark && has(r, ConductorJob::switched); });
    return at == runs.end() ? nullptr : &*at;
}

Finding say(Case const& c, Circuit const& circuit, CableRun const* loop) {
    auto f = finding(c, need_neutral_at_switch, Gravity::usual, about(circuit, "switch_loop"));
    f.message =
        fmt::format("{}: {} brings a hot and its switched return to the switch, and no neutral; {} asks for one "
                    "in the box of a new switch",
                    circuit.mark, loop ? "the " + loop->kind + " loop" : "a two-wire loop", text(f.reference));
    f.fix = loop ? fmt::format("Pull {}/3 from the light to the switch, and cap the neutral in the switch box",
                               name(*loop->of->piece.kind->gauge))
                 : "Pull a three-wire cable from the light to the switch, and cap the neutral in the switch box; if it "
                   "is there, list that cable last in `segments`, with to = \"Switch\"";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    if (!c.building.dwelling) return seen.verdict();
    auto const runs = cable_runs(c.building, c.book);
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.switch_loop || circuit.existing || circuit.poles != 1 || circuit.on_dc()) continue;
        bool const conduit = circuit.wiring == Wiring::conduit;
        if (neutral_at_switch_asked(c.book, outlets_of(c.building, circuit), conduit) == Asks::no) continue;
        seen.looked();
        CableRun const* loop = loop_of(runs, circuit);
        if (!loop || !has(*loop, ConductorJob::neutral)) seen.found(say(c, circuit, loop));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const need_neutral_at_switch{
    .id = "need-neutral-at-switch",
    .asks = "In a dwelling's new work, a neutral is in the box of each switch.",
    .why = "Timers, motion sensors and dimmers live on a trickle of current. Where the box has no neutral they borrow "
           "the ground wire, or somebody pulls a neutral from another circuit.",
    .remedy = "Run a three-wire cable from the light to the switch and cap the neutral there.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
