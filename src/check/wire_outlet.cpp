// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-outlet and wire-conductors: what is plugged in against what the circuit's wires and breaker give.
#include "cable/run.h"
#include "check/say.h"
#include "check/wire.h"
#include "check/wire_fit.h"
#include "check/wire_rating.h"
#include "codebook/receptacles.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// A neutral lies in the home run as it is made.
bool has_neutral(std::vector<CableRun> const& runs, typed::Circuit const& c) {
    return std::ranges::any_of(runs, [&](CableRun const& run) {
        return run.segment == 0 && run.missing_hots == 0 && run.missing_neutrals == 0 &&
               std::ranges::find(run.circuits, c.mark) != run.circuits.end() &&
               std::ranges::find(run.conductors, ConductorJob::neutral, &Conductor::job) != run.conductors.end();
    });
}

// 120 V types on two poles have a place only beside a neutral; 240 V types on one pole only in a pair, between its
// hots.
bool volts_fit(Case const& c, std::vector<CableRun> const& runs, typed::Circuit const& circuit, Receptacle const& r) {
    if (r.hots == 2) return circuit.poles == 2 || partner(c.job, circuit);
    if (circuit.poles == 1) return true;
    if (r.never_two_pole) return false;
    bool const beside_240 =
        std::ranges::any_of(receptacles_named(circuit.outlets), [](Receptacle const* o) { return o->hots == 2; });
    return beside_240 || has_neutral(runs, circuit); // beside 240 V outlets wire-conductors asks for the neutral
}

std::string between_hots(Case const& c, typed::Circuit const& circuit) {
    typed::Panel const* panel = panel_of(c.job, circuit.panel);
    if (panel)
        for (Feed const& feed : feeds(c.job, *panel))
            if (has_two_hots(feed.kind)) return fmt::format("{} V", volts_between_legs(feed.kind).count);
    return "240 V";
}

Finding wrong_volts(Case const& c, typed::Circuit const& circuit, Receptacle const& r) {
    Finding f = finding(c, "wire-outlet", Severity::error, about(circuit, "outlets"));
    f.never_accepted = true;
    bool const too_much = circuit.poles == 2;
    f.message = too_much
                    ? fmt::format("{}: {} is a 120 V type, and the circuit's two poles give it {}. What is plugged in "
                                  "is destroyed.",
                                  circuit.mark, r.name, between_hots(c, circuit))
                    : fmt::format("{}: {} needs two hots ({}), and the circuit has one pole (120 V).", circuit.mark,
                                  r.name, between_hots(c, circuit));
    f.fix = too_much ? "Use one pole and a neutral (poles = 1), or a receptacle made for 240 V."
                     : "Use a two-pole breaker (poles = 2), or a receptacle made for 120 V.";
    return f;
}

// Ratings that may stand on a breaker of this size: the row of the next circuit size; above the table its own.
ReceptacleRow row_for(CodeBook const& book, int breaker) {
    for (ReceptacleRow const& row : book.receptacles)
        if (row.circuit >= breaker) return row;
    return {breaker, breaker, breaker, Source::memory};
}

// The one receptacle of a circuit, and not a duplex.
bool is_lone(typed::Circuit const& c, Receptacle const& r) {
    return (c.single || r.single) && c.outlets.size() == 1 && c.outlet_count.value_or(1) <= 1;
}

std::string ratings(ReceptacleRow const& row) {
    return row.least == row.most ? fmt::format("{} A", row.least) : fmt::format("{} A to {} A", row.least, row.most);
}

std::optional<Finding> wrong_amperes(Case const& c, typed::Circuit const& circuit, Receptacle const& r) {
    if (!circuit.breaker) return std::nullopt;
    Amps const breaker = *circuit.breaker;
    auto const row = row_for(c.book, static_cast<int>((breaker.count + 999) / 1000));
    bool const lone = c.book.lone_receptacle && is_lone(circuit, r);
    bool const fits = lone ? Amps{r.amps * 1000} >= breaker : r.amps >= row.least && r.amps <= row.most;
    if (fits) return std::nullopt;
    Source const source = lone ? *c.book.lone_receptacle : row.source;
    Use const* use = use_of(circuit);
    bool const sure = source != Source::memory && !(use && use->duty_cycle); // welders go by their own rule
    Finding f = finding(c, "wire-outlet", sure ? unless_existing(circuit.existing) : Severity::warning,
                        about(circuit, "outlets"), lone ? "wire-outlet/single" : "wire-outlet/amperes");
    f.reference.source = source;
    std::string const may = lone ? amps(value(breaker)) + " or more" : ratings(row);
    f.message = lone ? fmt::format("{}: {} is rated {} A; the one receptacle on a {} breaker is rated {}.",
                                   circuit.mark, r.name, r.amps, amps(value(breaker)), may)
                     : fmt::format("{}: {} is rated {} A; receptacles on a {} breaker are rated {}.", circuit.mark,
                                   r.name, r.amps, amps(value(breaker)), may);
    f.fix = r.amps * 1000 < breaker.count
                ? fmt::format("Fit a receptacle rated {}, or a {} A breaker.", may, r.amps)
                : fmt::format("Fit a receptacle rated {}, or wire and breaker for {} A.", may, r.amps);
    return f;
}

std::optional<Finding> no_ground(Case const& c, typed::Circuit const& circuit, Receptacle const& r) {
    if (r.ground || circuit.existing) return std::nullopt;
    Finding f = finding(c, "wire-outlet", Severity::warning, about(circuit, "outlets"), "wire-outlet/no-ground");
    f.message = fmt::format("{}: {} has no ground; it stands in old work only.", circuit.mark, r.name);
    f.fix = r.hots == 2 ? "Fit a four-wire type (14-) on a cable with neutral and ground, or say existing = true."
                        : "Fit a grounding type (5-15R), or say existing = true.";
    return f;
}

// The first piece of its run that lacks a conductor.
CableRun const* lacking(std::vector<CableRun> const& runs, typed::Circuit const& c) {
    auto const at = std::ranges::find_if(runs, [&](CableRun const& run) {
        return run.missing_hots + run.missing_neutrals > 0 && run.circuits == std::vector{c.mark};
    });
    return at == runs.end() ? nullptr : &*at;
}

// Nobody said what it needs: a range or a dryer usually has a neutral.
bool known_by_use_only(typed::Circuit const& circuit) {
    return circuit.poles == 2 && receptacles_named(circuit.outlets).empty() && circuit.third.empty() &&
           circuit.hot.empty();
}

std::string_view conductors_topic(typed::Circuit const& circuit) {
    Use const* use = use_of(circuit);
    bool const range_or_dryer = use && use->uses_neutral_at_240 && !use->source;
    return circuit.poles == 2 && range_or_dryer ? "wire-conductors/four-wire" : "wire-conductors";
}

std::string wanted(Case const& c, typed::Circuit const& circuit) {
    if (circuit.poles == 1) return "a hot and a neutral";
    return needs_neutral(c.job, circuit) ? "two hots and a neutral" : "two hots";
}

Finding too_few(Case const& c, typed::Circuit const& circuit, CableRun const& run) {
    bool const by_use = known_by_use_only(circuit);
    Finding f = finding(c, "wire-conductors", by_use ? Severity::warning : unless_existing(circuit.existing),
                        about(circuit, "cable"), conductors_topic(circuit));
    if (f.severity == Severity::error) f.reference.source = Source::practice; // counted, whatever a code says
    auto const insulated =
        std::ranges::count_if(run.conductors, [](Conductor const& w) { return w.job != ConductorJob::ground; });
    f.message = fmt::format("{} needs {}{}; its {} has {}{}.", circuit.mark, wanted(c, circuit),
                            by_use ? fmt::format(" as most of its kind ({}) do", circuit.use) : "", run.kind,
                            plural(static_cast<std::size_t>(insulated), "insulated conductor"),
                            circuit.hot.empty() ? "" : fmt::format(", and its hot is said to be {}", circuit.hot));
    f.fix = by_use ? "Look at its terminals: pull a cable with three conductors and ground, or list the outlet if it "
                     "uses no neutral (outlets = [\"6-50R\"])."
                   : "Pull a cable with a conductor for each; the ground never stands in for a neutral.";
    return f;
}
} // namespace

bool outlets_take_breaker(Case const& c, typed::Circuit const& circuit) {
    return std::ranges::none_of(receptacles_named(circuit.outlets),
                                [&](Receptacle const* r) { return wrong_amperes(c, circuit, *r).has_value(); });
}

Findings wire_outlet(Case const& c) {
    Findings found;
    auto const runs = cable_runs(c.job, c.book);
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (on_dc(c, circuit)) continue;
        std::vector<std::string_view> told; // a type listed twice is one fault
        for (Receptacle const* r : receptacles_named(circuit.outlets)) {
            if (std::ranges::find(told, r->name) != told.end()) continue;
            told.push_back(r->name);
            if (!volts_fit(c, runs, circuit, *r))
                found.push_back(wrong_volts(c, circuit, *r));
            else if (auto f = wrong_amperes(c, circuit, *r))
                found.push_back(std::move(*f));
            else if (auto g = no_ground(c, circuit, *r))
                found.push_back(std::move(*g));
        }
    }
    return found;
}

Findings wire_conductors(Case const& c) {
    Findings found;
    auto const runs = cable_runs(c.job, c.book);
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (on_dc(c, circuit) || fed_panel(c.job, circuit)) continue; // a feeder is panel-feeder-wires' question
        CableRun const* run = lacking(runs, circuit);
        if (!run) continue;
        auto const outlets = receptacles_named(circuit.outlets);
        bool const told_by_outlet =
            std::ranges::any_of(outlets, [&](Receptacle const* r) { return !volts_fit(c, runs, circuit, *r); });
        if (!told_by_outlet) found.push_back(too_few(c, circuit, *run));
    }
    return found;
}

} // namespace legwork
