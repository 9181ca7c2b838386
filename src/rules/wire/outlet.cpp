// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is plugged in against the volts, the poles and the amperes of its circuit.
#include "reckon/wire_fit.h"
#include "rules/wire/list.h"
#include "rules/wire/outlet_volts.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto amperes = Gravity::second; // and what has no ground; the volts and poles are the plain fault

std::string between_hots(Circuit const& circuit) {
    if (circuit.panel)
        for (Feed const& feed : circuit.panel->feeds)
            if (has_two_hots(feed.kind)) return fmt::format("{} V", volts_between_legs(feed.kind).count);
    return "240 V";
}

Finding wrong_volts(Case const& c, Circuit const& circuit, Receptacle const& r) {
    Finding f = finding(c, wire_outlet, Gravity::usual, about(circuit, "outlets"));
    f.never_accepted = true;
    bool const too_much = circuit.poles == 2;
    f.message = too_much
                    ? fmt::format("{}: {} is a 120 V type, and the circuit's two poles give it {}. What is plugged in "
                                  "is destroyed.",
                                  circuit.mark, r.name, between_hots(circuit))
                    : fmt::format("{}: {} needs two hots ({}), and the circuit has one pole (120 V).", circuit.mark,
                                  r.name, between_hots(circuit));
    f.fix = too_much ? "Use one pole and a neutral (poles = 1), or a receptacle made for 240 V."
                     : "Use a two-pole breaker (poles = 2), or a receptacle made for 120 V.";
    return f;
}

std::string ratings(ReceptacleRow const& row) {
    return row.least == row.most ? fmt::format("{} A", row.least) : fmt::format("{} A to {} A", row.least, row.most);
}

std::optional<Finding> wrong_amperes(Case const& c, Circuit const& circuit, Receptacle const& r) {
    if (!circuit.breaker) return std::nullopt;
    auto const [fits, disputed, lone, row, source] = outlet_fit(c, circuit, r);
    if (fits) return std::nullopt;
    Amps const breaker = *circuit.breaker;
    bool const own_rule = circuit.use && circuit.use->duty_cycle; // welders go by their own rule
    Finding f = finding(c, wire_outlet, own_rule || disputed ? Gravity::doubtful : amperes, about(circuit, "outlets"),
                        lone ? "wire-outlet/single" : "wire-outlet/amperes");
    f.reference.source = source;
    std::string const may = lone ? amps(value(breaker)) + " or more" : ratings(row);
    f.message = lone ? fmt::format("{}: {} is rated {} A; the one receptacle on a {} breaker is rated {}.",
                                   circuit.mark, r.name, r.amps, amps(value(breaker)), may)
                     : fmt::format("{}: {} is rated {} A; receptacles on a {} breaker are rated {}.", circuit.mark,
                                   r.name, r.amps, amps(value(breaker)), may);
    if (disputed)
        f.message += " Readings of the code differ: one of its tables asks for no less than that, another for no more.";
    f.fix = r.amps * 1000 < breaker.count
                ? fmt::format("Fit a receptacle rated {}, or a {} A breaker.", may, r.amps)
                : fmt::format("Fit a receptacle rated {}, or wire and breaker for {} A.", may, r.amps);
    return f;
}

std::optional<Finding> no_ground(Case const& c, Circuit const& circuit, Receptacle const& r) {
    if (r.ground || circuit.existing) return std::nullopt;
    Finding f = finding(c, wire_outlet, amperes, about(circuit, "outlets"), "wire-outlet/no-ground");
    f.message = fmt::format("{}: {} has no ground; it stands in old work only.", circuit.mark, r.name);
    f.fix = r.hots == 2 ? "Fit a four-wire type (14-) on a cable with neutral and ground, or say existing = true."
                        : "Fit a grounding type (5-15R), or say existing = true.";
    return f;
}

std::optional<Finding> fault_of(Case const& c, std::vector<CableRun> const& runs, Circuit const& circuit,
                                Receptacle const& r) {
    if (!volts_fit(runs, circuit, r)) return wrong_volts(c, circuit, r);
    auto f = wrong_amperes(c, circuit, r);
    return f ? f : no_ground(c, circuit, r);
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const runs = cable_runs(c.building, c.book);
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc()) continue;
        Findings faults;
        std::vector<Receptacle const*> told; // a type listed twice is one fault
        for (Receptacle const* r : circuit.outlets) {
            if (std::ranges::find(told, r) != told.end()) continue;
            told.push_back(r);
            if (auto f = fault_of(c, runs, circuit, *r)) faults.push_back(std::move(*f));
        }
        if (faults.empty() && (told.empty() || !circuit.breaker)) continue; // without a breaker no amperes are judged
        seen.looked();
        seen.found(std::move(faults));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_outlet{
    .id = "wire-outlet",
    .asks = "Each receptacle fits the volts, the poles and the amperes of its circuit.",
    .why = "The shape of a receptacle promises volts and amperes. A 120 V type on two poles gives 240 V to whatever is "
           "plugged in; one rated below its breaker burns before the breaker trips.",
    .remedy = "Change the receptacle, or the breaker and the number of poles, until shape and circuit agree.",
    .gravity = {.nec = {Grade::error, Grade::error_on_new_work},
                .ce = {Grade::error, Grade::error_on_new_work},
                .doubt = "its amperes are those of a welder, which goes by a rule of its own, or readings of the code "
                         "differ on a larger one"},
    .accept =
        {Acceptance::Of::some,
         "One that fits neither the volts nor the poles cannot be accepted: what is plugged in is destroyed at once."},
    .judge = judge,
};

} // namespace legwork
