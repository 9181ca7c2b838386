// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"

#include <fmt/format.h>

#include <array>

namespace legwork {

namespace {
// Both members that have it in their breaker, ground faults first.
struct OnePole {
    Where where;
    bool ground_fault = true; // else an AFCI, which may sense ground faults too
};
OnePole in_breakers(Pair const& p) {
    Where ground_fault = about(p, "gfci"), arc_fault = about(p, "afci");
    ground_fault.circuits.clear();
    arc_fault.circuits.clear();
    for (Circuit const* one : {p.first, p.second}) {
        if (one->gfci == Protection::breaker)
            ground_fault.circuits.push_back(one->mark);
        else if (one->afci == Protection::breaker)
            arc_fault.circuits.push_back(one->mark);
    }
    return ground_fault.circuits.empty() ? OnePole{arc_fault, false} : OnePole{ground_fault, true};
}

Finding say(Case const& c, Pair const& p, OnePole const& found) {
    auto const& where = found.where;
    bool const sure = found.ground_fault, one = where.circuits.size() == 1;
    auto f = finding(c, mw_one_pole_gfci, sure ? Gravity::usual : Gravity::doubtful, where);
    f.message = fmt::format("{} on a one-pole {} breaker, but {} a neutral: the current that comes back through it is "
                            "not the current that went out, so {}",
                            listed(where.circuits) + (one ? " is" : " are each"), sure ? "GFCI" : "AFCI",
                            one ? both(p) + " share" : "they share",
                            sure ? "it trips or does not protect" : "one that also senses ground faults trips");
    f.fix = fmt::format("Fit one two-pole {} breaker for both, or protect each circuit by a device after the neutrals "
                        "part ({} = \"outlet\")",
                        sure ? "GFCI" : "AFCI", sure ? "gfci" : "afci");
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        auto const found = in_breakers(p);
        if (found.where.circuits.empty()) continue;
        seen.looked();
        if (p.tie != Tie::two_pole_breaker) seen.found(say(c, p, found));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_one_pole_gfci{
    .id = "mw-one-pole-gfci",
    .asks = "Ground-fault protection in the breaker of a shared neutral is one two-pole breaker.",
    .why = "A GFCI compares what goes out on the hot with what comes back on the neutral. Of a shared neutral a "
           "one-pole GFCI sees the other circuit's current too, and trips at once or, wired wrong, protects nobody. "
           "The same holds for an AFCI that senses ground faults.",
    .remedy = "Fit one two-pole GFCI breaker, or leave the breakers plain and protect each circuit by a receptacle "
              "after the point where the neutrals part.",
    .gravity = {.nec = {Grade::error},
                .ce = {Grade::error},
                .doubt = "it is an AFCI, of which it is not said whether it senses ground faults"},
    .accept = {Acceptance::Of::none, "It trips at once or, wired wrong, protects nobody."},
    .judge = judge,
};

} // namespace legwork
