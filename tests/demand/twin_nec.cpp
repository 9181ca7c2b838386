// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// NEC Article 220 by hand. Figures: 3 VA a square foot or 33 a square metre, 1500 VA a circuit, Tables 220.42 (2023:
// 220.45), 220.53 to 220.55, 220.60, 220.61, 220.82, 220.83, 220.87.
#include "job/job.h"
#include "twin.h"

#include <algorithm>

namespace twin {

namespace {
constexpr Va kA[] = {80, 75, 70, 66, 62, 59, 56, 53, 51, 49}; // of 1 3/4 to under 3 1/2 kW
constexpr Va kB[] = {80, 65, 55, 50, 45, 43, 40, 36, 35, 34}; // to 8 3/4 kW
constexpr Va kC[] = {8, 11, 14, 17, 20, 21, 22, 23, 24, 25};  // kW, up to 12 kW each

Va column_c(std::vector<Va> const& some) {
    if (some.empty()) return 0;
    double average = 0;
    for (auto const va : some) average += static_cast<double>(std::max<Va>(va, 12'000));
    average /= static_cast<double>(some.size()) * 1000.0;
    Va more = 0;
    while (average - 12.0 >= static_cast<double>(more) + 0.5) ++more; // a major part of a kW counts as one
    return part(kC[some.size() - 1] * 1000, 100 + 5 * more);
}
} // namespace

Va demand_of_cooking(std::vector<Va> const& nameplates) {
    std::vector<Va> a, b, c;
    Va outside = 0;
    for (auto const va : nameplates) {
        if (va > 27'000)
            outside += va;
        else
            (va < 3'500 ? a : va <= 8'750 ? b : c).push_back(va);
    }
    auto const by_percent = [](std::vector<Va> const& some, Va const* column) {
        Va all = 0;
        for (auto const va : some) all += va;
        return some.empty() ? 0 : part(all, column[some.size() - 1]);
    };
    auto demand = by_percent(a, kA) + by_percent(b, kB) + column_c(c);
    if (std::none_of(c.begin(), c.end(), [](Va va) { return va > 12'000; })) {
        auto all = a;
        all.insert(all.end(), b.begin(), b.end());
        all.insert(all.end(), c.begin(), c.end());
        demand = std::min(demand, column_c(all));
    }
    return demand + outside;
}

namespace {
bool is_cooking(Load const& l) { return l.kind == Kind::cooking && ((!l.known && l.va == 0) || l.va > 1'750); }

// Lights, receptacles, kitchen and laundry, before any demand.
Va general(House const& h, bool& unknown_too) {
    auto const& home = *h.job->dwelling;
    auto const counted = [&](Kind k) { return static_cast<Va>(of(h.loads, {k}).size()); };
    if (!h.whole) {
        unknown_too |= unknown(of(h.loads, {Kind::light}));
        return sum(of(h.loads, {Kind::light})) + 1'500 * (counted(Kind::kitchen) + counted(Kind::laundry));
    }
    unknown_too |= !home.area;
    Va va = 0;
    for (auto const& area : {home.area, home.basement}) {
        if (!area) continue;
        bool const metric = home.area_units == UnitSystem::metric;
        auto const exact = metric ? 33.0L * static_cast<long double>(area->count) / 1e6L
                                  : 3.0L * static_cast<long double>(area->count) / 92903.04L;
        va += static_cast<Va>(exact + 0.5L);
    }
    auto const kitchens = std::max({counted(Kind::kitchen), Va{2}, Va{home.small_appliance_circuits.value_or(0)}});
    auto const laundries = std::max(counted(Kind::laundry), Va{home.laundry_circuits.value_or(1)});
    return va + 1'500 * (kitchens + laundries);
}

Va largest(Loads const& some) {
    Va most = 0;
    for (Load const& l : some)
        if (l.motor && !l.has_quarter) most = std::max(most, l.va);
    return most;
}

// 25 % of the largest motor.
Va motor(Loads counted, Loads const& left_out) {
    counted.insert(counted.end(), left_out.begin(), left_out.end());
    return part(largest(counted), 25);
}

Va on_neutral(Loads const& some) {
    return sum(those(some, [](Load const& l) { return l.neutral; }));
}

// 25 % of the largest motor that the neutral knows of: those that count for it, and from 2020 those left out of the
// hots, too.
Va motor_on_neutral(House const& h, Loads motors, Season const& s) {
    auto const& season = on_neutral(s.winter) >= on_neutral(s.summer) ? s.winter : s.summer;
    motors.insert(motors.end(), season.begin(), season.end());
    if (h.year >= 2020) motors.insert(motors.end(), s.left_out.begin(), s.left_out.end());
    return part(largest(those(motors, [](Load const& l) { return l.neutral; })), 25);
}

void add(Loads& to, Loads const& more) { to.insert(to.end(), more.begin(), more.end()); }

// The largest motor may be one that a device holds back; it takes no more than the limit.
Loads held_within(House const& h) {
    Loads some = h.held;
    if (holds(h))
        for (Load& l : some) l.va = std::min(l.va, held_va(h));
    return some;
}

// Article 220 Part III for a dwelling; the neutral of a service by 220.61.
Answer part_three(House const& h) {
    Answer a;
    Va neutral = 0;
    auto const lights = general(h, a.unknown);
    auto const after = std::min<Va>(lights, 3'000) + part(std::clamp<Va>(lights - 3'000, 0, 117'000), 35) +
                       part(std::max<Va>(lights - 120'000, 0), 25);
    a.total += after;
    neutral += after;

    auto const others = those(h.loads, [](Load const& l) {
        return l.kind == Kind::appliance || l.kind == Kind::full || (l.kind == Kind::cooking && !is_cooking(l));
    });
    a.unknown |= unknown(others);
    Va const least = h.year >= 2020 ? 500 : 1;
    auto const fastened = [&](Load const& l) { return l.fixed && l.kind != Kind::cooking && l.va >= least; };
    auto const fixed = those(others, fastened);
    Va const percent = fixed.size() >= 4 ? 75 : 100;
    a.total += part(sum(fixed), percent);
    for (Load const& l : fixed) neutral += l.neutral ? part(l.va, percent) : 0;
    auto const loose = those(others, [&](Load const& l) { return !fastened(l); });
    a.total += sum(loose);
    neutral += on_neutral(loose);

    auto const dryers = of(h.loads, {Kind::dryer});
    a.unknown |= unknown(dryers);
    Va drying = 0;
    for (Load const& l : dryers) drying += std::max<Va>(l.va, 5'000);
    constexpr Va dryer_percents[] = {100, 100, 100, 100, 100, 85, 75, 65, 60, 55, 50, 47};
    drying = part(drying, dryer_percents[std::min<std::size_t>(dryers.size(), 11)]);
    auto const ranges = those(h.loads, is_cooking);
    a.unknown |= unknown(ranges);
    std::vector<Va> plates;
    for (Load const& l : ranges)
        if (l.known || l.va > 0) plates.push_back(l.va);
    auto const cooking = demand_of_cooking(plates);
    a.total += drying + cooking;
    neutral += h.wye ? drying + cooking : part(drying, 70) + part(cooking, 70);

    // Winter or summer, with the quarter of its motor: the larger.
    auto const climate = of(h.loads, {Kind::heat, Kind::pump, Kind::backup, Kind::cool});
    auto s = season(h, h.loads, {});
    auto const with_quarter = [&](bool winter) {
        auto side = s;
        take(side, winter, climate);
        auto motors = others;
        add(motors, held_within(h));
        add(motors, side.counted);
        return side.va + motor(motors, h.year >= 2020 ? side.left_out : Loads{});
    };
    if (!s.winter.empty() && !s.summer.empty()) take(s, with_quarter(true) >= with_quarter(false), climate);
    a.unknown |= unknown(climate);
    a.total += s.va;
    neutral += std::max(on_neutral(s.winter), on_neutral(s.summer));

    for (Load const& l : of(h.loads, {Kind::vehicle})) {
        a.unknown |= !l.known;
        auto const va = h.year >= 2023 ? std::max<Va>(l.va, 7'200) : l.va;
        a.total += va;
        neutral += l.neutral ? va : 0;
    }
    a.total += held_va(h);
    if (std::any_of(h.held.begin(), h.held.end(), [](auto& l) { return l.neutral; })) neutral += held_va(h);

    auto motors = others;
    add(motors, held_within(h));
    auto const returns = motor_on_neutral(h, motors, s);
    add(motors, s.counted);
    a.total += motor(motors, h.year >= 2020 ? s.left_out : Loads{});
    a.neutral = neutral + returns;
    return a;
}

Va outlets_va(Load const& l) {
    auto const n = l.circuit->outlet_count;
    return n ? std::max<Va>(l.va, Va{*n} * 180) : l.va;
}

bool plugged(Load const& l) {
    for (auto const* use : {"receptacles", "kitchen counter", "laundry", "bathroom", "outdoor", "garage", "workshop"})
        if (l.use == use) return l.circuit->poles == 1;
    return false;
}
} // namespace

namespace {
struct Extra {
    Va va = 0, neutral = 0;
};

// What these count above their figures: a quarter for the largest motor, and for what runs for hours. The motor that
// has its quarter has no second one for running long.
Extra extra(House const& h, Loads const& among, Season const& side, Loads const& others) {
    auto motors = among;
    add(motors, held_within(h));
    if (h.nec && h.year >= 2020) add(motors, side.left_out);
    auto const more = motor(motors, {});
    auto without_climate = others;
    add(without_climate, held_within(h));
    auto const returns = motor_on_neutral(h, without_climate, side);
    auto const most = largest(motors);
    typed::Circuit const* its = nullptr;
    for (Load const& l : motors)
        if (!its && l.motor && !l.has_quarter && l.va == most && most > 0) its = l.circuit;
    auto const lasting = those(among, [&](Load const& l) { return l.lasts && l.circuit != its; });
    auto const presumed = those(among, [](Load const& l) { return l.presumed; });
    return {more + part(sum(lasting), 25) + part(sum(presumed), 25), returns};
}
} // namespace

// Another building, or a part of a dwelling by the CE Code: what is listed, in summer and in winter, the larger.
Answer listed(House const& h) {
    Answer a;
    Va neutral = 0;
    Loads all = h.loads;
    for (Load& l : all)
        if (h.nec && plugged(l)) {
            l.known |= l.circuit->outlet_count.has_value();
            l.va = outlets_va(l);
        }
    a.unknown = unknown(all);
    auto const outlets = those(all, plugged);
    auto const plugged_va =
        h.nec ? std::min<Va>(sum(outlets), 10'000) + part(std::max<Va>(sum(outlets) - 10'000, 0), 50) : sum(outlets);
    auto const climate = of(all, {Kind::heat, Kind::pump, Kind::backup, Kind::cool});
    auto counted = those(all, [](Load const& l) {
        return !plugged(l) && l.kind != Kind::heat && l.kind != Kind::pump && l.kind != Kind::backup &&
               l.kind != Kind::cool;
    });
    a.total = plugged_va + sum(counted) + held_va(h);
    neutral = plugged_va + on_neutral(counted);
    auto among = outlets;
    add(among, counted);
    if (!holds(h)) add(among, h.held);
    auto s = season(h, climate, {});
    neutral += std::max(on_neutral(s.winter), on_neutral(s.summer));
    Va best = -1;
    Extra more;
    for (bool const winter : {true, false}) {
        if ((winter ? s.winter : s.summer).empty() && !(winter ? s.summer : s.winter).empty()) continue;
        auto side = s;
        take(side, winter, climate);
        auto with = among;
        add(with, side.counted);
        auto const e = extra(h, with, side, among);
        if (side.va + e.va > best) best = side.va + e.va, more = e;
    }
    a.total += best;
    neutral += more.neutral;
    bool const held_lasts = std::any_of(h.held.begin(), h.held.end(), [](auto& l) { return l.lasts || l.presumed; });
    if (holds(h) && held_lasts) a.total += part(held_va(h), 25);
    if (h.nec) a.neutral = h.two_hots ? neutral : a.total;
    return a;
}

namespace {
// What other buildings draw: in full, and on the neutral too.
Answer with_beyond(House const& h, Answer a) {
    a.total += beyond_va(h, false);
    if (a.neutral) *a.neutral += beyond_va(h, false);
    return a;
}

Answer with_neutral(House const& h, Answer a) {
    a.neutral = h.two_hots ? part_three(h).neutral : a.total;
    return with_beyond(h, a);
}

bool is_climate(Load const& l) {
    return l.kind == Kind::heat || l.kind == Kind::pump || l.kind == Kind::backup || l.kind == Kind::cool;
}

// Floor, circuits and nameplates.
Va nameplates(House const& h, Answer& a) {
    auto const va = general(h, a.unknown);
    auto const listed_ones = those(h.loads, [](Load const& l) {
        return !is_climate(l) && l.kind != Kind::light && l.kind != Kind::kitchen && l.kind != Kind::laundry;
    });
    a.unknown |= unknown(listed_ones) || unknown(those(h.loads, is_climate));
    return va + sum(listed_ones);
}

Va first_in_full(Va va, Va first) { return std::min(va, first) + part(std::max<Va>(va - first, 0), 40); }
} // namespace

Answer optional(House const& h) {
    Answer a;
    auto all = nameplates(h, a);
    bool const climate_held = std::any_of(h.held.begin(), h.held.end(), is_climate);
    if (!climate_held) all += held_va(h);
    HeatShares shares{40, 65, 65, nullptr, false};
    if (h.job->dwelling->thermostats.value_or(0) >= 4)
        shares.is_room = [](House const&, Load const& l) {
            return l.use != "furnace" && l.use != "boiler" && l.use != "air handler";
        };
    a.total = first_in_full(all, 10'000) + season(h, h.loads, shares).va + (climate_held ? held_va(h) : 0);
    return with_neutral(h, a);
}

Answer existing(House const& h) {
    Answer a;
    auto all = nameplates(h, a);
    auto const is_new = [](Load const& l) { return l.is_new && is_climate(l); };
    bool const new_climate =
        std::any_of(h.loads.begin(), h.loads.end(), is_new) || std::any_of(h.held.begin(), h.held.end(), is_new);
    bool const apart = new_climate && std::any_of(h.held.begin(), h.held.end(), is_climate);
    if (!apart) all += held_va(h);
    auto const heat = season(h, h.loads, {}).va;
    a.total =
        first_in_full(all + (new_climate ? 0 : heat), 8'000) + (new_climate ? heat : 0) + (apart ? held_va(h) : 0);
    return with_neutral(h, a);
}

Answer measured(House const& h) {
    Answer a;
    auto const& peak = *h.job->dwelling->peak;
    auto const drawn = (h.volts * peak.amps.count + 500) / 1000;
    a.total = h.nec ? part(drawn, 125) : drawn;
    auto const fresh = those(h.loads, [](Load const& l) { return l.is_new; });
    a.unknown = unknown(fresh);
    a.total += sum(those(fresh, [](Load const& l) { return !is_climate(l); })) + season(h, fresh, {}).va;
    if (std::any_of(h.held.begin(), h.held.end(), [](auto& l) { return l.is_new; })) a.total += held_va(h);
    a.total += beyond_va(h, true);
    return a;
}

Answer blocks(House const& h);

Answer standard(House const& h) {
    if (h.job->dwelling && h.nec) return with_neutral(h, part_three(h));
    return with_beyond(h, h.job->dwelling && h.whole ? blocks(h) : listed(h));
}

} // namespace twin
