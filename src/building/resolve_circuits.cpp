// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[circuit]], and the pairs among them.
#include "building/resolving.h"
#include "codebook/stock/guess_where.h"
#include "codebook/stock/uses.h"
#include "panel/hang.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {

ThirdWire third_wire(std::string_view said) {
    using enum ThirdWire;
    for (auto const wire : {switched, traveller, spare, interconnect, neutral})
        if (word(wire) == said) return wire;
    return unsaid;
}

void take_words(Circuit& c, typed::Circuit const& said) {
    c.name = said.name;
    c.name_fr = said.name_fr;
    c.name_es = said.name_es;
    c.room = said.room;
    c.note = said.note;
    c.building = said.building;
    c.box = said.box;
    c.asked = said.asked;
}

void take_breaker(Circuit& c, typed::Circuit const& said) {
    c.breaker = said.breaker;
    c.poles = said.poles;
    c.tie = said.tie;
    c.tie_said = said.tie_said;
    c.space = said.space;
    c.fixed = said.fixed;
    c.gfci = said.gfci;
    c.afci = said.afci;
}

// The volts that its load is typed at: of the first source of its panel that gives it any, else the usual ones.
Volts own_volts(Circuit const& c) {
    bool const two = c.poles == 2 && !c.on_dc();
    if (c.panel)
        for (Feed const& f : c.panel->feeds)
            if (auto const volts = two ? volts_between_legs(f.kind) : volts_to_neutral(f.kind); volts > 0_V)
                return volts;
    return two ? 240_V : 120_V;
}

void take_loads(Circuit& c, typed::Circuit const& said) {
    c.load = said.load;
    c.load_in_amperes = said.load_amps.has_value();
    if (said.load_amps) c.load = own_volts(c) * *said.load_amps;
    c.measured = said.measured;
    c.mca = said.mca;
    c.mop = said.mop;
    c.continuous = said.continuous;
    c.motor = said.motor;
    c.fastened = said.fastened;
}

void take_wires(Circuit& c, typed::Circuit const& said) {
    for (typed::Segment const& s : said.run) {
        auto const where = s.where == WirePlace::unsaid ? said.where : s.where;
        c.run.push_back({cable_kind_named(s.kind), s.kind, s.length, s.to, where, false, s.tap});
    }
    if (c.run.empty() && said.where != WirePlace::unsaid) c.run.push_back({nullptr, {}, {}, {}, said.where});
    c.colors = wire_colors(said.colors);
    if (!said.hot.empty()) c.hot = wire_color(said.hot);
    c.third = third_wire(said.third);
    c.metal = said.metal;
    c.terminals = said.terminals;
    c.wiring = said.wiring;
}

void take_flags(Circuit& c, typed::Circuit const& said) {
    c.existing = said.existing;
    c.split = said.split;
    c.switch_loop = said.switch_loop;
    c.off = said.off;
    c.single = said.single;
    c.interlocked = said.interlocked;
}

void take_place(Resolving& r, Circuit& c, typed::Circuit const& said) {
    if (Panel* panel = r.panel(said.panel); panel && panel->listed) {
        c.panel = panel;
        panel->circuits.push_back(&c);
        typed::Panel const& typed_panel = *panel_of(r.job, said.panel);
        if (is_reach_limited(typed_panel, said)) c.reach = reachable(typed_panel, said);
    }
    if (!said.reach_side.empty()) c.reach_side = said.reach_side == "left" ? Side::left : Side::right;
    c.reach_spaces = said.reach_spaces;
    for (Panel& p : r.building.panels) {
        if (c.panel && p.above == c.panel && p.feeder == &c) c.feeds.push_back(&p);
        if (c.panel && p.power_supply == &c) c.supplies_dc.push_back(&p);
    }
    c.places = places_of(c.use, c.name, c.room, c.stands_in());
}

// What one member says of the home run holds for both.
void share_home_run(Circuit& c, std::vector<Piece> const& other) {
    if (other.empty()) return;
    if (c.run.empty()) {
        c.run = {other.front()};
        return;
    }
    Piece& home = c.run.front();
    if (home.called.empty()) {
        home.called = other.front().called;
        home.kind = other.front().kind;
    }
    if (!home.length) home.length = other.front().length;
    if (home.to.empty()) home.to = other.front().to;
}

void join(Circuit& a, Circuit& b) {
    auto const of_a = a.run, of_b = b.run;
    share_home_run(a, of_b);
    share_home_run(b, of_a);
    if (a.wiring == Wiring::conduit || b.wiring == Wiring::conduit) a.wiring = b.wiring = Wiring::conduit;
}

// A breaker with a wire and a load is no spare, whatever it is called.
bool is_spare_in_use(typed::Circuit const& said) {
    bool const draws = (said.load && said.load->count > 0) || (said.load_amps && said.load_amps->count > 0) ||
                       (said.measured && said.measured->count > 0);
    return said.use == "spare" && !said.run.empty() && draws;
}

void take_use(Circuit& c, typed::Circuit const& said) {
    c.spare_in_use = is_spare_in_use(said);
    c.use = use_named(c.spare_in_use ? guess_use(said.name, said.room, said.poles, said.outlets) : said.use);
    if (c.spare_in_use && c.is_spare()) c.use = nullptr;
    c.use_guessed = (said.use_guessed || c.spare_in_use) && c.use;
}
// Either member of a pair says where their home run lies; where both do, the worse place counts.
void take_where(Circuit& c, WirePlace said) {
    if (!c.run.empty()) c.run.front().where = std::max(c.run.front().where, said);
}

// Where nobody says where a piece runs: outdoors when it ends at what stands in the open. Of a run in pieces only the
// last goes by the circuit's own words, since those before it may be indoors.
void guess_where(Circuit& c) {
    bool const open = stands_in_the_open(c.name, c.room, c.places);
    for (std::size_t i = 0; i < c.run.size(); ++i) {
        Piece& piece = c.run[i];
        bool const last = i + 1 == c.run.size() && (i > 0 || !c.pair || c.partner()->run.size() < 2);
        auto const& box = i == 0 && piece.to.empty() ? c.box : piece.to;
        if (piece.where != WirePlace::unsaid || !(stands_in_the_open(box) || (last && open))) continue;
        piece.where = WirePlace::outdoors;
        piece.where_guessed = true;
    }
}

} // namespace

void resolve_circuits(Resolving& r) {
    for (std::size_t i = 0; i < r.job.circuits.size(); ++i) {
        Circuit& c = r.building.circuits[i];
        typed::Circuit const& said = r.job.circuits[i];
        take_words(c, said);
        take_use(c, said);
        take_breaker(c, said);
        take_wires(c, said);
        take_flags(c, said);
        c.outlets = receptacles_named(said.outlets);
        c.lists_outlets = !said.outlets.empty();
        c.outlet_count = said.outlet_count;
        take_place(r, c, said);
        take_loads(c, said); // in amperes: at the volts of the place
        for (std::string const& mark : said.runs_with)
            if (Circuit const* other = r.circuit(mark)) c.runs_with.push_back(other->number);
    }
}

void resolve_pairs(Resolving& r) {
    auto const typed_pairs = pairs(r.job);
    r.building.pairs.reserve(typed_pairs.size());
    for (typed::Pair const& said : typed_pairs) {
        Circuit& first = r.building.circuits[static_cast<std::size_t>(said.first - r.job.circuits.data())];
        Circuit& second = r.building.circuits[static_cast<std::size_t>(said.second - r.job.circuits.data())];
        r.building.pairs.push_back({&first, &second, std::max(first.tie, second.tie)});
        first.pair = second.pair = &r.building.pairs.back();
        join(first, second);
        take_where(first, said.second->where);
        take_where(second, said.first->where);
    }
    for (Circuit& c : r.building.circuits)
        if (!c.existing && !c.fed_panel()) guess_where(c);
}

} // namespace legwork
