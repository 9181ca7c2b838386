// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/check.h"
#include "rules/job/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// An [[accept]] names a circuit, a panel or both.
std::string place_of_accept(Accepted const& a) {
    auto const in_panel = a.panel ? fmt::format("panel \"{}\"", a.panel->name) : std::string();
    if (!a.circuit) return "of " + in_panel;
    return a.panel ? fmt::format("of {} in {}", a.circuit->mark, in_panel) : "of " + a.circuit->mark;
}

Finding say(Case const& c, std::size_t number) {
    Accepted const& a = c.building.accepts[number];
    Where where;
    where.key = "rule";
    where.accept = static_cast<int>(number);
    auto f = finding(c, job_accept_unused, Gravity::usual, where);
    Rule const* rule = rule_named(a.rule);
    f.message = fmt::format("The [[accept]] for {} {} covers nothing: {}", a.rule, place_of_accept(a),
                            rule && !rule->is_checked() ? "that rule is not checked yet" : "there is no such finding");
    f.fix =
        "Take it out if the fault has been put right, so that it hides none that comes later; else name the circuit or "
        "the panel of the finding";
    if (rule && rule->accept.of == Acceptance::Of::none)
        f.fix += ". It could not hold in any case: findings of this rule are not accepted";
    return f;
}

// Each [[accept]] that covers none of these findings, not even in vain.
Verdict judge(Case const& c, Findings const& all) {
    Inspection seen;
    for (std::size_t i = 0; i < c.building.accepts.size(); ++i) {
        seen.looked();
        if (std::ranges::none_of(all, [&](Finding const& f) { return covers(c.building.accepts[i], f); }))
            seen.found(say(c, i));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const job_accept_unused{
    .id = "job-accept-unused",
    .asks = "Every [[accept]] of the job covers a finding that stands.",
    .why = "An acceptance outlives its fault. Left in the file it would hide the same fault when it comes back in "
           "another year, and nobody would know that it was never looked at.",
    .remedy = "Take the [[accept]] out once the fault is put right, or correct the circuit or panel that it names.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .accept = {Acceptance::Of::none, "It is about the [[accept]] itself: change that, or take it out."},
    .judge_findings = judge,
};

} // namespace legwork
