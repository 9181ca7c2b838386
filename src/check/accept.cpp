// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has decided to live with, and what nobody may.
#include "check/check.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
// Faults that burn, shock or destroy as soon as the breaker closes.
constexpr std::array<std::string_view, 13> kNeverAccepted{
    "mw-one-panel",       "mw-same-space",   "mw-in-phase-supply", "mw-opposite-legs", "mw-conductors",
    "mw-neutral-current", "mw-line-to-line", "mw-one-pole-gfci",   "panel-240-on-120", "panel-dead-space",
    "panel-two-legs",     "tape-green",      "wire-breaker-fits"};

bool covers(Accept const& a, Finding const& f) {
    if (a.rule != f.rule || (a.circuit.empty() && a.panel.empty())) return false;
    if (!a.circuit.empty() && std::ranges::find(f.where.circuits, a.circuit) == f.where.circuits.end()) return false;
    return a.panel.empty() || a.panel == f.where.panel;
}
} // namespace

bool may_be_accepted(Finding const& f) {
    return !f.never_accepted && std::ranges::find(kNeverAccepted, f.rule) == kNeverAccepted.end();
}

void apply_accepts(Job const& job, Findings& findings) {
    for (Finding& f : findings) {
        if (f.accepted) continue;
        auto const a = std::ranges::find_if(job.accepts, [&](Accept const& one) { return covers(one, f); });
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
