// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has decided to live with, and what nobody may.
#include "rules/accept.h"

#include "rules/rule.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Where a finding names no panel, the one that all of its circuits are in.
bool is_in(Job const& job, Finding const& f, std::string const& panel) {
    if (!f.where.panel.empty()) return f.where.panel == panel;
    return !f.where.circuits.empty() && std::ranges::all_of(f.where.circuits, [&](std::string const& mark) {
        Circuit const* c = circuit_of(job, mark);
        return c && c->panel == panel;
    });
}

bool covers(Job const& job, Accept const& a, Finding const& f) {
    if (a.rule != f.rule || (a.circuit.empty() && a.panel.empty())) return false;
    if (!a.circuit.empty() && std::ranges::find(f.where.circuits, a.circuit) == f.where.circuits.end()) return false;
    return a.panel.empty() || is_in(job, f, a.panel);
}

std::string place_of_accept(Accept const& a) {
    if (a.circuit.empty()) return fmt::format("of panel \"{}\"", a.panel);
    return a.panel.empty() ? "of " + a.circuit : fmt::format("of {} in panel \"{}\"", a.circuit, a.panel);
}

Finding unused(Case const& c, std::size_t number) {
    Accept const& a = c.job.accepts[number];
    Where where;
    where.key = "rule";
    where.accept = static_cast<int>(number);
    auto f = finding(c, "job-accept-unused", Severity::warning, where);
    Rule const* rule = rule_named(a.rule);
    f.message = fmt::format("The [[accept]] for {} {} covers nothing: {}", a.rule, place_of_accept(a),
                            rule && !rule->checked ? "that rule is not checked yet" : "there is no such finding");
    f.fix =
        "Take it out if the fault has been put right, so that it hides none that comes later; else name the circuit or "
        "the panel of the finding";
    if (rule && rule->accept.of == Acceptance::Of::none)
        f.fix += ". It could not hold in any case: findings of this rule are not accepted";
    return f;
}
} // namespace

bool may_be_accepted(Finding const& f) {
    Rule const* rule = rule_named(f.rule);
    return !f.never_accepted && !(rule && rule->accept.of == Acceptance::Of::none);
}

void apply_accepts(Job const& job, Findings& findings) {
    for (Finding& f : findings) {
        if (f.accepted) continue;
        auto const a = std::ranges::find_if(job.accepts, [&](Accept const& one) { return covers(job, one, f); });
        if (a == job.accepts.end()) continue;
        if (may_be_accepted(f)) {
            f.accepted = true;
            f.accepted_by = a->by;
            f.accepted_why = a->why;
        } else if (!f.accept_refused) {
            f.accept_refused = true;
            f.fix += " The [[accept]] for it does not hold: this one must be put right.";
        }
    }
}

Findings unused_accepts(Case const& c, Findings const& all) {
    Findings found;
    for (std::size_t i = 0; i < c.job.accepts.size(); ++i) {
        if (std::ranges::any_of(all, [&](Finding const& f) { return covers(c.job, c.job.accepts[i], f); })) continue;
        auto f = unused(c, i);
        f.message = as_sentence(std::move(f.message));
        f.fix = as_sentence(std::move(f.fix));
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
