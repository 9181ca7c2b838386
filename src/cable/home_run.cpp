// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's cables are and need, before any conductor gets its job.
#include "cable/run.h"
#include "codebook/cables.h"
#include "codebook/receptacles.h"
#include "codebook/uses.h"

#include <algorithm>

namespace legwork {

bool needs_neutral(Circuit const& c) {
    if (c.poles == 1 || c.third == ThirdWire::neutral || c.fed_panel()) return true;
    if (std::ranges::any_of(c.outlets, &Receptacle::neutral)) return true;
    return c.outlets.empty() && c.use && c.use->uses_neutral_at_240;
}

bool needs_neutral(typed::Job const& job, typed::Circuit const& c) {
    if (c.poles == 1 || c.third == "neutral" || fed_panel(job, c)) return true;
    bool any_known = false;
    for (std::string const& name : c.outlets) {
        Receptacle const* r = receptacle_named(name);
        if (r && r->neutral) return true;
        any_known |= r != nullptr;
    }
    if (any_known) return false;
    Use const* use = use_named(c.use);
    return use && use->uses_neutral_at_240;
}

std::vector<typed::Segment> run_of(typed::Job const& job, typed::Circuit const& c) {
    auto run = c.run;
    typed::Circuit const* p = partner(job, c);
    if (!p || p->run.empty()) return run;
    if (run.empty()) return {p->run.front()};
    typed::Segment& home = run.front();
    if (home.kind.empty()) home.kind = p->run.front().kind;
    if (!home.length) home.length = p->run.front().length;
    if (home.to.empty()) home.to = p->run.front().to;
    return run;
}

Wiring wiring_of(typed::Job const& job, typed::Circuit const& c) {
    typed::Circuit const* p = partner(job, c);
    return p && p->wiring == Wiring::conduit ? Wiring::conduit : c.wiring;
}

} // namespace legwork
