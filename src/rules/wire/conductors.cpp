// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The conductors that a circuit needs against those of its cable.
#include "rules/wire/list.h"
#include "rules/wire/outlet_volts.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto known_by_use = Gravity::second; // nobody said what it needs

// The first piece of its run that lacks a conductor.
CableRun const* lacking(std::vector<CableRun> const& runs, Circuit const& c) {
    auto const at = std::ranges::find_if(
        runs, [&](CableRun const& run) { return run.missing_hots + run.missing_neutrals > 0 && run.is_only_of(c); });
    return at == runs.end() ? nullptr : &*at;
}

// Nobody said what it needs: a range or a dryer usually has a neutral.
bool known_by_use_only(Circuit const& circuit) {
    return circuit.poles == 2 && circuit.outlets.empty() && circuit.third == ThirdWire::unsaid && !circuit.hot;
}

std::string_view conductors_topic(Circuit const& circuit) {
    Use const* use = circuit.use;
    bool const range_or_dryer = use && use->uses_neutral_at_240 && !use->source;
    return circuit.poles == 2 && range_or_dryer ? "wire-conductors/four-wire" : "wire-conductors";
}

std::string_view wanted(Circuit const& circuit) {
    if (circuit.poles == 1) return "a hot and a neutral";
    return needs_neutral(circuit) ? "two hots and a neutral" : "two hots";
}

Finding too_few(Case const& c, Circuit const& circuit, CableRun const& run) {
    bool const by_use = known_by_use_only(circuit);
    Finding f = finding(c, wire_conductors, by_use ? known_by_use : Gravity::usual, about(circuit, "cable"),
                        conductors_topic(circuit));
    if (f.severity == Severity::error) f.reference.source = Source::practice; // counted, whatever a code says
    auto const insulated =
        std::ranges::count_if(run.conductors, [](Conductor const& w) { return w.job != ConductorJob::ground; });
    f.message =
        fmt::format("{} needs {}{}; its {} has {}{}.", circuit.mark, wanted(circuit),
                    by_use ? fmt::format(" as most of its kind ({}) do", circuit.use ? circuit.use->name : "") : "",
                    run.kind, plural(static_cast<std::size_t>(insulated), "insulated conductor"),
                    circuit.hot ? fmt::format(", and its hot is said to be {}", circuit.hot->typed) : "");
    f.fix = by_use ? "Look at its terminals: pull a cable with three conductors and ground, or list the outlet if it "
                     "uses no neutral (outlets = [\"6-50R\"])."
                   : "Pull a cable with a conductor for each; the ground never stands in for a neutral.";
    return f;
}

// Some piece of its own run is of a known kind.
bool is_known(std::vector<CableRun> const& runs, Circuit const& c) {
    return std::ranges::any_of(runs, [&](CableRun const& run) { return !run.conductors.empty() && run.is_only_of(c); });
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const runs = cable_runs(c.building, c.book);
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc() || circuit.fed_panel()) continue; // a feeder is panel-feeder-wires' question
        CableRun const* run = lacking(runs, circuit);
        if (!run && !is_known(runs, circuit)) continue;
        auto const fits = [&](Receptacle const* r) { return volts_fit(runs, circuit, *r); };
        if (run && !std::ranges::all_of(circuit.outlets, fits)) continue; // wire-outlet speaks
        seen.looked();
        if (run) seen.found(too_few(c, circuit, *run));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_conductors{
    .id = "wire-conductors",
    .asks = "A two-pole circuit that uses a neutral has one in its cable.",
    .why = "Ranges, dryers and 14- types take 240 V for heat and 120 V for timers and lights. Without a neutral the "
           "120 V part comes back over the ground, and the frame that people touch is live.",
    .remedy = "Pull a cable with three insulated conductors and ground (10/3 in place of 10/2).",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::warning}, .ce = {Grade::error_on_new_work, Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
