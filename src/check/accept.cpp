// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has decided to live with, and what nobody may.
#include "check/accept.h"

#include "check/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct Refused {
    std::string_view rule;
    Acceptance::Of of;
    std::string_view why;
};
constexpr auto none = Acceptance::Of::none, some = Acceptance::Of::some;
constexpr std::string_view kAtOnce = "It burns, shocks or destroys as soon as the breaker closes.";
constexpr std::string_view kUnseen = "No breaker sees it, so it heats a wire in the wall until somebody smells it.";
constexpr std::string_view kDead = "What hangs on it does not work, or works on a voltage it is not made for.";

constexpr std::array kRefused{
    Refused{"mw-one-panel", none, kUnseen},
    Refused{"mw-same-space", none, kUnseen},
    Refused{"mw-in-phase-supply", none, kUnseen},
    Refused{"mw-opposite-legs", none, kUnseen},
    Refused{"mw-conductors", none, kAtOnce},
    Refused{"mw-neutral-current", none, kUnseen},
    Refused{"mw-line-to-line", none, "After a trip what looks dead is fed through the load between the two hots."},
    Refused{"mw-one-pole-gfci", none, "It trips at once or, wired wrong, protects nobody."},
    Refused{"panel-240-on-120", none, kDead},
    Refused{"panel-dead-space", none, kDead},
    Refused{"panel-two-legs", none, kDead},
    Refused{"tape-green", none, "Whoever touches a green or bare wire takes it for ground."},
    Refused{"wire-breaker-fits", none, kUnseen},
    Refused{
        "wire-outlet", some,
        "One that fits neither the volts nor the poles cannot be accepted: what is plugged in is destroyed at once."},
    Refused{"job-accept-unused", none, "It is about the [[accept]] itself: change that, or take it out."},
};

// Where a finding names no panel, the one that all of its circuits are in.
bool is_in(typed::Job const& job, Finding const& f, std::string const& panel) {
    if (!f.where.panel.empty()) return f.where.panel == panel;
    return !f.where.circuits.empty() && std::ranges::all_of(f.where.circuits, [&](std::string const& mark) {
        typed::Circuit const* c = circuit_of(job, mark);
        return c && c->panel == panel;
    });
}

bool covers(typed::Job const& job, typed::Accept const& a, Finding const& f) {
    if (a.rule != f.rule || (a.circuit.empty() && a.panel.empty())) return false;
    if (!a.circuit.empty() && std::ranges::find(f.where.circuits, a.circuit) == f.where.circuits.end()) return false;
    return a.panel.empty() || is_in(job, f, a.panel);
}

std::string place_of_accept(typed::Accept const& a) {
    if (a.circuit.empty()) return fmt::format("of panel \"{}\"", a.panel);
    return a.panel.empty() ? "of " + a.circuit : fmt::format("of {} in panel \"{}\"", a.circuit, a.panel);
}

Finding unused(Case const& c, std::size_t number) {
    typed::Accept const& a = c.job.accepts[number];
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
    if (acceptance(a.rule).of == none)
        f.fix += ". It could not hold in any case: findings of this rule are not accepted";
    return f;
}
} // namespace

Acceptance acceptance(std::string_view rule) {
    auto const at = std::ranges::find(kRefused, rule, &Refused::rule);
    return at == kRefused.end() ? Acceptance{} : Acceptance{at->of, at->why};
}

bool may_be_accepted(Finding const& f) { return !f.never_accepted && acceptance(f.rule).of != none; }

void apply_accepts(typed::Job const& job, Findings& findings) {
    for (Finding& f : findings) {
        if (f.accepted) continue;
        auto const a = std::ranges::find_if(job.accepts, [&](typed::Accept const& one) { return covers(job, one, f); });
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
