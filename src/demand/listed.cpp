// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Any other building, and a feeder that carries a part of one: the loads that are listed, with continuous and motor
// shares and what demand the code gives.
#include "demand/climate.h"
#include "demand/methods.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// At 240 V one machine is plugged in: it counts in full.
bool is_outlets(LoadItem const& i) { return i.use && i.use->receptacle && i.circuit->poles == 1; }

// Said, or by use; lighting of a workplace burns all day.
bool is_continuous(Work const& w, LoadItem const& i) {
    if (i.circuit->continuous) return *i.circuit->continuous;
    return i.use &&
           (i.use->continuous || (i.use->lighting && (!w.q.job.dwelling || w.q.book.dwelling_lighting_continuous)));
}

bool is_presumed(Work const& w, LoadItem const& i) {
    return w.q.book.presumes_continuous && !i.circuit->continuous && !is_continuous(w, i) && !i.motor &&
           !(i.use && i.use->intermittent);
}

// Outlets for whatever is plugged in: the load as typed, at least so many VA an outlet.
LoadItem outlets_figure(LoadItem item, std::optional<Figure> each) {
    auto const n = item.circuit->outlet_count;
    if (!each || !n) return item;
    auto const least = *n * each->value;
    if (!item.known || item.va < least) {
        item.va = least;
        item.known = true;
        item.how = fmt::format("{} outlets × {} VA = {} VA, at least", *n, each->value, least);
    }
    return item;
}

LoadItems outlets_of(Work const& w, ListedLoads const& l) {
    auto all = only(w.loads.items, is_outlets);
    for (LoadItem& i : all) i = outlets_figure(i, l.outlet_va);
    return all;
}

void add_outlets(Work& w, ListedLoads const& l, NeutralParts& parts) {
    auto const all = outlets_of(w, l);
    if (all.empty()) return;
    add_unknown(w.unknown, all);
    auto const sum = sum_va(all);
    if (l.outlets.empty() || sum <= l.outlets.front().up_to_va) {
        for (LoadItem const& i : all) {
            w.steps.counted(i.label, "listed", i.how, i.va, i.marks());
            add_to_line(w, i, i.va);
            add_to_neutral(parts, i, i.va);
        }
        return;
    }
    for (LoadItem const& i : all) w.steps.item(i.label, "outlets", i.how, i.va, i.marks());
    w.steps.subtotal("Receptacles", "outlets", as_sum(figures(all)), sum);
    parts.push_back({"Receptacles after demand", w.steps.slices("Receptacles", "outlets", sum, l.outlets), false});
}

// What a continuous load counts above its own figure.
void add_more(Work& w, LoadItems const& some, std::string const& what, std::string_view topic, std::int64_t percent,
              Source source) {
    auto const sum = sum_va(some);
    if (sum == 0) return;
    auto const words = some.size() > 1 ? as_sum(figures(some)) + ", " : std::string();
    w.steps.counted(what, topic, words + as_share(sum, percent), share_of(sum, percent), marks_of(some), source);
    for (LoadItem const& i : some) add_to_line(w, i, share_of(i.va, percent));
}
} // namespace

NeutralParts listed(Work& w, ListedLoads const& l) {
    NeutralParts parts;
    auto const plain = only(w.loads.items, [](LoadItem const& i) { return !is_outlets(i) && !is_climate(i); });
    add_outlets(w, l, parts);
    add_unknown(w.unknown, plain);
    for (LoadItem const& i : plain) {
        if (!i.known) continue;
        w.steps.counted(i.label, "listed", i.how, i.va, i.marks());
        add_to_line(w, i, i.va);
        add_to_neutral(parts, i, i.va);
    }
    auto const all_climate = only(w.loads.items, is_climate);
    add_unknown(w.unknown, all_climate);
    ClimateShares shares;
    shares.topic = shares.rest_topic = shares.cooling_topic = "listed";
    auto const climate = add_climate(w.steps, w.q.job, w.loads.items, shares);
    for (LoadItem const& i : climate.counted) add_to_line(w, i, i.va);
    add_climate_to_neutral(parts, climate);
    auto const managed = add_managed(w, LoadStep::Kind::counted);
    auto counted = outlets_of(w, l);
    for (auto const& more : {plain, climate.counted, managed_in_full(w.q, w.loads)})
        counted.insert(counted.end(), more.begin(), more.end());
    auto const more = add_largest_motor(w, counted, climate.left_out, l.motor);
    add_motor_to_neutral(parts, more);
    auto const is_motor = [&](LoadItem const& i) { return more.motor && more.motor->circuit == i.circuit; };
    auto const percent = l.continuous_percent.value - 100;
    add_more(w, only(counted, [&](LoadItem const& i) { return !is_motor(i) && is_continuous(w, i); }),
             "Continuous loads, more", "continuous", percent, l.continuous_percent.source);
    add_more(w, only(counted, [&](LoadItem const& i) { return is_presumed(w, i); }), "Loads presumed continuous, more",
             "presumed", percent, Source::memory);
    if (managed_in_full(w.q, w.loads).empty() && std::ranges::any_of(w.loads.managed, [&](LoadItem const& i) {
            return is_continuous(w, i) || is_presumed(w, i);
        }))
        w.steps.counted("What a device holds back, more", "continuous", as_share(managed, percent),
                        share_of(managed, percent), marks_of(w.loads.managed), Source::memory);
    return parts;
}

} // namespace legwork
