// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Any other building, and a feeder that carries a part of one: the loads that are listed, with continuous and motor
// shares and what demand the code gives.
#include "demand/climate.h"
#include "demand/methods.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {
// At 240 V one machine is plugged in: it counts in full.
bool is_outlets(LoadItem const& i) { return i.use && i.use->receptacle && i.circuit->poles == 1; }

// Said, or by use; lighting of a workplace burns all day.
bool is_continuous(Work const& w, LoadItem const& i) {
    if (i.circuit->continuous) return *i.circuit->continuous;
    return i.use && (i.use->continuous ||
                     (i.use->lighting && (!w.q.building.dwelling || w.q.book.dwelling_lighting_continuous)));
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
    item.known = true;
    if (item.va < least) {
        item.va = least;
        item.how = say("load/outlets", figure(*n), figure(each->value), figure(least));
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
    w.steps.subtotal(say("load/receptacles"), "outlets", as_sum(figures(all)), sum);
    parts.push_back({say("load/receptacles-after"), w.steps.slices(say("load/receptacles"), "outlets", sum, l.outlets),
                     false, as_banded(sum, l.outlets)});
}

LoadItems with(LoadItems all, LoadItems const& more) {
    all.insert(all.end(), more.begin(), more.end());
    return all;
}

// What some loads count above their figures: the largest motor, and what runs for hours.
struct Extras {
    MotorMore motor;
    LoadItems continuous, presumed;
    std::int64_t percent = 0; // of the last two

    std::int64_t va() const {
        return motor.va + share_of(sum_va(continuous), percent) + share_of(sum_va(presumed), percent);
    }
};

Extras extras_of(Work const& w, ListedLoads const& l, LoadItems const& counted, LoadItems const& left_out) {
    Extras e;
    e.motor = largest_motor(with(counted, managed_within_limit(w.q, w.loads)), left_out, l.motor);
    auto const is_motor = [&](LoadItem const& i) { return e.motor.motor && e.motor.motor->circuit == i.circuit; };
    // The largest motor has its share already.
    e.continuous = only(counted, [&](LoadItem const& i) { return !is_motor(i) && is_continuous(w, i); });
    e.presumed = only(counted, [&](LoadItem const& i) { return is_presumed(w, i); });
    e.percent = l.continuous_percent.value - 100;
    return e;
}

void add_more(Work& w, LoadItems const& some, Phrase const& what, std::string_view topic, std::int64_t percent,
              Source source, Climate const& climate) {
    auto const sum = sum_va(some);
    if (sum == 0) return;
    w.steps.counted(what, topic, one_by_one({as_sum(figures(some)), as_share(sum, percent)}), share_of(sum, percent),
                    marks_of(some), source);
    if (climate.guess_decides) w.steps.last_is_guessed(share_of(sum, percent));
    for (LoadItem const& i : some) add_to_line(w, i, share_of(i.va, percent));
}

void add_extras(Work& w, ListedLoads const& l, Extras const& e, Climate const& climate) {
    add_motor(w, e.motor, l.motor, climate);
    add_more(w, e.continuous, say("load/continuous-more"), "continuous", e.percent, l.continuous_percent.source,
             climate);
    add_more(w, e.presumed, say("load/presumed-more"), "presumed", e.percent, Source::seen, climate);
}

// Heating or cooling: the larger with all that it brings.
Climate add_heat(Work& w, ListedLoads const& l, LoadItems const& others) {
    auto const all = only(w.loads.items, is_climate);
    add_unknown(w.unknown, all);
    ClimateShares shares;
    shares.topic = shares.rest_topic = shares.cooling_topic = "listed";
    shares.more = [&](LoadItems const& side) {
        auto const is_out = [&](LoadItem const& i) {
            return std::ranges::none_of(side, [&](LoadItem const& s) { return s.circuit == i.circuit; });
        };
        return extras_of(w, l, with(others, side), only(all, is_out)).va();
    };
    return add_climate(w.steps, w.q.building, all, shares);
}

// What a device lets through may run for hours as what it holds back.
void add_managed_more(Work& w, std::int64_t managed, std::int64_t percent) {
    auto const lasts = [&](LoadItem const& i) { return is_continuous(w, i) || is_presumed(w, i); };
    if (!managed_in_full(w.q, w.loads).empty() || std::ranges::none_of(w.loads.managed, lasts)) return;
    w.steps.counted(say("load/held-back-more"), "continuous", as_share(managed, percent), share_of(managed, percent),
                    marks_of(w.loads.managed), Source::memory);
}
} // namespace

NeutralParts listed(Work& w, ListedLoads const& l) {
    NeutralParts parts;
    auto const plain = only(w.loads.items, [](LoadItem const& i) { return !is_outlets(i) && !is_climate(i); });
    add_outlets(w, l, parts);
    add_unknown(w.unknown, plain);
    for (LoadItem const& i : plain) {
        if (!i.has_figure()) continue;
        w.steps.counted(i.label, "listed", i.how, i.va, i.marks());
        add_to_line(w, i, i.va);
        add_to_neutral(parts, i, i.va);
    }
    auto const others = with(with(outlets_of(w, l), plain), managed_in_full(w.q, w.loads));
    auto const climate = add_heat(w, l, others);
    add_to_line(w, climate);
    add_climate_to_neutral(parts, climate);
    auto const managed = add_managed(w, LoadStep::Kind::counted);
    auto const counted = with(others, climate.counted);
    auto const extras = extras_of(w, l, counted, climate.left_out);
    add_extras(w, l, extras, climate);
    add_motor_to_neutral(parts, with(others, managed_within_limit(w.q, w.loads)), climate, l.motor, extras.motor);
    add_managed_more(w, managed, extras.percent);
    return parts;
}

} // namespace legwork
