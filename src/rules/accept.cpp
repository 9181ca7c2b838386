// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/accept.h"

#include "rules/check.h"

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
} // namespace

bool covers(Job const& job, Accept const& a, Finding const& f) {
    if (a.rule != f.rule || (a.circuit.empty() && a.panel.empty())) return false;
    if (!a.circuit.empty() && std::ranges::find(f.where.circuits, a.circuit) == f.where.circuits.end()) return false;
    return a.panel.empty() || is_in(job, f, a.panel);
}

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

} // namespace legwork
