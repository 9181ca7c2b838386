// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "proposed_jobs.h"

#include "building/resolve.h"
#include "panel/layout.h"
#include "units/text.h"

#include "catch.h"
#include <fmt/format.h>

namespace legwork::testing {

typed::Circuit bare(std::string use, std::optional<VoltAmperes> load, int poles) {
    typed::Circuit c;
    c.mark = "K1";
    c.name = "Test circuit";
    c.use = std::move(use);
    c.poles = poles;
    c.tie = poles == 2 ? Tie::two_pole_breaker : Tie::none;
    c.load = load;
    c.run = {{"", from_mm(10'000), ""}};
    return c;
}

typed::Job job_of(std::vector<typed::Circuit> circuits, SupplyKind kind) {
    typed::Job job;
    typed::Panel p;
    p.name = "Main";
    p.spaces = 24;
    p.supply = typed::Supply{};
    p.supply->kind = kind;
    job.panels.push_back(p);
    for (typed::Circuit& c : circuits)
        if (c.panel.empty()) c.panel = "Main";
    job.circuits = std::move(circuits);
    return job;
}

Plan as_typed(typed::Job const& job) {
    Plan plan;
    for (typed::Panel const& panel : job.panels) {
        PanelPlan one;
        one.panel = panel.name;
        for (typed::Circuit const& c : job.circuits) {
            if (c.panel != panel.name) continue;
            auto at = c.space ? slots(Layout(panel), *c.space, c.poles) : std::vector<Spot>{};
            bool const one_leg = c.poles == 1 && !at.empty();
            one.placements.push_back(
                {c.mark, at, one_leg ? std::optional(Layout(panel).leg(at.front().space)) : std::nullopt, at});
        }
        plan.panels.push_back(std::move(one));
    }
    return plan;
}

std::vector<Proposal> all_proposed(typed::Job const& job, std::string_view edition) {
    return proposals(resolve(job), as_typed(job), *code_book(edition));
}

Proposal proposed(typed::Job const& job, std::string_view edition) {
    auto const all = all_proposed(job, edition);
    REQUIRE(all.size() == 1);
    return all.front();
}

std::string sized(typed::Job const& job, std::string_view edition) {
    auto const p = proposed(job, edition);
    CHECK((p.breaker || p.has_cable()) == p.find_out.empty());
    std::string words = p.breaker ? text(*p.breaker) : std::string();
    for (auto const& kind : p.cables) words += (words.empty() || kind.empty() ? "" : " ") + kind;
    return words.empty() ? "?" : words;
}
std::string sized(typed::Circuit circuit, std::string_view edition) {
    return sized(job_of({std::move(circuit)}), edition);
}

std::string steps_of(Proposal const& p) {
    std::string all;
    for (Step const& s : p.steps)
        all += fmt::format("{}{}\n", s.says, s.reference.edition.empty() ? "" : " [" + text(s.reference) + "]");
    return all;
}

} // namespace legwork::testing
