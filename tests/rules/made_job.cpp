// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "made_job.h"
#include "building/resolve.h"

#include "job/job.h"
#include "panel/layout.h"

#include <stdexcept>

namespace made {

Make one_pole(std::string mark, int space) {
    Make m;
    m.c.name = "Bench " + mark;
    m.c.mark = std::move(mark);
    m.c.panel = "Main";
    if (space) m.space(space);
    return m.breaker(20_A).cable("12/2").load(600_VA);
}

Make two_pole(std::string mark, int space) {
    auto m = one_pole(std::move(mark), space);
    m.c.poles = 2;
    m.c.tie = Tie::two_pole_breaker;
    return m;
}

typed::Job job(std::vector<typed::Circuit> circuits, SupplyKind kind) {
    typed::Job j;
    j.name = "Test bench";
    typed::Panel p;
    p.name = "Main";
    p.spaces = 24;
    p.main = 100_A;
    p.supply = typed::Supply{};
    p.supply->kind = kind;
    j.panels.push_back(p);
    j.circuits = std::move(circuits);
    return j;
}

typed::Job pair_job(Spot first, Spot second, Tie tie) {
    auto const member = [&](std::string mark, Spot s) {
        return one_pole(std::move(mark)).space(s.space, s.half).cable("12/3").pair("K", tie);
    };
    return job({member("K1", first), member("K2", second)});
}

Plan as_typed(typed::Job const& job) {
    Plan plan;
    for (typed::Panel const& panel : job.panels) {
        Layout const layout(panel);
        PanelPlan one;
        one.panel = panel.name;
        for (typed::Circuit const& c : job.circuits) {
            if (c.panel != panel.name) continue;
            auto at = c.space ? slots(layout, *c.space, c.poles) : std::vector<Spot>{};
            one.placements.push_back({c.mark, at, std::nullopt, at});
        }
        plan.panels.push_back(std::move(one));
    }
    return plan;
}

Findings found(std::string_view rule, typed::Job const& job, Plan const& plan, std::string_view edition) {
    Rule const* r = rule_named(rule);
    CodeBook const* book = code_book(edition);
    if (!r || !r->is_checked() || !book) throw std::invalid_argument("no such rule or edition");
    return judged(*r, {resolve(job), plan, *book}).findings();
}

Findings found(std::string_view rule, typed::Job const& job, std::string_view edition) {
    return found(rule, job, as_typed(job), edition);
}

std::string in_short(Findings const& findings) {
    std::string all;
    for (Finding const& f : findings) {
        if (!all.empty()) all += "; ";
        all += name(f.severity);
        for (auto const& mark : f.where.circuits) all += " " + mark;
        if (f.where.circuits.empty() && !f.where.panel.empty()) all += " " + f.where.panel;
    }
    return all;
}

std::string says(std::string_view rule, typed::Job const& job, std::string_view edition) {
    return in_short(found(rule, job, edition));
}

std::string says(std::string_view rule, typed::Job const& job, Plan const& plan, std::string_view edition) {
    return in_short(found(rule, job, plan, edition));
}

} // namespace made
