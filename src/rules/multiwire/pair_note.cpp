// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/pair_note.h"

#include "rules/multiwire/pair_place.h"

#include <algorithm>

namespace legwork {

namespace {
std::vector<Pair> sound_pairs(Case const& c, Panel const& panel) {
    std::vector<Pair> found;
    for (Pair const& p : pairs(c.job))
        if (p.first->panel == panel.name && !place_fault(c, p)) found.push_back(p);
    return found;
}
} // namespace

Verdict note_of_pairs(Case const& c, Rule const& rule, void (*say)(Finding& f, std::string const& marks)) {
    Inspection seen;
    for (Panel const& panel : c.job.panels) {
        auto const some = sound_pairs(c, panel);
        if (some.empty()) continue;
        seen.looked(static_cast<int>(some.size()));
        Where where{panel.name, {}, "multiwire"};
        std::vector<std::string> cables;
        for (Circuit const& circuit : c.job.circuits)
            if (std::ranges::any_of(some, [&](Pair const& p) { return &circuit == p.first || &circuit == p.second; }))
                where.circuits.push_back(circuit.mark);
        for (Pair const& p : some) cables.push_back(cable_mark(c.job, *p.first));
        auto f = finding(c, rule, Gravity::usual, std::move(where));
        say(f, listed(cables));
        seen.found(std::move(f));
    }
    return seen.verdict();
}

} // namespace legwork
