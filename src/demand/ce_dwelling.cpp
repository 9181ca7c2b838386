// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A dwelling by blocks of floor area: CE 8-200.
#include "demand/climate.h"
#include "demand/methods.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
using Kind = LoadStep::Kind;

void add_basic(Work& w, BlockLoads const& b) {
    auto const& home = *w.q.building.dwelling;
    auto const units = home.area_units;
    std::string area_words;
    w.notes.push_back(
        fmt::format("Floor area by {}{}.", b.area_by,
                    home.basement ? fmt::format("; the basement at {} %", b.basement_percent.value) : std::string()));
    std::int64_t hundredths = 0; // of a square millimetre, so that percents stay whole
    if (home.area) {
        hundredths = home.area->count * 100;
        area_words = text(*home.area, units);
    } else {
        w.unknown.emplace_back("the floor area of the dwelling");
    }
    if (home.basement) {
        hundredths += home.basement->count * b.basement_percent.value;
        area_words += fmt::format("{}{} × {} %", area_words.empty() ? "" : " + ", text(*home.basement, units),
                                  b.basement_percent.value);
    }
    auto const square_mm = (hundredths + 50) / 100;
    auto const words = [&](Area a) {
        return units == UnitSystem::metric ? text(a, units)
                                           : fmt::format("{} ({})", text(a, units), text(a, UnitSystem::metric));
    };
    if (home.basement || units != UnitSystem::metric) area_words += " = " + words(Area{square_mm});
    auto const first = b.first_m2.value * 100'000'000;
    w.steps.counted(fmt::format("Basic load, up to {} m²", b.first_m2.value), "floor-area",
                    area_words.empty() ? "" : "floor area " + area_words, b.first_w.value);
    if (hundredths <= first) return;
    auto const block = b.block_m2.value * 100'000'000;
    auto const more = hundredths - first, blocks = (more + block - 1) / block;
    w.steps.counted(fmt::format("Basic load, each {} m² more or part of it", b.block_m2.value), "floor-area",
                    fmt::format("{} − {} m² = {}: {} × {} VA = {} VA", text(Area{square_mm}, UnitSystem::metric),
                                b.first_m2.value, text(Area{more / 100}, UnitSystem::metric), blocks, b.block_w.value,
                                blocks * b.block_w.value),
                    blocks * b.block_w.value);
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
                    excess > 0 ? fmt::format("{} VA + ({} − {}) VA × {} % = {} VA", b.range_w.value, range.va,
                                             b.range_up_to_w.value, b.range_excess_percent.value, va)
                               : fmt::format("a range up to {} VA", b.range_up_to_w.value),
                    va, range.marks());
}

void add_heat(Work& w, BlockLoads const& b) {
    add_unknown(w.unknown, only(w.loads.items, is_climate));
    auto const rooms = w.q.building.dwelling->thermostats;
    ClimateShares shares;
    shares.separate = b.separate_heat;
    shares.is_separate = [rooms](LoadItem const& i) {
        if (!i.use || !i.use->heating) return false; // furnace and boiler heat the whole house
        return rooms ? *rooms > 1 : i.use->room_by_room;
    };
    add_climate(w.steps, w.q.building, w.loads.items, shares);
}

void add_others(Work& w, BlockLoads const& b, LoadItems const& others, bool with_range) {
    auto const large = only(others, [&](LoadItem const& i) { return i.va > b.small_up_to_w.value; });
    if (large.empty()) return;
    for (LoadItem const& i : large) w.steps.item(i.label, "appliance", i.how, i.va, i.marks());
    auto const sum = sum_va(large);
    if (large.size() > 1)
        w.steps.subtotal(fmt::format("Other loads above {} VA", b.small_up_to_w.value), "appliance",
                         as_sum(figures(large)), sum);
    auto const what = std::string("Other loads");
    if (with_range)
        w.steps.counted(what + ", beside a range", "appliance", as_share(sum, b.others_with_range_percent.value),
                        share_of(sum, b.others_with_range_percent.value), marks_of(large));
    else
        w.steps.slices(what + ", without a range", "appliance", sum, b.others);
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
        return (i.elsewhere && is_general(i)) || i.demand == Demand::appliance || i.demand == Demand::water_heating ||
               i.demand == Demand::dryer || (i.demand == Demand::cooking && (!range || i.circuit != range->circuit));
    });
    add_unknown(w.unknown, others);
    add_others(w, b, others, range != nullptr);
    auto const inside = only(items, [&](LoadItem const& i) { return is_general(i) && !i.elsewhere; });
    auto const small = only(others, [&](LoadItem const& i) { return i.known && i.va <= b.small_up_to_w.value; });
    if (!inside.empty()) w.notes.push_back("Within the basic load, so not counted again: " + labels_of(inside));
    if (!small.empty())
        w.notes.push_back(
            fmt::format("Not above {} VA, so within the basic load: {}", b.small_up_to_w.value, labels_of(small)));
}

} // namespace legwork
