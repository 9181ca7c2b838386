// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Who stands on which space.
#include "job/spaces.h"
#include "job/reading.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>

namespace legwork {

namespace {

struct Tenant {
    Spot spot;
    std::size_t circuit;
};
using Tenants = std::map<int, std::vector<Tenant>>; // of one panel, by space

bool clash(Spot a, Spot b) { return a.space == b.space && (a.half == 0 || b.half == 0 || a.half == b.half); }

// Complains and is false when the breaker cannot stand there at all.
bool fits(TableReader& t, typed::Circuit const& c, typed::Panel const& p, std::vector<Spot> const& spots) {
    if (c.space->space > p.spaces) {
        t.complain("space", fmt::format("the panel {} has {} spaces", quoted(p.name), p.spaces),
                   fmt::format("give a space from 1 to {}", p.spaces));
        return false;
    }
    if (spots.empty()) {
        t.complain("space",
                   fmt::format("space {} ends its column: there is none below for the second pole", c.space->space),
                   "a two-pole breaker is named by the lower of its two numbers, both in one column");
        return false;
    }
    for (Spot const s : spots)
        if (std::ranges::find(p.blocked, s.space) != p.blocked.end()) {
            t.complain("space", fmt::format("space {} must stay empty: it is in the panel's list  blocked", s.space),
                       "move the circuit, or take the space off that list");
            return false;
        }
    return true;
}

void settle(Reading& r, std::size_t i, std::vector<Spot> const& spots, Tenants& tenants) {
    TableReader& t = r.circuits[i];
    for (Spot const s : spots)
        for (Tenant const& other : tenants[s.space])
            if (clash(s, other.spot)) {
                auto const line = r.out.source().place(r.circuits[other.circuit].value_at("space")).line;
                t.complain("space",
                           fmt::format("{} stands on {} already, in line {}", r.circuits[other.circuit].what(),
                                       text(other.spot), line),
                           "move one of the two, or leave one space away: legwork balance finds a place");
                return;
            }
    for (Spot const s : spots) tenants[s.space].push_back({s, i});
}

void check_reach(TableReader& t, typed::Circuit const& c, typed::Panel const& p) {
    for (int const s : c.reach_spaces)
        if (s > p.spaces)
            t.complain("reach", fmt::format("the panel {} has {} spaces, and no {}", quoted(p.name), p.spaces, s),
                       fmt::format("give spaces from 1 to {}", p.spaces));
}

} // namespace

std::optional<int> space_below(typed::Panel const& panel, int space) {
    int const rows = (panel.spaces + 1) / 2;
    bool const across = panel.numbering == Numbering::across;
    if (!across && space == rows) return std::nullopt;
    int const below = across ? space + 2 : space + 1;
    return below <= panel.spaces ? std::optional(below) : std::nullopt;
}

std::vector<Spot> filled_spots(typed::Panel const& panel, Spot at, int poles) {
    if (at.space < 1 || at.space > panel.spaces) return {};
    if (poles == 1) return {at};
    auto const below = space_below(panel, at.space);
    if (!below) return {};
    return {at, {*below, at.half == 0 ? '\0' : at.half == 'a' ? 'b' : 'a'}};
}

void check_spaces(Reading& r) {
    std::map<std::string, Tenants> by_panel;
    for (std::size_t i = 0; i < r.circuits.size(); ++i) {
        typed::Circuit const& c = r.job.circuits[i];
        typed::Panel const* p = panel_of(r.job, c.panel);
        if (!p || p->spaces == 0) continue; // told already
        check_reach(r.circuits[i], c, *p);
        if (!c.space) continue;
        auto const spots = filled_spots(*p, *c.space, c.poles);
        if (fits(r.circuits[i], c, *p, spots)) settle(r, i, spots, by_panel[p->name]);
    }
}

} // namespace legwork
