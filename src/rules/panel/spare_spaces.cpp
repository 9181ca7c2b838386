// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Room for circuits of the years to come in the panel of a dwelling.
#include "codebook/positions.h"
#include "rules/panel/list.h"
#include "rules/panel/places.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto less = Gravity::second; // what is not sure; beside a least number, those left free

// A panel at the meter that feeds other panels and nothing else.
bool only_feeds_panels(Panel const& panel) {
    auto const feeds_one = [](Circuit const* c) { return c->fed_panel() != nullptr; };
    auto const is_other = [](Circuit const* c) {
        return !c->is_spare() && !c->is_source() && !c->is(PanelPart::feeder) && !c->fed_panel();
    };
    return panel.listed && std::ranges::any_of(panel.circuits, feeds_one) &&
           std::ranges::none_of(panel.circuits, is_other);
}

// The panel that the service of a dwelling ends in, in no outbuilding, alternating current; behind a panel that only
// feeds others the one it feeds.
bool is_service_panel(Panel const& panel) {
    if (!panel.building.empty() || only_feeds_panels(panel)) return false;
    if (panel.feeder_said && (!panel.above || !only_feeds_panels(*panel.above))) return false;
    return !panel.is_dc();
}

// It and the sub-panels of the same building below it, in the file's order.
std::vector<Panel const*> with_sub_panels(Panel const& top) {
    std::vector<Panel const*> all{&top};
    for (std::size_t i = 0; i < all.size(); ++i)
        for (Panel const* p : all[i]->below)
            if (p->building == top.building && std::ranges::find(all, p) == all.end()) all.push_back(p);
    return all;
}

// What stands already may be filled: the spares were for that.
bool is_old(Panel const& panel) {
    auto const was_there = [](Circuit const* c) { return c->existing; };
    return panel.existing || (!panel.circuits.empty() && std::ranges::all_of(panel.circuits, was_there));
}

struct Positions {
    int all = 0, taken = 0;
    int left() const { return all - taken; }
};
// A space that takes half-size breakers is two positions, unless a full-size breaker stands on it. A breaker without a
// wire leaves its position free, and a main among the spaces is no position.
Positions positions_of(Case const& c, Panel const& panel) {
    Layout const& layout = panel.layout;
    Positions p;
    auto const worth = [&](int space) { return layout.is_tandem(space) ? 2 : 1; };
    for (int s = 1; s <= panel.spaces; ++s)
        if (!layout.is_blocked(s) && !layout.is_dead(s)) p.all += worth(s);
    for (Circuit const* circuit : panel.circuits) {
        if (circuit->is_spare()) continue;
        auto const slots = slots_of(c, circuit->mark);
        int takes = slots.empty() ? circuit->poles : 0;
        for (Spot const s : slots) takes += s.half == 0 ? worth(s.space) : 1;
        (circuit->is(PanelPart::main) ? p.all : p.taken) += circuit->is(PanelPart::main) ? -takes : takes;
    }
    if (panel.circuits_max) p.all = std::min(p.all, *panel.circuits_max);
    return p;
}

// Electric heat that warms the whole dwelling. A heat pump, with or without its backup, may warm one room only.
enum class CentralHeat { no, perhaps, yes };
// An electric furnace or boiler; what heats the room it stands in is `heating`.
bool is_central_heat(Circuit const& c) { return c.use && c.use->demand == Demand::space_heat && !c.use->heating; }
CentralHeat central_heat(Building const& building) {
    auto found = CentralHeat::no;
    for (Circuit const& c : building.circuits) {
        if (c.poles != 2) continue; // the blower of a fuel furnace
        if (is_central_heat(c)) return CentralHeat::yes;
        if (c.use && (c.use->demand == Demand::heat_pump || c.use->demand == Demand::backup_heat))
            found = CentralHeat::perhaps;
    }
    return found;
}

std::optional<Amps> service_of(Panel const& panel) {
    if (panel.main) return panel.main;
    if (panel.feeder_said) return panel.feeder ? panel.feeder->breaker : std::nullopt;
    std::optional<Amps> largest;
    for (Feed const& f : panel.feeds)
        if (f.amps && (!largest || *f.amps > *largest)) largest = f.amps;
    return largest;
}

struct PositionsAsked {
    int sure, perhaps; // the least that is asked for sure; what is asked if a heat pump counts for nothing
};
PositionsAsked need_of(Case const& c, PositionsTable const& table, std::optional<Amps> service) {
    auto const& row = positions_row(table, service);
    int const full = row.positions, eased = row.with_central_heating;
    switch (central_heat(c.building)) {
    case CentralHeat::yes: return {eased, eased};
    case CentralHeat::perhaps: return {std::min(full, eased), full};
    case CentralHeat::no: break;
    }
    return {full, full};
}

// What is there against what is asked.
struct PanelPositions {
    std::optional<Amps> service;
    PositionsAsked need{};
    int here = 0, together = 0, left = 0; // together: with the sub-panels, as what is left is
    bool is_full = false;                 // panel-no-room speaks
};
PanelPositions room_of(Case const& c, PositionsTable const& table, Panel const& panel) {
    PanelPositions r;
    r.service = service_of(panel);
    r.need = need_of(c, table, r.service);
    r.here = positions_of(c, panel).all;
    for (Panel const* p : with_sub_panels(panel)) {
        auto const each = positions_of(c, *p);
        r.together += each.all;
        r.left += std::max(each.left(), 0);
    }
    PanelPlan const* plan = plan_of(c.plan, panel.name);
    r.is_full = plan && !plan->why.empty();
    return r;
}

// Of a table with a least number of positions.
Finding too_few(Case const& c, PositionsTable const& table, Panel const& panel, PanelPositions const& r, bool sure) {
    sure = sure && r.together < r.need.sure && panel.legs == Legs::two;
    auto f = finding(c, panel_spare_spaces, sure ? Gravity::usual : less, {panel.name, {}, "spaces"});
    f.reference.source = table.source;
    auto const of_service =
        r.service ? fmt::format("for a service of {}", text(*r.service)) : "for the smallest service";
    auto const asked = r.here >= r.need.sure ? r.need.perhaps : r.need.sure;
    f.message = fmt::format("Panel \"{}\" has {}, and a dwelling needs {} {}{}", panel.name,
                            plural(static_cast<std::size_t>(std::max(r.here, 0)), "breaker position"), asked,
                            of_service, r.here >= r.need.sure ? " unless its heating is central and electric" : "");
    if (r.together > r.here)
        f.message +=
            fmt::format("; its sub-panels make it {}, and whether they count is for the inspector to say", r.together);
    f.fix = fmt::format("Fit a panel of {} positions or more (spaces that take half-size breakers, listed under "
                        "`tandem`, are two)",
                        asked);
    return f;
}

Finding full(Case const& c, PositionsTable const& table, Panel const& panel, int left) {
    auto f = finding(c, panel_spare_spaces, less, {panel.name, {}, "spaces"}, "panel-spare-spaces/left");
    f.reference.source = table.source;
    f.message =
        fmt::format("Panel \"{}\" has {} left free; {} must be left for later circuits", panel.name,
                    left == 0 ? "no position" : plural(static_cast<std::size_t>(left), "position"), table.left_free);
    f.fix = fmt::format("Fit a panel with {} more, or a sub-panel",
                        plural(static_cast<std::size_t>(table.left_free - left), "position"));
    return f;
}

void tell_margin(PositionsTable const& table, Panel const& panel, PanelPositions const& r, Inspection& seen) {
    seen.margin(static_cast<double>(r.need.perhaps) / r.here, [&] {
        return fmt::format("{} positions where {} are asked in panel \"{}\"", r.here, r.need.perhaps, panel.name);
    });
    if (r.left < table.left_free) return;
    seen.margin(static_cast<double>(table.left_free) / r.left, [&] {
        return fmt::format("{} positions left where {} are asked in panel \"{}\"", r.left, table.left_free, panel.name);
    });
}

// Spaces that no breaker stands on.
std::vector<int> free_spaces(Case const& c, Panel const& panel) {
    std::vector<int> taken, free;
    for (Circuit const* circuit : panel.circuits)
        if (!circuit->is_spare())
            for (Spot const s : slots_of(c, circuit->mark)) taken.push_back(s.space);
    Layout const& layout = panel.layout;
    for (int s = 1; s <= panel.spaces; ++s)
        if (!layout.is_blocked(s) && !layout.is_dead(s) && std::ranges::find(taken, s) == taken.end())
            free.push_back(s);
    return free;
}

struct SpareSpaces {
    int asked = 0;
    int positions = 0; // halves counted
    int spaces = 0;
    bool pair = false;    // two beside each other that a two-pole breaker fits on
    bool is_full = false; // panel-no-room speaks
};
SpareSpaces spares_of(Case const& c, PositionsTable const& table, Panel const& panel) {
    SpareSpaces r;
    r.asked = is_wye(panel.feeds) ? table.left_free_in_flat : table.left_free;
    for (Panel const* p : with_sub_panels(panel)) {
        auto const free = free_spaces(c, *p);
        r.positions += std::max(positions_of(c, *p).left(), 0);
        r.spaces += static_cast<int>(free.size());
        r.pair |= std::ranges::any_of(free, [&](int s) {
            auto const next = p->layout.next_in_column(s);
            return next && p->layout.takes_two_pole(s) && std::ranges::find(free, *next) != free.end();
        });
    }
    r.spaces = std::min(r.spaces, r.positions); // the label may let fewer
    PanelPlan const* plan = plan_of(c.plan, panel.name);
    r.is_full = plan && !plan->why.empty();
    return r;
}

std::string free_words(int spaces) {
    return spaces == 0 ? "no space" : plural(static_cast<std::size_t>(spaces), "space");
}

Finding few_spares(Case const& c, PositionsTable const& table, Panel const& panel, SpareSpaces const& r, bool sure) {
    bool const flat = r.asked != table.left_free, in_any_reading = r.positions < r.asked;
    auto f = finding(c, panel_spare_spaces, sure && in_any_reading ? Gravity::usual : less, {panel.name, {}, "spaces"},
                     flat ? "panel-spare-spaces/left" : "panel-spare-spaces");
    f.reference.source = table.source;
    f.message =
        fmt::format("Panel \"{}\" has {} free; a new panel of {} has {} at least", panel.name, free_words(r.spaces),
                    flat ? "a unit of an apartment building" : "a single dwelling", r.asked);
    if (!flat && in_any_reading && r.positions >= table.left_free_in_flat)
        f.message += fmt::format(" (in a unit of an apartment building {})", table.left_free_in_flat);
    if (!in_any_reading) f.message += fmt::format("; counted with their halves they are {}", r.positions);
    f.fix = fmt::format("Fit a panel with {} more, or a sub-panel",
                        plural(static_cast<std::size_t>(r.asked - r.spaces), "space"));
    return f;
}

Finding no_pair_free(Case const& c, PositionsTable const& table, Panel const& panel, SpareSpaces const& r) {
    auto f = finding(c, panel_spare_spaces, less, {panel.name, {}, "spaces"});
    f.reference.source = table.source;
    f.message =
        fmt::format("Panel \"{}\" has {} free, but no two beside each other that a later two-pole breaker fits on",
                    panel.name, free_words(r.spaces));
    f.fix = "Move a one-pole circuit, so that two neighbouring spaces of one column are free";
    return f;
}

// Of a table that asks for spares and for no number of positions.
void judge_spares(Case const& c, PositionsTable const& table, Panel const& panel, bool sure, Inspection& seen) {
    if (table.when_new && is_old(panel)) return;
    auto const r = spares_of(c, table, panel);
    seen.looked();
    if (r.is_full) return;
    if (r.spaces < r.asked) return seen.found(few_spares(c, table, panel, r, sure));
    if (table.room_for_two_pole && r.asked == table.left_free && panel.legs == Legs::two && !r.pair)
        return seen.found(no_pair_free(c, table, panel, r));
    seen.margin(static_cast<double>(r.asked) / r.spaces, [&] {
        return fmt::format("{} spaces free where {} are asked in panel \"{}\"", r.spaces, r.asked, panel.name);
    });
}

void judge_panel(Case const& c, PositionsTable const& table, Panel const& panel, bool sure, Inspection& seen) {
    if (table.rows.empty()) return judge_spares(c, table, panel, sure, seen);
    auto const room = room_of(c, table, panel);
    seen.looked();
    if (room.here < room.need.perhaps)
        seen.found(too_few(c, table, panel, room, sure)); // that it is full too comes of it
    else if (room.left < table.left_free && !room.is_full)
        seen.found(full(c, table, panel, room.left));
    else
        tell_margin(table, panel, room, seen);
}

Verdict judge(Case const& c) {
    Inspection seen;
    PositionsTable const* table = dwelling_positions(c.book);
    if (!table || !c.building.dwelling) return seen.verdict();
    bool const sure =
        std::ranges::count_if(c.building.panels, is_service_panel) == 1; // of several it is not said which
    for (Panel const& panel : c.building.panels)
        if (is_service_panel(panel)) judge_panel(c, *table, panel, sure, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const panel_spare_spaces{
    .id = "panel-spare-spaces",
    .asks = "The panel of a dwelling leaves spaces free for later circuits.",
    .why =
        "A home gains circuits for as long as it stands. A panel that is full on the first day ends in overcrowded "
        "halves, doubled wires under one screw, or a feeder nobody planned. CE 2021 and later ask for four free spaces "
        "in a new panel of a single dwelling, two of them beside each other, and for two in a unit of an apartment "
        "building. Before, a least number of positions was asked that grows with the service (fewer with central "
        "electric heating), and two free.",
    .remedy = "Choose the panel by its spaces as well as by its amperes; leave two free beside each other.",
    .gravity = {.ce = {Grade::error_on_new_work, Grade::warning}},
    .judge = judge,
};

} // namespace legwork
