// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load that the code reckons, against the service, the feeder and the main.
#include "reckon/service.h"
#include "demand/items.h"
#include "rules/load/list.h"
#include "words/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// A small dwelling's least size, and what is too much only from memory; another building, where all of it at once is
// seldom what runs.
constexpr auto let_off = Gravity::second, all_at_once = Gravity::third;

// What was there before this job: the panel, and all that it feeds.
bool all_existing(Panel const& panel) {
    return panel.existing && std::ranges::all_of(circuits_under(panel), &Circuit::existing);
}

Gravity::Of gravity(Case const& c, PanelLoad const& p) {
    if (p.load->all_at_once) return all_at_once;
    LoadQuestion const q{c.building, c.book, *p.panel, p.facts};
    auto const sure = sure_va(*p.load);
    // Too much only by what is remembered; of one leg alone nothing is known then.
    return sure < p.load->total_va && carries(q, sure, *p.facts.rating) ? let_off : Gravity::usual;
}

std::string way_out(PanelLoad const& p, bool situated) {
    std::string_view const what = p.panel->feeder_said ? "feeder" : "service";
    auto const larger = p.size.service ? fmt::format("a {} of {}", what, amps(value(*p.size.service)))
                                       : fmt::format("a larger {}", what);
    if (p.load->all_at_once)
        return fmt::format("Ask the authority what of it counts: loads that never run together may be left out. {}; "
                           "else plan {}",
                           situated ? "The named situations are judged by themselves (panel-main-overloaded)"
                                    : "Name what does run together as a [[situation]] and it is judged",
                           larger);
    return fmt::format("See the steps with `legwork load`. Plan {}; or smaller loads, loads that are interlocked, or a "
                       "device that holds some back and that the authority accepts",
                       larger);
}

Finding overload(Case const& c, PanelLoad const& p) {
    auto f = finding(c, load_service, gravity(c, p), {p.panel->name, {}, "main"},
                     p.load->all_at_once ? "load-service/listed" : "", all_existing(*p.panel));
    f.message = fmt::format("The load of panel \"{}\" comes to {}{} VA by the {} method. {}", p.panel->name,
                            p.load->unknown.empty() ? "" : "at least ", p.load->total_va, name(p.load->method),
                            english().words(p.verdict));
    f.fix = way_out(p, !c.building.situations.empty());
    return f;
}

Finding below_floor(Case const& c, PanelLoad const& p) {
    bool const is_load = p.size.floor_is_load;
    auto f = finding(c, load_service, is_load ? Gravity::usual : let_off, {p.panel->name, {}, "main"},
                     "load-service/minimum");
    std::string_view const what = p.panel->feeder_said ? "feeder" : "service";
    f.message = fmt::format("Panel \"{}\" carries all of a dwelling on {} of {}; the least for it is {}, whatever its "
                            "load",
                            p.panel->name, english().words(p.facts.rated_by), amps(value(*p.facts.rating)),
                            amps(value(*p.size.floor)));
    f.fix = fmt::format("Plan a {} of {} or more{}", what, amps(value(*p.size.floor)),
                        is_load ? "" : ", or ask the authority whether this counts as a one-family dwelling");
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (panel.circuits.empty()) continue;
        auto const p = permitted_load(c.building, c.plan, c.book, panel);
        if (!p.load || !p.facts.rating) continue;
        bool const is_below = p.size.floor && *p.facts.rating < *p.size.floor;
        if (p.size.fits && !is_below && !p.load->unknown.empty()) continue; // more is on it than is known
        seen.looked();
        if (!p.size.fits)
            seen.found(overload(c, p));
        else if (is_below)
            seen.found(below_floor(c, p));
        else
            seen.margin(value(p.size.to_carry) / value(*p.facts.rating), [&] {
                return fmt::format("{} on {} of panel \"{}\"", used_of(value(p.size.to_carry), *p.facts.rating),
                                   english().words(p.facts.rated_by), panel.name);
            });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const load_service{
    .id = "load-service",
    .asks = "The calculated load is within the service, the feeder and the main.",
    .why = "Not everything runs at once, and the code says how much to count: lighting by the area, the range and "
           "dryer by their tables, the larger of heating and cooling, and shares of the rest. A service below that sum "
           "trips on the coldest evening, or runs hot for years without tripping. Where the code has several methods "
           "for a building, it is enough that the load is within the service by one of them. A dwelling has a least "
           "service whatever its load.",
    .remedy =
        "Reckon it with `legwork load` before the electric heating, the range or the vehicle charger is bought. Then "
        "enlarge the service, choose smaller or interlocked loads, or add a load manager that the authority accepts.",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::warning, Grade::note},
                .ce = {Grade::error_on_new_work, Grade::warning, Grade::note}},
    .judge = judge,
};

} // namespace legwork
