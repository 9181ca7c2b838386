// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A dwelling by blocks of floor area: CE 8-200.
#include "demand/climate.h"
#include "demand/methods.h"
#include "units/text.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

void add_basic(Work& w, BlockLoads const& b) {
    auto const& home = *w.q.building.dwelling;
    auto const units = home.area_units;
    w.notes.push_back(home.basement ? say("load/area-by-basement", phrase(b.area_by), figure(b.basement_percent.value))
                                    : say("load/area-by", phrase(b.area_by)));
    Phrases parts;
    std::int64_t hundredths = 0; // of a square millimetre, so that percents stay whole
    if (home.area) {
        hundredths = home.area->count * 100;
        parts.push_back(with_unit(text(*home.area, units)));
    } else {
        w.unknown.push_back(say("load/area-missing"));
    }
    if (home.basement) {
        hundredths += home.basement->count * b.basement_percent.value;
        parts.push_back(
            say("load/at-percent", with_unit(text(*home.basement, units)), figure(b.basement_percent.value)));
    }
    Area const area{(hundredths + 50) / 100};
    auto const metric = [](Area a) { return with_unit(text(a, UnitSystem::metric)); };
    auto words = joined("load/plus", parts);
    if (units != UnitSystem::metric)
        words = say("load/equals", words, say("load/in-metres-too", with_unit(text(area, units)), metric(area)));
    else if (home.basement)
        words = say("load/equals", words, metric(area));
    w.steps.counted(say("load/basic-first", figure(b.first_m2.value)), "floor-area",
                    words.empty() ? words : say("load/floor-area", words), b.first_w.value);
    auto const first = b.first_m2.value * 100'000'000;
    if (hundredths <= first) return;
    auto const block = b.block_m2.value * 100'000'000;
    auto const more = hundredths - first, blocks = (more + block - 1) / block;
    auto const va = blocks * b.block_w.value;
    w.steps.counted(say("load/basic-more", figure(b.block_m2.value)), "floor-area",
                    say("load/blocks", metric(area), figure(b.first_m2.value), metric(Area{more / 100}), figure(blocks),
                        figure(b.block_w.value), figure(va)),
                    va);
}

// The one range that has a line of its own: the largest.
LoadItem const* range_of(LoadItems const& items) {
    LoadItem const* range = nullptr;
    for (LoadItem const& i : items)
        if (i.use && i.use->branch_demand && (!range || i.va > range->va)) range = &i;
    return range;
}

void add_range(Work& w, BlockLoads const& b, LoadItem const& range) {
    add_unknown(w.unknown, {range});
    auto const excess = std::max<std::int64_t>(0, range.va - b.range_up_to_w.value);
    auto const more = share_of(excess, b.range_excess_percent.value);
    auto const va = b.range_w.value + more;
    w.steps.counted(range.label, "cooking",
                    excess > 0 ? say("load/range-above", figure(b.range_w.value), figure(range.va),
                                     figure(b.range_up_to_w.value), figure(b.range_excess_percent.value), figure(va))
                               : say("load/range-up-to", figure(b.range_up_to_w.value)),
                    va, range.marks());
}

void add_heat(Work& w, BlockLoads const& b) {
    add_unknown(w.unknown, only(w.loads.items, [](LoadItem const& i) { return is_climate(i) && !i.blower; }));
    auto const rooms = w.q.building.dwelling->thermostats;
    ClimateShares shares;
    shares.separate = b.separate_heat;
    shares.is_separate = [rooms](LoadItem const& i) {
        if (!i.use || !i.use->heating) return false; // furnace and boiler heat the whole house
        return rooms ? *rooms > 1 : i.use->room_by_room;
    };
    add_climate(w.steps, w.q.building, only(w.loads.items, [](LoadItem const& i) { return !i.blower; }), shares);
}

void add_others(Work& w, BlockLoads const& b, LoadItems const& others, bool with_range) {
    auto const large = only(others, [&](LoadItem const& i) { return i.va > b.small_up_to_w.value; });
    if (large.empty()) return;
    for (LoadItem const& i : large) w.steps.item(i.label, "appliance", i.how, i.va, i.marks());
    auto const sum = sum_va(large);
    if (large.size() > 1)
        w.steps.subtotal(say("load/others-above", figure(b.small_up_to_w.value)), "appliance", as_sum(figures(large)),
                         sum);
    if (with_range)
        w.steps.counted(say("load/others-beside-range"), "appliance", as_share(sum, b.others_with_range_percent.value),
                        share_of(sum, b.others_with_range_percent.value), marks_of(large));
    else
        w.steps.slices(say("load/others-no-range"), "appliance", sum, b.others);
}
} // namespace

void by_blocks(Work& w, BlockLoads const& b) {
    auto const& items = w.loads.items;
    add_basic(w, b);
    add_heat(w, b);
    auto const* range = range_of(items);
    if (range) add_range(w, b, *range);
    for (LoadItem const& i : with_demand(items, {Demand::tankless, Demand::pool}))
        w.steps.counted(i.label, "in-full", i.how, i.va, i.marks());
    for (LoadItem const& i : with_demand(items, {Demand::vehicle}))
        w.steps.counted(i.label, "vehicle", i.how, i.va, i.marks());
    add_unknown(w.unknown, with_demand(items, {Demand::tankless, Demand::pool, Demand::vehicle}));
    add_managed(w, Kind::counted);
    auto const others = only(items, [&](LoadItem const& i) {
        return (i.elsewhere && is_general(i)) || i.blower || i.demand == Demand::appliance ||
               i.demand == Demand::water_heating || i.demand == Demand::dryer ||
               (i.demand == Demand::cooking && (!range || i.circuit != range->circuit));
    });
    add_unknown(w.unknown, others);
    add_others(w, b, others, range != nullptr);
    auto const inside = only(items, [&](LoadItem const& i) { return is_general(i) && !i.elsewhere; });
    auto const small = only(others, [&](LoadItem const& i) { return i.known && i.va <= b.small_up_to_w.value; });
    if (!inside.empty()) w.notes.push_back(say("load/within-basic", labels_of(inside)));
    if (!small.empty()) w.notes.push_back(say("load/small-in-basic", figure(b.small_up_to_w.value), labels_of(small)));
}

} // namespace legwork
