// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/leg_amps.h"
#include "check/panel_rules.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// What limits a panel's current while one source feeds the house.
struct Limit {
    Amps most;
    std::string what; // "the main", "the feeder" (its neutral too)
};
std::optional<Limit> limit_of(Case const& c, typed::Panel const& panel, Feed const& feed) {
    std::optional<Limit> least;
    auto const add = [&](std::optional<Amps> a, std::string what) {
        if (a && (!least || *a < least->most)) least = Limit{*a, std::move(what)};
    };
    add(panel.main, "the main");
    if (panel.feeder) {
        if (typed::Circuit const* f = circuit_of(c.job, panel.feeder->mark)) add(f->breaker, "the feeder");
    } else {
        add(feed.amps, feed.source.empty() ? "the supply" : fmt::format("\"{}\"", feed.source));
    }
    return least;
}

struct Draw {
    double amperes = 0;
    std::string what; // "Leg A of panel \"Main\" draws"
    std::string situation;
};
Draw draw(Case const& c, typed::Panel const& panel, typed::Situation const* s, Feed const& feed) {
    auto const [a, b] = leg_amps(c, panel, s, feed);
    std::string const when(name_of(s)), where = fmt::format("panel \"{}\"", panel.name);
    if (is_dc(feed.kind)) return {a, fmt::format("The bus of {} draws", where), when};
    if (phase_degrees(feed.kind) == 0 && reaches(feed, Leg::a) && reaches(feed, Leg::b)) // one hot feeds both
        return {a + b, fmt::format("Both legs of {} together draw", where), when};
    return {std::max(a, b), fmt::format("Leg {} of {} draws", a >= b ? 'A' : 'B', where), when};
}

std::optional<Finding> overload(Case const& c, typed::Panel const& panel, Feed const& feed) {
    auto const limit = limit_of(c, panel, feed);
    if (!limit) return std::nullopt;
    Draw connected = draw(c, panel, nullptr, feed), named;
    for (typed::Situation const& s : c.job.situations)
        if (auto d = draw(c, panel, &s, feed); d.amperes > named.amperes) named = std::move(d);
    auto const over = [&](Draw const& d) { return is_over(d.amperes, limit->most); };
    bool const in_use = over(named);
    if (!in_use && !over(connected)) return std::nullopt;
    Draw const& worst = in_use ? named : connected;
    auto f = finding(c, "panel-main-overloaded", in_use ? Severity::warning : Severity::note, {panel.name, {}, "main"});
    f.message = fmt::format(
        "{} {} {}{}, more than {} carries, {}", worst.what, amps(worst.amperes), in_situation(worst.situation),
        feed.source.empty() ? "" : fmt::format(" from \"{}\"", feed.source), limit->what, amps(value(limit->most)));
    if (in_use)
        f.fix =
            "Leave something off in that situation, move load to the other leg (`legwork balance`), or have the service "
            "reckoned: it may have to grow";
    else if (c.job.situations.empty())
        f.fix =
            "It need not matter, since not everything runs at once: name the situations that do happen, and they are "
            "judged";
    else
        f.fix = "Hold to the named situations: each of them stays within it";
    return f;
}

struct Handles {
    double a = 0, b = 0;
};
Handles handle_sums(Case const& c, typed::Panel const& panel) {
    Layout const layout(panel);
    Handles sums;
    for (typed::Circuit const& circuit : c.job.circuits) {
        Placement const* p = placement_of(c.plan, circuit.mark);
        if (circuit.panel != panel.name || !p || !circuit.breaker) continue;
        for (Spot const s : p->slots) (layout.leg(s.space) == Leg::a ? sums.a : sums.b) += value(*circuit.breaker);
    }
    return sums;
}

// The situation that is judged worst: of the named ones, else "connected".
SituationLoad const* worst_situation(PanelPlan const& plan) {
    auto const first = plan.situations.begin() + (plan.situations.size() > 1 ? 1 : 0);
    auto const at = std::max_element(first, plan.situations.end(),
                                     [](auto const& x, auto const& y) { return x.imbalance_va < y.imbalance_va; });
    return at == plan.situations.end() ? nullptr : &*at;
}

std::string what_moves_give(PanelPlan const& plan) {
    std::vector<std::string> steps;
    for (TradeoffStep const& t : plan.tradeoff)
        if (t.moves > 0 && (steps.size() < 2 || &t == &plan.tradeoff.back()))
            steps.push_back(
                fmt::format("{} VA with {}", t.imbalance_va, plural(static_cast<std::size_t>(t.moves), "move")));
    auto words = steps.empty() ? fmt::format("{} VA", *plan.least_imbalance_va) : listed(steps);
    return words + (plan.proven ? "" : " (the best found; whether less is possible was not proven)");
}
} // namespace

Findings panel_main_overloaded(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels)
        for (Feed const& feed : feeds(c.job, panel))
            if (auto f = overload(c, panel, feed)) found.push_back(std::move(*f));
    return found;
}

Findings panel_legs_uneven(Case const& c) {
    constexpr std::int64_t least_worth_telling = 600; // VA over the least possible, and a tenth of the heavier leg
    Findings found;
    for (PanelPlan const& plan : c.plan.panels) {
        typed::Panel const* panel = panel_of(c.job, plan.panel);
        SituationLoad const* worst = worst_situation(plan);
        if (!panel || !worst || !plan.imbalance_va || !plan.least_imbalance_va) continue;
        auto const excess = *plan.imbalance_va - *plan.least_imbalance_va;
        auto const heavier = std::max(worst->leg_a_va, worst->leg_b_va);
        if (excess <= least_worth_telling || excess * 10 <= heavier) continue;
        auto const handles = handle_sums(c, *panel);
        auto f = finding(c, "panel-legs-uneven", Severity::warning, {plan.panel, {}, ""});
        f.message = fmt::format("The legs of panel \"{}\" differ by {} VA {} (A {} VA, B {} VA); a rebalance gives {}. "
                                "The breaker handles add up to {} on A and {} on B",
                                plan.panel, *plan.imbalance_va, in_situation(worst->name), worst->leg_a_va,
                                worst->leg_b_va, what_moves_give(plan), amps(handles.a), amps(handles.b));
        f.fix = "See `legwork balance` for the circuits to move";
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
