// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Notes that hold for every pair that stands as a pair should: one a panel.
#include "codebook/cite.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::vector<Pair const*> sound_pairs(Case const& c, Panel const& panel) {
    std::vector<Pair const*> found;
    for (Pair const& p : c.building.pairs)
        if (p.first->panel == &panel && !place_fault(c, p)) found.push_back(&p);
    return found;
}

// `say` fills in message and fix; `marks`: "K1+K2 and L1+L2".
Verdict note_of_pairs(Case const& c, Rule const& rule, void (*say)(Finding& f, std::string const& marks)) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        auto const some = sound_pairs(c, panel);
        if (some.empty()) continue;
        seen.looked(static_cast<int>(some.size()));
        Where where{panel.name, {}, "multiwire"};
        std::vector<std::string> cables;
        for (Circuit const* circuit : panel.circuits)
            if (std::ranges::count(some, circuit->pair) > 0) where.circuits.push_back(circuit->mark);
        for (Pair const* p : some) cables.push_back(p->first->cable_mark());
        auto f = finding(c, rule, Gravity::usual, std::move(where));
        say(f, listed(cables));
        seen.found(std::move(f));
    }
    return seen.verdict();
}

void say_pigtail(Finding& f, std::string const& marks) {
    f.message = fmt::format("{}: at every box the shared neutral must stay joined when a device is taken off", marks);
    f.fix = "Splice the neutrals in the box and run one short wire (a pigtail) to each device; no neutral through the "
            "device's terminals";
}

Verdict judge_pigtail(Case const& c) { return note_of_pairs(c, mw_pigtail, say_pigtail); }

void say_grouping(Finding& f, std::string const& marks) {
    f.message = fmt::format("{}: in the panel it must be plain which neutral belongs to which hots", marks);
    f.fix = "Tie each pair's hots and neutral together once in the panel, or put the printed N marker on the neutral";
}

Verdict judge_grouping(Case const& c) {
    if (cite(c.book, mw_grouping.id).section.empty()) return Inspection{}.verdict(); // this code does not ask it
    return note_of_pairs(c, mw_grouping, say_grouping);
}
} // namespace

constinit Rule const mw_pigtail{
    .id = "mw-pigtail",
    .asks = "The neutral of a multiwire pair does not run through a device.",
    .why = "If the neutral goes in at one terminal of a receptacle and out at another, taking that receptacle off "
           "opens the neutral for everything beyond, and the two circuits stand in series across 240 V.",
    .remedy = "Splice the neutrals together in the box and bring one short wire from the splice to the device.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge_pigtail,
};

constinit Rule const mw_grouping{
    .id = "mw-grouping",
    .asks = "In the panel it is plain which neutral belongs to which hots.",
    .why = "Among a dozen white wires nobody can see whose neutral they are about to lift. Lifting the shared one with "
           "a breaker on puts up to 240 V on the lighter load.",
    .remedy = "Tie each pair's hots and neutral together at least once in the panel, or mark the neutral with the "
              "circuits: the printed N marker does it.",
    .gravity = {.nec = {Grade::note}},
    .judge = judge_grouping,
};

} // namespace legwork
