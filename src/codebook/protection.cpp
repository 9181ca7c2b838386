// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/protection.h"

#include "codebook/cite.h"
#include "codebook/protection_rows.h"

#include <algorithm>

namespace legwork {

namespace {
using enum RoomPlace;

template <class Names>
bool lists(Names const& names, Use const* use) {
    return use && std::ranges::any_of(names, [&](std::string_view n) { return !n.empty() && n == use->name; });
}

constexpr std::array<std::string_view, 4> kAlwaysPlugged{"refrigerator", "freezer", "microwave", "door opener"};
constexpr std::array<std::string_view, 9> kOftenPlugged{"dryer",
                                                        "range",
                                                        "welder",
                                                        "pump",
                                                        "outdoor pump",
                                                        "central vacuum",
                                                        "battery charger",
                                                        "kiln",
                                                        "electric fireplace"};
constexpr std::array<std::string_view, 1> kIndoors{"air handler"};
// Listed heating and cooling equipment, of which reliefs speak.
constexpr std::array<std::string_view, 8> kHvac{"heat pump", "air conditioner", "air handler", "furnace",
                                                "boiler",    "heating",         "baseboard",   "backup heat"};

bool feeds_nothing_here(Outlets const& o) { return o.use && (o.use->source || o.use->demand == Demand::none); }

bool within(std::optional<Amps> breaker, Amps most) { return !breaker || *breaker <= most; }

bool in_scope(ReceptacleScope const& scope, Outlets const& o) {
    auto const fits = [&](int hots, Amps amps) {
        return (hots == 1 || scope.two_pole) && (!scope.most || amps <= *scope.most);
    };
    if (o.types.empty()) return fits(o.poles, o.breaker.value_or(Amps{0}));
    return std::ranges::any_of(o.types, [&](Receptacle const* r) { return fits(r->hots, Amps{r->amps * 1000}); });
}

// How far the row is about these outlets at all, whatever the edition: yes, perhaps or no.
Asks is_about(GfciRow const& row, ReceptacleScope const& scope, Outlets const& o) {
    if (!row.places.empty() && !o.places.any_of(row.places)) return Asks::no;
    if (!row.uses.front().empty() && !lists(row.uses, o.use)) return Asks::no;
    bool const hidden = o.use && o.use->dedicated && !o.joined.any_of(row.places); // "Bathroom and washer" are both
    if (row.general && o.use && (hidden || !o.use->receptacle)) return Asks::no;
    if (row.unless_counter_elsewhere && o.counter_elsewhere) return Asks::no;
    if (row.unless_indoors && o.indoors) return Asks::no;
    if (row.most && !within(o.breaker, *row.most)) return Asks::no;
    auto const plug = plugged(o);
    switch (row.of) {
    case GfciRow::Of::receptacles:
        if (plug == Plugged::no || (!row.any_volts && !in_scope(scope, o))) return Asks::no;
        return plug == Plugged::surely ? Asks::yes : Asks::perhaps;
    case GfciRow::Of::wired_in: return o.use && !o.use->lighting && plug != Plugged::surely ? Asks::yes : Asks::no;
    case GfciRow::Of::lighting: return o.use && o.use->lighting ? Asks::yes : Asks::no;
    case GfciRow::Of::use: break;
    }
    return Asks::yes;
}

GfciAsked ask(GfciRow const& row, CodeBook const& book, Outlets const& o, std::optional<Day> today) {
    Asks const about = is_about(row, gfci_scope(book), o);
    if (about == Asks::no) return {};
    GfciAsked found{&row, std::min(row.asks, about), row.hangs_on, row.until};
    if (about == Asks::perhaps && row.asks == Asks::yes) found.hangs_on = "it is plugged in";
    if (!o.in_dwelling && row.elsewhere == GfciRow::Elsewhere::no) return {};
    if (!o.in_dwelling && row.elsewhere == GfciRow::Elsewhere::perhaps && found.asks == Asks::yes) {
        found.asks = Asks::perhaps;
        found.hangs_on = "it belongs to a dwelling";
    }
    if (only_warns(cite(book, row.topic).source)) found.asks = std::min(found.asks, Asks::perhaps);
    if (found.until && !lists(kHvac, o.use)) found.until.reset();
    if (!found.until || (today && *today >= *found.until)) return found;
    if (row.unless_adopted.empty()) {
        found.asks = Asks::relieved;
    } else {
        found.asks = std::min(found.asks, Asks::perhaps);
        found.hangs_on = row.unless_adopted;
    }
    return found;
}

bool is_120_volt(Outlets const& o) {
    if (o.types.empty()) return o.poles == 1;
    return std::ranges::any_of(o.types, [](Receptacle const* r) { return r->hots == 1; });
}

// A place alone, or together with others of the same kind.
bool only_in(RoomPlaces places, RoomPlaces some) { return !places.empty() && places.without(some).empty(); }

// A sink or a pool is in some room, and does not tell in which.
constexpr RoomPlaces kTellNoRoom{sink, hot_tub, boat_hoist};

// "Island receptacles" in a kitchen are the counter's; "Kitchen and island" are both.
bool let_off_by_place(AfciTable const& t, Outlets const& o) {
    bool const only_the_counter = t.let_off.has(counter) && o.places.has(counter) && o.joined.empty();
    auto const places = only_the_counter ? o.places.without({kitchen}) : o.places;
    return only_in(places.without(kTellNoRoom), t.let_off);
}

// What it is for lets it off; receptacles only where no other place stands beside theirs.
bool let_off_by_use(AfciTable const& t, Outlets const& o) {
    if (!lists(t.uses_let_off, o.use)) return false;
    return !o.use->receptacle || o.joined.without(t.let_off).without(kTellNoRoom).empty();
}
} // namespace

Plugged plugged(Outlets const& o) {
    if (!o.types.empty()) return Plugged::surely;
    if (!o.use || feeds_nothing_here(o)) return Plugged::no;
    if (o.use->receptacle || lists(kAlwaysPlugged, o.use)) return Plugged::surely;
    return lists(kOftenPlugged, o.use) ? Plugged::perhaps : Plugged::no;
}

bool always_indoors(Use const& use) { return lists(kIndoors, &use); }

bool always_plugged_in(Use const& use) { return lists(kAlwaysPlugged, &use); }

GfciAsked gfci_asked(CodeBook const& book, Outlets const& o, std::optional<Day> today) {
    GfciAsked gravest;
    if (feeds_nothing_here(o)) return gravest;
    for (GfciRow const& row : gfci_rows(book))
        if (auto const asked = ask(row, book, o, today); asked.asks > gravest.asks) gravest = asked;
    return gravest;
}

bool gfci_hangs_on_use(CodeBook const& book, Outlets const& o) {
    if (o.use || !o.types.empty()) return false;
    return std::ranges::any_of(std::array{"receptacles", "appliance"}, [&](std::string_view use) {
        Outlets perhaps = o;
        perhaps.use = use_named(use);
        return gfci_asked(book, perhaps, std::nullopt).asks != Asks::no;
    });
}

Asks afci_asked(CodeBook const& book, Outlets const& o) {
    AfciTable const& t = afci_table(book);
    auto const plug = plugged(o);
    if (!o.in_dwelling || feeds_nothing_here(o) || !is_120_volt(o)) return Asks::no;
    if (o.breaker && (*o.breaker > Amps{t.most_amps * 1000} || *o.breaker < Amps{t.least_amps * 1000})) return Asks::no;
    if (let_off_by_use(t, o) || let_off_by_place(t, o)) return Asks::no;
    if (t.receptacles_only && plug == Plugged::no) return Asks::no;
    Asks const surest = plug == Plugged::perhaps || !o.breaker ? Asks::perhaps : Asks::yes;
    if (o.places.any_of(t.rooms)) {
        bool const at_home = o.places.any_of({kitchen, laundry}) || plug == Plugged::surely;
        bool const sure = at_home || (o.use && (o.use->lighting || !o.use->fixed));
        return sure ? surest : Asks::perhaps;
    }
    if (o.places.any_of(t.perhaps)) return Asks::perhaps;
    if (!o.places.without(kTellNoRoom).empty()) return Asks::no;
    // Nothing tells where: what a home is full of is asked about, a thing with a place of its own is not.
    bool const everywhere = o.use ? o.use->receptacle || o.use->lighting || o.use->all_over : plug == Plugged::surely;
    return everywhere ? Asks::perhaps : Asks::no;
}

Asks neutral_at_switch_asked(CodeBook const& book, Outlets const& o, bool conduit) {
    SwitchTable const& t = switch_table(book);
    if (t.not_in_conduit && conduit) return Asks::no;
    if (t.lighting_only && o.use && !o.use->lighting) return Asks::no;
    if (o.places.empty() || t.rooms.empty()) return o.use ? Asks::yes : Asks::perhaps;
    return o.places.any_of(t.rooms) ? Asks::yes : Asks::no;
}

} // namespace legwork
