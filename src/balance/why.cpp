// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/why.h"

#include "balance/seats/line_room.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }
constexpr std::size_t kNamed = 6;
constexpr std::int64_t kSteps = 1'000'000'000; // counted only

std::string listed(std::vector<std::string> words) {
    if (words.size() <= kNamed) return fmt::format("{}", fmt::join(words, ", "));
    auto const more = words.size() - kNamed;
    words.resize(kNamed);
    return fmt::format("{} and {} more", fmt::join(words, ", "), more);
}

std::string plural(int n, std::string_view one, std::string_view many) {
    return fmt::format("{} {}", n, n == 1 ? one : many);
}

struct SpacesNeeded {
    int singles = 0, halves = 0;
    std::vector<std::string> pairs, two_poles; // marks
    int spaces() const { return singles + halves + 2 * static_cast<int>(pairs.size() + two_poles.size()); }
    std::vector<std::string> wide() const {
        auto all = two_poles;
        all.insert(all.end(), pairs.begin(), pairs.end());
        return all;
    }
};

SpacesNeeded need_of(PanelModel const& m) {
    SpacesNeeded n;
    for (Unit const& u : m.units) {
        if (u.held) continue;
        if (u.kind == Unit::Kind::single)
            ++n.singles;
        else if (u.kind == Unit::Kind::two_pole)
            n.two_poles.push_back(m.mark(u.a));
        else if (u.half_held())
            ++n.halves;
        else
            n.pairs.push_back(m.mark(u.a) + "+" + m.mark(u.b));
    }
    return n;
}

// Free spaces, those that stand together joined by +: "5, 9+11, 14".
std::vector<std::string> gaps(PanelModel const& m, bool* all_single) {
    std::vector<std::string> found;
    bool open = false;
    *all_single = true;
    for (int c = 0; c < m.cells(); ++c) {
        if (!m.wall[at(c)]) {
            auto const space = std::to_string(m.space_of_cell[at(c)]);
            if (open)
                found.back() += "+" + space, *all_single = false;
            else
                found.push_back(space);
        }
        open = !m.wall[at(c)] && !m.line_end[at(c)];
    }
    return found;
}

std::string what_is_wide(SpacesNeeded const& n) {
    if (n.pairs.empty()) return n.two_poles.size() == 1 ? "a two-pole breaker" : "two-pole breakers";
    if (n.two_poles.empty()) return n.pairs.size() == 1 ? "a multiwire pair" : "multiwire pairs";
    return "two-pole breakers and multiwire pairs";
}

std::string too_many(SpacesNeeded const& n, int free, bool filed) {
    std::string const have = filed ? plural(free, "free space", "free spaces")
                                   : plural(free, "space", "spaces") + " not blocked, dead or fixed";
    std::string words = plural(n.singles, "one-pole circuit", "one-pole circuits");
    if (n.spaces() == n.singles)
        words += ", " + have;
    else {
        if (!n.two_poles.empty())
            words += ", " + plural(static_cast<int>(n.two_poles.size()), "two-pole breaker", "two-pole breakers");
        if (!n.pairs.empty())
            words += ", " + plural(static_cast<int>(n.pairs.size()), "multiwire pair", "multiwire pairs");
        if (n.halves) words += ", " + plural(n.halves, "half of a pair", "halves of pairs");
        words += fmt::format(": {} needed, {}", plural(n.spaces(), "space", "spaces"), have);
    }
    int const short_of = n.spaces() - free;
    return words + fmt::format("; free {} more, or feed some of it from a sub-panel or a larger panel", short_of);
}

std::string too_narrow(PanelModel const& m, SpacesNeeded const& n, LineRoom const& room, bool filed) {
    bool all_single = true;
    auto const left = gaps(m, &all_single);
    bool const facing = m.legs == Legs::two && m.panel->bus_legs == BusLegs::by_column;
    auto const two = facing ? "two free spaces that face each other" : "two free neighbouring spaces in one column";
    bool const one = n.wide().size() == 1;
    auto words = fmt::format("{} ({}) {} {}", what_is_wide(n), listed(n.wide()), one ? "needs" : "need",
                             one ? two : fmt::format("{} each", two));
    if (left.empty())
        words += "; no space is left";
    else if (all_single)
        words += fmt::format("; only single gaps are left: {}", listed(left));
    else
        words += fmt::format("; the gaps hold {} of {}: {}", room.pairs_that_fit(), room.pairs_asked(), listed(left));
    return words + (filed ? "; let circuits next to a gap move, or feed it from a sub-panel"
                          : "; take `fixed` or `blocked` off next to a gap, or feed it from a sub-panel");
}

std::string one_leg_short(PanelModel const& m, SpacesNeeded const& n) {
    int free[2] = {0, 0};
    for (int c = 0; c < m.cells(); ++c)
        if (!m.wall[at(c)]) ++free[m.leg[at(c)] == Leg::a ? 0 : 1];
    auto const pairs = static_cast<int>(n.pairs.size() + n.two_poles.size());
    return fmt::format("{} and what stands beside a fixed half take a space of each leg; leg A has {}, leg B has {}, "
                       "and {} {} to be placed"
                       "; free spaces of the shorter leg, or feed some of it from a sub-panel",
                       plural(pairs, "breaker of two spaces", "breakers of two spaces"), free[0], free[1],
                       plural(n.singles, "one-pole circuit", "one-pole circuits"), n.singles == 1 ? "is" : "are");
}

std::string no_neighbour(PanelModel const& m) {
    std::vector<std::string> who;
    for (Unit const& u : m.units)
        if (u.half_held())
            who.push_back(fmt::format("{} beside {} on {}", m.mark(u.a_held ? u.b : u.a), m.mark(u.a_held ? u.a : u.b),
                                      text(m.today[at(u.a_held ? u.a : u.b)].front())));
    return fmt::format("the halves of a multiwire pair need neighbouring spaces in one column, and there are not "
                       "enough for all: {}; let "
                       "the other half move, or free a space next to it",
                       listed(who));
}

// There is room, but not within reach of all wires; `proven`: every way was tried.
std::string out_of_reach(PanelModel const& m, bool proven) {
    std::vector<std::string> who;
    for (Unit const& u : m.units)
        for (int const c : {u.a, u.b})
            if (c >= 0 && !u.held && !m.reach[at(c)].empty()) who.push_back(m.mark(c));
    return fmt::format("{} within reach of the wires of {}; give them more cable, change `reach`, or free spaces there",
                       proven ? "there is no layout" : "no layout was found", listed(who));
}

// There is room if all wires reach all spaces.
bool has_room_without_reach(PanelModel const& m, LegProblem const& problem, LineRoom const& room) {
    Effort effort(kSteps, 0);
    return m.contradictions.empty() && problem.has_room() && room.pairs_asked() <= room.pairs_that_fit() &&
           room.fewest_moves(problem.least_on_a, problem.most_on_a, effort).moves;
}

} // namespace

std::string why_no_room(PanelModel const& m, bool filed, bool proven) {
    auto const problem = leg_problem(m);
    LineRoom const room(m);
    if (has_room_without_reach(m, problem, room)) return out_of_reach(m, proven);
    if (!m.contradictions.empty()) return fmt::format("{}", fmt::join(m.contradictions, "; "));
    auto const need = need_of(m);
    auto const free = static_cast<int>(std::ranges::count(m.wall, false));
    std::string words;
    if (need.spaces() > free)
        words = too_many(need, free, filed);
    else if (room.pairs_asked() > room.pairs_that_fit() || (problem.has_room() && need.halves == 0))
        words = too_narrow(m, need, room, filed);
    else if (!problem.has_room())
        words = one_leg_short(m, need);
    else
        words = no_neighbour(m);
    if (m.halves_left_alone) {
        std::vector<std::string> spaces;
        for (int const s : m.panel->tandem) spaces.push_back(std::to_string(s));
        words += fmt::format(". Half-size breakers in {} were not tried; with them there may be room", listed(spaces));
    }
    return words;
}

std::string why_not_so_few(PanelModel const& m, int asked, int fewest) {
    std::vector<std::string> fresh;
    for (Unit const& u : m.units)
        for (int const c : {u.a, u.b})
            if (c >= 0 && m.today[at(c)].empty()) fresh.push_back(m.mark(c));
    auto const what =
        fresh.empty() ? std::string("puts today's layout right") : fmt::format("has room for {}", listed(fresh));
    return fmt::format("no plan with {} {}; it takes {}", plural(asked, "move", "moves"), what, fewest);
}

} // namespace legwork
