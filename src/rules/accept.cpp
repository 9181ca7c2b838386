// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/accept.h"

#include "rules/check.h"

#include <algorithm>

namespace legwork {

namespace {
// Where a finding names no panel, the one that all of its circuits are in.
bool is_in(Panel const& panel, Finding const& f) {
    if (!f.where.panel.empty()) return f.where.panel == panel.name;
    return !f.where.circuits.empty() && std::ranges::all_of(f.where.circuits, [&](std::string const& mark) {
        return std::ranges::find(panel.circuits, mark, &Circuit::mark) != panel.circuits.end();
    });
}
} // namespace

bool covers(Accepted const& a, Finding const& f) {
    if (a.rule != f.rule || a.of_nothing || (!a.circuit && !a.panel)) return false;
    if (a.circuit && std::ranges::find(f.where.circuits, a.circuit->mark) == f.where.circuits.end()) return false;
    return !a.panel || is_in(*a.panel, f);
}

bool may_be_accepted(Finding const& f) {
    Rule const* rule = rule_named(f.rule);
    return !f.never_accepted && !(rule && rule->accept.of == Acceptance::Of::none);
}

void apply_accepts(Building const& building, Findings& findings) {
    for (Finding& f : findings) {
        if (f.accepted) continue;
        auto const a = std::ranges::find_if(building.accepts, [&](Accepted const& one) { return covers(one, f); });
        if (a == building.accepts.end()) continue;
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
