// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/changes.h"

#include "job/terms.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

namespace legwork {

namespace {

struct Fact {
    ChangeKind kind;
    std::string what, value;
};

struct Thing {
    std::string mark; // with the number of its turn where a mark stands more than once
    std::string shown;
    std::vector<Fact> facts;
};

using Facts = std::vector<Fact>;

std::string yes(bool so) { return so ? "yes" : "no"; }
std::string yes(std::optional<bool> const& so) { return so ? yes(*so) : ""; }
std::string said(std::optional<Amps> const& a) { return a ? text(*a) : ""; }
std::string said(std::optional<int> const& n) { return n ? std::to_string(*n) : ""; }
std::string of_panel(Panel const* p) { return p ? p->name : ""; }

template <class T>
std::string in_order(std::vector<T> const& all) {
    return fmt::format("{}", fmt::join(all, ", "));
}

template <class T>
std::string listed(std::vector<T> all) { // where the order says nothing
    std::ranges::sort(all);
    return in_order(all);
}

// Feeders from what is not listed are given their marks as the file's order has it.
std::string known_as(Circuit const& c) {
    return c.listed || !c.fed_panel() ? c.mark : "feeder of " + c.fed_panel()->name;
}

std::string fed_by(Panel const& p) {
    return p.feeder && p.feeder->listed ? p.above_called + "/" + p.feeder->mark : p.above_called;
}

std::string said(Metal m) { return m == Metal::copper ? "copper" : "aluminium"; }

std::string reach(Circuit const& c) {
    auto const side = !c.reach_side ? "" : *c.reach_side == Side::left ? "left" : "right";
    return c.reach_spaces.empty() ? side : listed(c.reach_spaces);
}

std::string said(Tie t) {
    switch (t) {
    case Tie::handle_tie: return "handle tie";
    case Tie::two_pole_breaker: return "two-pole breaker";
    case Tie::none: break;
    }
    return "";
}

std::string said(Protection p) {
    switch (p) {
    case Protection::no: return "no";
    case Protection::breaker: return "at the breaker";
    case Protection::outlet: return "at the outlet";
    case Protection::unsaid: break;
    }
    return "";
}

std::string said(WirePlace place) {
    switch (place) {
    case WirePlace::dry: return "dry";
    case WirePlace::damp: return "damp";
    case WirePlace::wet: return "wet";
    case WirePlace::outdoors: return "outdoors";
    case WirePlace::buried: return "buried";
    case WirePlace::unsaid: break;
    }
    return "";
}

std::string said(RunRole role) {
    switch (role) {
    case RunRole::feed: return "feed";
    case RunRole::on_to: return "on to";
    case RunRole::switch_leg: return "switch leg";
    case RunRole::travellers: return "travellers";
    case RunRole::line: return "line";
    case RunRole::load: return "load";
    case RunRole::unsaid: break;
    }
    return "";
}

std::string said(Piece const& piece, UnitSystem units) {
    auto words = piece.called.empty() ? std::string("unknown cable") : piece.called;
    if (piece.length) words += ", " + text(*piece.length, units);
    if (!piece.to.empty()) words += ", to " + piece.to;
    if (piece.tap) words += ", a tap";
    if (piece.where != WirePlace::unsaid && !piece.where_guessed) words += ", " + said(piece.where);
    return words;
}

std::string said(std::vector<Piece> const& run, UnitSystem units) {
    std::vector<std::string> pieces;
    for (Piece const& piece : run) pieces.push_back(said(piece, units));
    return fmt::format("{}", fmt::join(pieces, "; then "));
}

std::string outlets(Circuit const& c) {
    std::vector<std::string> names;
    for (Receptacle const* r : c.outlets) names.emplace_back(r->name);
    return listed(std::move(names));
}

std::string sources(Panel const& p) {
    std::vector<std::string> all;
    for (Feed const& feed : p.feeds) {
        auto words = std::string(name(feed.kind));
        if (!feed.source.empty()) words = feed.source + ", " + words;
        if (feed.amps) words += ", " + text(*feed.amps);
        if (!feed.off.empty()) words += fmt::format(" (off: {})", listed(feed.off));
        all.push_back(std::move(words));
    }
    std::ranges::sort(all);
    return fmt::format("{}", fmt::join(all, "; "));
}

Facts facts_of(Circuit const& c, UnitSystem units) {
    using enum ChangeKind;
    return {
        {moved, "panel", of_panel(c.panel)},
        {moved, "space", c.space ? text(*c.space) : ""},
        {resized, c.on_dc() ? "fuse" : "breaker", said(c.breaker)},
        {resized, "poles", std::to_string(c.poles)},
        {renamed, "name", c.name},
        {renamed, "French name", c.name_fr},
        {renamed, "Spanish name", c.name_es},
        {renamed, "room", c.room},
        {re_cabled, "cable", said(c.run, units)},
        {re_cabled, "first box", c.box},
        {re_cabled, "shares its home run with", c.partner() ? c.partner()->mark : ""},
        {re_cabled, "conduit", yes(c.wiring == Wiring::conduit)},
        {re_cabled, "metal", said(c.metal)},
        {re_cabled, "colors", in_order(names(c.colors))},
        {re_cabled, "color of the hot", c.hot ? names({*c.hot}).front() : ""},
        {re_cabled, "terminals, °C", std::to_string(c.terminals)},
        {re_cabled, "third wire", std::string(word(c.third))},
        {other, "load", c.load ? text(*c.load) : ""},
        {other, "measured current", said(c.measured)},
        {other, "least circuit ampacity", said(c.mca)},
        {other, "largest breaker of the nameplate", said(c.mop)},
        {other, "use", c.use ? std::string(c.use->name) : ""},
        {other, "building", c.building},
        {other, "tie", said(c.tie)},
        {other, "ground-fault protection", said(c.gfci)},
        {other, "arc-fault protection", said(c.afci)},
        {other, "outlets", outlets(c)},
        {other, "outlet count", said(c.outlet_count)},
        {other, "continuous", yes(c.continuous)},
        {other, "motor", yes(c.motor)},
        {other, "fastened", yes(c.fastened)},
        {other, "split", yes(c.split)},
        {other, "switch loop", yes(c.switch_loop)},
        {other, "single", yes(c.single)},
        {other, "interlocked", yes(c.interlocked)},
        {other, "reach", reach(c)},
        {other, "off", yes(c.off)},
        {other, "existing", yes(c.existing)},
        {other, "fixed", yes(c.fixed)},
        {other, "note", c.note},
    };
}

Facts facts_of(Panel const& p) {
    using enum ChangeKind;
    return {
        {moved, "fed by", fed_by(p)},
        {moved, "power supply on", p.power_supply ? p.power_supply->mark : ""},
        {moved, "building", p.building},
        {resized, "spaces", std::to_string(p.spaces)},
        {resized, "main", said(p.main)},
        {resized, "bus", said(p.bus)},
        {resized, "output", said(p.output)},
        {renamed, "fed from", p.fed_from},
        {other, "source", sources(p)},
        {other, "spaces for half-size breakers", listed(p.tandem)},
        {other, "numbering", p.numbering == Numbering::across ? "across" : "down"},
        {other, "efficiency, millionths", p.is_dc() ? std::to_string(p.efficiency) : ""},
        {other, "most circuits", said(p.circuits_max)},
        {other, "neutral terminals", said(p.neutral_terminals)},
        {other, "blocked spaces", listed(p.blocked)},
        {other, "dead spaces", listed(p.dead)},
        {other, "existing", yes(p.existing)},
    };
}

Facts facts_of(Run const& r, UnitSystem units) {
    using enum ChangeKind;
    std::vector<std::string> carried;
    for (Circuit const* c : r.carries) carried.push_back(c->mark);
    return {
        {renamed, "name", r.name},          {re_cabled, "cable", said(r.piece, units)},
        {re_cabled, "from", r.from.called}, {re_cabled, "to", r.to.called},
        {other, "role", said(r.role)},      {other, "carries", listed(std::move(carried))},
    };
}

void add(std::vector<Thing>& all, std::string const& shown, Facts facts) {
    auto const earlier = std::ranges::count(all, shown, &Thing::shown);
    all.push_back({fmt::format("{} {}", earlier, shown), shown, std::move(facts)});
}

std::vector<Thing> panels_of(Building const& b) {
    std::vector<Thing> all;
    for (Panel const& p : b.panels) add(all, p.name, facts_of(p));
    for (Panel const& p : b.unlisted) add(all, p.name, facts_of(p));
    return all;
}

std::vector<Thing> circuits_of(Building const& b, UnitSystem units) {
    std::vector<Thing> all;
    for (Circuit const& c : b.circuits) add(all, known_as(c), facts_of(c, units));
    return all;
}

std::vector<Thing> cables_of(Building const& b, UnitSystem units) {
    std::vector<Thing> all;
    for (Run const& r : b.runs)
        if (!r.of_circuit) add(all, r.mark, facts_of(r, units));
    return all;
}

bool same(Facts const& a, Facts const& b) {
    return std::ranges::equal(a, b, [](Fact const& x, Fact const& y) { return x.value == y.value; });
}

// The one of these that has all the values; null when none has, or more than one.
Thing const* twin(Thing const& of, std::vector<Thing const*> const& among) {
    Thing const* found = nullptr;
    for (Thing const* t : among)
        if (same(of.facts, t->facts)) {
            if (found) return nullptr;
            found = t;
        }
    return found;
}

std::vector<Thing const*> missing_in(std::vector<Thing> const& in, std::vector<Thing> const& from) {
    std::vector<Thing const*> all;
    for (Thing const& t : from)
        if (std::ranges::find(in, t.mark, &Thing::mark) == in.end()) all.push_back(&t);
    return all;
}

void compare_facts(Changed thing, std::string const& mark, Facts const& before, Facts const& now,
                   std::vector<Change>& found) {
    for (std::size_t i = 0; i < now.size(); ++i)
        if (before[i].value != now[i].value)
            found.push_back({now[i].kind, thing, mark, now[i].what, before[i].value, now[i].value});
}

void compare(Changed thing, std::vector<Thing> const& before, std::vector<Thing> const& now, bool re_marks,
             std::vector<Change>& found) {
    auto const gone = missing_in(now, before), added = missing_in(before, now);
    std::vector<Thing const*> known_again;
    for (Thing const& t : now) {
        auto const old = std::ranges::find(before, t.mark, &Thing::mark);
        if (old != before.end()) {
            compare_facts(thing, t.shown, old->facts, t.facts, found);
            continue;
        }
        Thing const* was = re_marks ? twin(t, gone) : nullptr;
        if (was && twin(*was, added) == &t) {
            known_again.push_back(was);
            found.push_back({ChangeKind::re_marked, thing, t.shown, "mark", was->shown, t.shown});
        } else {
            found.push_back({ChangeKind::added, thing, t.shown, "", "", ""});
        }
    }
    for (Thing const* t : gone)
        if (std::ranges::find(known_again, t) == known_again.end())
            found.push_back({ChangeKind::gone, thing, t->shown, "", "", ""});
}

Facts facts_of(Building const& b) {
    using enum ChangeKind;
    auto const date = b.date ? fmt::format("{:04}-{:02}-{:02}", b.date->year, b.date->month, b.date->day) : "";
    return {{renamed, "name", b.name}, {other, "code", b.code}, {other, "revision", b.revision}, {other, "date", date}};
}

} // namespace

std::string_view word(ChangeKind kind) {
    switch (kind) {
    case ChangeKind::added: return "added";
    case ChangeKind::gone: return "gone";
    case ChangeKind::re_marked: return "re-marked";
    case ChangeKind::moved: return "moved";
    case ChangeKind::resized: return "resized";
    case ChangeKind::renamed: return "renamed";
    case ChangeKind::re_cabled: return "re-cabled";
    case ChangeKind::other: break;
    }
    return "changed";
}

std::string_view word(Changed thing) {
    switch (thing) {
    case Changed::job: return "job";
    case Changed::panel: return "panel";
    case Changed::circuit: return "circuit";
    case Changed::cable: break;
    }
    return "cable";
}

std::vector<Change> changes(Building const& before, Building const& now) {
    std::vector<Change> found;
    compare_facts(Changed::job, "", facts_of(before), facts_of(now), found);
    compare(Changed::panel, panels_of(before), panels_of(now), false, found);
    compare(Changed::circuit, circuits_of(before, now.units), circuits_of(now, now.units), true, found);
    compare(Changed::cable, cables_of(before, now.units), cables_of(now, now.units), true, found);
    return found;
}

} // namespace legwork
