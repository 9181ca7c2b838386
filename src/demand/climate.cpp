// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/climate.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

// One part of a side: a load as listed, or a group of which a share counts.
struct SidePart {
    Phrase label, arithmetic;
    std::string_view topic;
    std::int64_t va = 0;
    LoadItems items;
    Source source = Source::seen;
    std::int64_t guessed_va = 0; // of `va`
};
using SideParts = std::vector<SidePart>;

std::int64_t sum_of(SideParts const& parts) {
    std::int64_t sum = 0;
    for (SidePart const& p : parts) sum += p.va;
    return sum;
}

std::int64_t guessed_of(SideParts const& parts) {
    std::int64_t sum = 0;
    for (SidePart const& p : parts) sum += p.guessed_va;
    return sum;
}

LoadItems items_of(SideParts const& parts) {
    LoadItems all;
    for (SidePart const& p : parts) all.insert(all.end(), p.items.begin(), p.items.end());
    return all;
}

void add_each(SideParts& parts, LoadItems const& items, std::string_view topic) {
    for (LoadItem const& i : items) parts.push_back({i.label, i.how, topic, i.va, {i}});
}

void list(StepList& steps, LoadItems const& items, std::string_view topic) {
    for (LoadItem const& i : items) steps.item(i.label, topic, i.how, i.va, i.marks());
}

// A group at a percent: of several its loads are listed first.
void add_share(StepList& steps, SideParts& parts, LoadItems const& items, Phrase const& what, std::int64_t percent,
               std::string_view topic) {
    if (items.empty()) return;
    if (percent == 100) return add_each(parts, items, topic);
    list(steps, items, topic);
    auto const all = sum_va(items);
    parts.push_back(
        {what, one_by_one({as_sum(figures(items)), as_share(all, percent)}), topic, share_of(all, percent), items});
}

// Heat of which slices count. The rule of one slice is a percent of all.
void add_separate(StepList& steps, SideParts& parts, LoadItems const& items, DemandBands bands,
                  std::string_view topic) {
    if (items.empty()) return;
    auto const what = say("load/heat-by-room");
    if (bands.size() == 1) return add_share(steps, parts, items, what, bands.front().percent, topic);
    auto const all = sum_va(items);
    auto const& first = bands.front();
    if (all <= first.up_to_va) return add_each(parts, items, topic);
    list(steps, items, topic);
    auto const counts = banded(all, bands);
    parts.push_back({what,
                     one_by_one({as_sum(figures(items)), say("load/above-first", figure(first.up_to_va), figure(all),
                                                             figure(bands.back().percent), figure(counts))}),
                     topic, counts, items, bands.back().source});
}

// What moves the air of these; of what heats as well nobody gives its part, nor is it ever less than a blower alone.
// `counts` is what of such a load is sure to count on this side.
template <class Counts>
void add_blowers(SideParts& parts, LoadItems const& items, std::string_view topic, Counts counts) {
    for (LoadItem i : items) {
        if (i.blower) {
            parts.push_back({i.label, i.how, topic, i.va, {i}});
            continue;
        }
        auto const sure = counts(i);
        i.label = say("load/blower-of", i.label);
        i.how = say("load/blower-unknown", figure(i.blower_va));
        i.va = i.blower_va;
        parts.push_back({i.label, i.how, topic, i.va, {i}, Source::practice, i.va - sure});
    }
}

void leave_out(StepList& steps, LoadItems const& items, RowFor<1> why) {
    for (LoadItem const& i : items) steps.item({why.number, {i.label}}, "never-together", i.how, i.va, i.marks());
}

LoadItem const* smallest(LoadItems const& items) {
    auto const at = std::ranges::min_element(items, {}, &LoadItem::va);
    return at == items.end() ? nullptr : &*at;
}

// Interlocked backup heat takes the place of its heat pump: the larger. Of several heat pumps nobody says whose it is:
// it is taken for the smallest's, so that the figure is never too low.
void add_pumps(StepList& steps, SideParts& parts, LoadItems const& pumps, LoadItems const& locked, std::int64_t percent,
               std::string_view topic) {
    auto const* stopped = locked.empty() ? nullptr : smallest(pumps);
    auto const is_stopped = [&](LoadItem const& i) { return stopped && stopped->circuit == i.circuit; };
    bool const pump_counts = stopped && share_of(sum_va(locked), percent) <= stopped->va;
    add_each(parts, only(pumps, [&](LoadItem const& i) { return pump_counts || !is_stopped(i); }), topic);
    if (pump_counts) return leave_out(steps, locked, "load/pump-counts");
    leave_out(steps, only(pumps, is_stopped), "load/backup-counts");
    add_share(steps, parts, locked, say("load/backup-heat"), percent, topic);
}

// Some group of the dwelling names this load beside one of those.
bool runs_with(Building const& building, LoadItem const& item, LoadItems const& others) {
    return building.dwelling && std::ranges::any_of(building.dwelling->together, [&](Together const& group) {
               return group.has(*item.circuit) &&
                      std::ranges::any_of(others, [&](LoadItem const& o) { return group.has(*o.circuit); });
           });
}

void show(StepList& steps, SideParts const& parts) {
    for (SidePart const& p : parts) steps.item(p.label, p.topic, p.arithmetic, p.va, marks_of(p.items), p.source);
}

void finish(StepList& steps, Kind kind, Phrase item, std::string_view topic, Phrase arithmetic, std::int64_t va,
            LoadItems const& items, Source source = Source::seen) {
    if (kind == Kind::counted)
        steps.counted(std::move(item), topic, std::move(arithmetic), va, marks_of(items), source);
    else
        steps.item(std::move(item), topic, std::move(arithmetic), va, marks_of(items), source);
}

std::vector<std::int64_t> figures_of(SideParts const& parts) {
    std::vector<std::int64_t> all;
    for (SidePart const& p : parts) all.push_back(p.va);
    return all;
}

struct ClimateSides {
    SideParts heat, cool;
    std::vector<std::int64_t> ways_to_heat;
};

ClimateSides sides(StepList& steps, Building const& building, LoadItems const& items, ClimateShares const& shares) {
    auto const all_heat = with_demand(items, {Demand::space_heat});
    auto const is_blower = [&](LoadItem const& i) { return counts_as_blower(i, shares.heat_percent); };
    auto const space = only(all_heat, [&](LoadItem const& i) { return !is_blower(i); });
    auto const pumps = with_demand(items, {Demand::heat_pump});
    auto const cooling = with_demand(items, {Demand::cooling});
    auto const is_locked = [](LoadItem const& i) { return i.demand == Demand::backup_heat && i.circuit->interlocked; };
    auto const is_free = [](LoadItem const& i) { return i.demand == Demand::backup_heat && !i.circuit->interlocked; };
    auto const separate = [&](LoadItem const& i) { return shares.is_separate && shares.is_separate(i); };
    ClimateSides s;
    std::int64_t before = 0;
    auto const end_of_way = [&] {
        if (auto const now = sum_of(s.heat); now > before) s.ways_to_heat.push_back(now - before), before = now;
    };
    add_separate(steps, s.heat, only(space, separate), shares.separate, shares.topic);
    end_of_way();
    add_share(steps, s.heat, only(space, [&](LoadItem const& i) { return !separate(i); }), say("load/electric-heat"),
              shares.heat_percent, shares.is_separate ? shares.rest_topic : shares.topic);
    end_of_way();
    add_pumps(steps, s.heat, pumps, only(items, is_locked), shares.backup_percent, shares.rest_topic);
    add_share(steps, s.heat, only(items, is_free), say("load/backup-with-pump"), shares.backup_percent, shares.topic);
    end_of_way();
    // Cooling that runs with any of the heat is added to all of it. So no more has to stand on the side of cooling:
    // whatever runs with some heat is there already.
    auto const heaters = items_of(s.heat);
    add_each(s.heat, only(cooling, [&](LoadItem const& i) { return runs_with(building, i, heaters); }),
             shares.cooling_topic);
    add_each(s.cool, cooling, shares.cooling_topic);
    if (!s.cool.empty()) add_each(s.cool, pumps, shares.cooling_topic); // it cools too
    // The blower runs in both seasons: 220.60 and 8-106(3) leave out what never runs together. It heats nothing itself,
    // so no share of heat (220.82(C), 62-118) is taken of it.
    add_blowers(s.heat, only(all_heat, is_blower), shares.rest_topic,
                [&](LoadItem const& i) { return share_of(i.va, shares.heat_percent); });
    if (!s.cool.empty())
        add_blowers(s.cool, only(all_heat, [](LoadItem const& i) { return i.blower || i.blower_va > 0; }),
                    shares.cooling_topic, [](LoadItem const&) { return std::int64_t{0}; });
    return s;
}

// The steps of both sides, what stands on either once, and last the one that counts.
void tell(StepList& steps, ClimateShares const& shares, ClimateSides const& both, Climate const& c) {
    auto const& [heat, cool, ways] = both;
    auto const hot = sum_of(heat), cold = sum_of(cool);
    SideParts const& larger = c.heat_counts ? heat : cool;
    if (heat.size() + cool.size() == 1) {
        SidePart const& p = larger.front();
        finish(steps, shares.kind, p.label, p.topic, p.arithmetic, p.va, p.items, p.source);
        return;
    }
    show(steps, heat);
    if (heat.size() > 1 && !cool.empty())
        steps.subtotal(say("load/heating-together"), shares.rest_topic, as_sum(figures_of(heat)), hot);
    // What stands on both sides was shown once.
    SideParts only_cool;
    std::ranges::copy_if(cool, std::back_inserter(only_cool), [&heating = both.heat](SidePart const& p) {
        return std::ranges::none_of(heating, [&](SidePart const& h) { return h.label == p.label; });
    });
    show(steps, only_cool);
    if (cool.size() > 1)
        steps.subtotal(say("load/cooling-together"), shares.cooling_topic, as_sum(figures_of(cool)), cold);
    auto source = Source::seen;
    for (SidePart const& p : larger)
        if (p.guessed_va == 0) source = std::max(source, p.source); // a guess is told apart: LoadStep::guessed_va
    if (cool.empty() || heat.empty())
        finish(steps, shares.kind, cool.empty() ? say("load/heating") : say("load/cooling"), larger.front().topic,
               as_sum(figures_of(larger)), c.va, c.counted, source);
    else
        finish(steps, shares.kind, say("load/larger-season"), "never-together",
               c.va < std::max(hot, cold) ? say("load/one-or-other-long", figure(hot), figure(cold), figure(c.va))
                                          : say("load/one-or-other", figure(hot), figure(cold), figure(c.va)),
               c.va, c.counted, source);
}

bool has(LoadItems const& items, LoadItem const& one) {
    return std::ranges::any_of(items, [&](LoadItem const& i) { return i.circuit == one.circuit; });
}
} // namespace

bool is_climate(LoadItem const& item) {
    return item.demand == Demand::space_heat || item.demand == Demand::heat_pump ||
           item.demand == Demand::backup_heat || item.demand == Demand::cooling;
}

bool counts_as_blower(LoadItem const& i, std::int64_t heat_percent) {
    return i.blower || (i.blower_va > 0 && share_of(i.va, heat_percent) <= i.blower_va);
}

Climate add_climate(StepList& steps, Building const& building, LoadItems const& items, ClimateShares const& shares) {
    Climate c;
    auto const all = only(items, is_climate);
    if (all.empty()) return c;
    c.empty = false;
    auto const both = sides(steps, building, all, shares);
    auto const& [heat, cool, ways] = both;
    auto const hot = sum_of(heat), cold = sum_of(cool);
    c.heat = items_of(heat);
    c.cool = items_of(cool);
    auto const more = [&](LoadItems const& side) { return shares.more ? shares.more(side) : 0; };
    // The larger with all that hangs on it: what one side adds further down (its long running) may outweigh the other.
    c.heat_counts = cool.empty() || (!heat.empty() && hot + more(c.heat) >= cold + more(c.cool));
    c.va = c.heat_counts ? hot : cold;
    c.other_va = c.heat_counts ? cold : hot;
    c.counted = items_of(c.heat_counts ? heat : cool);
    c.left_out = only(all, [&](LoadItem const& i) { return !has(c.counted, i); });
    if (c.heat_counts) c.ways_to_heat = ways;
    tell(steps, shares, both, c);
    auto const sure_hot = hot - guessed_of(heat), sure_cold = cold - guessed_of(cool);
    auto const sure = std::max(sure_hot, sure_cold);
    c.guess_decides =
        c.heat_counts != (cool.empty() || (!heat.empty() && sure_hot + more(c.heat) >= sure_cold + more(c.cool)));
    steps.last_is_guessed(std::clamp<std::int64_t>(c.va - sure, 0, guessed_of(c.heat_counts ? heat : cool)));
    return c;
}

} // namespace legwork
