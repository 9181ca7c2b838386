// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "random_house.h"

#include "codebook/stock/uses.h"
#include "job/job.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>

namespace made {

namespace {
std::vector<std::string> uses_of(int poles) {
    std::vector<std::string> names{""};
    for (Use const& u : uses())
        if (u.poles == Poles::either || (u.poles == Poles::two) == (poles == 2)) names.emplace_back(u.name);
    return names;
}

// Often what the rules treat by itself.
std::string any_use(int poles) {
    static std::vector<std::string> const telling{"heat pump",     "backup heat", "air conditioner",
                                                  "heating",       "baseboard",   "furnace",
                                                  "floor heating", "well pump",   "water heater"};
    if (poles == 2 && chance(8)) return *rc::gen::element<std::string>("range", "dryer", "oven", "cooktop");
    if (chance(2)) return *rc::gen::elementOf(telling);
    return *rc::gen::elementOf(uses_of(poles));
}

typed::Circuit some_circuit(int n, std::string const& panel) {
    typed::Circuit c;
    c.mark = fmt::format("K{}", n);
    c.panel = panel;
    c.poles = *rc::gen::inRange(1, 3);
    c.use = any_use(c.poles);
    c.load = VoltAmperes{(*rc::gen::inRange<std::int64_t>(0, c.poles == 2 ? 150 : 24) * 100 + n) * 1000};
    if (chance(5)) c.load->count += *rc::gen::inRange<std::int64_t>(0, 1000); // parts of a VA
    if (c.use == "furnace" && chance(2)) c.load = VoltAmperes{*rc::gen::inRange<std::int64_t>(0, 20) * 100'000};
    if (chance(12)) c.load.reset();
    if (chance(8)) c.mca = Amps{*rc::gen::inRange<std::int64_t>(10, 600) * 100 + n};
    if (chance(12)) c.measured = Amps{*rc::gen::inRange<std::int64_t>(10, 600) * 100 + n};
    c.existing = chance(2);
    c.off = chance(12);
    c.interlocked = chance(3);
    if (chance(6)) c.motor = chance(2);
    if (chance(6)) c.fastened = chance(2);
    if (chance(6)) c.continuous = chance(2);
    if (chance(4)) c.outlet_count = *rc::gen::inRange(1, 14);
    if (chance(3)) c.run.push_back({chance(2) ? "10/3" : "10/2", {}, ""});
    if (chance(12)) c.third = *rc::gen::element<std::string>("neutral", "switched");
    if (chance(12)) c.building = "Shed";
    return c;
}

std::vector<std::string> any_group(typed::Job const& job) {
    std::vector<std::string> group;
    for (int n = *rc::gen::inRange(2, 5); n > 0; --n) {
        typed::Circuit const& c = *rc::gen::elementOf(job.circuits);
        group.push_back(c.use.empty() || chance(2) ? c.mark : c.use);
    }
    return group;
}

// As a person types it: hundredths of a square metre, or of a square foot of 92 903.04 mm2.
Area any_area(UnitSystem units, std::int64_t most) {
    auto const hundredths = *rc::gen::inRange<std::int64_t>(1, most);
    if (units == UnitSystem::metric) return {hundredths * 10'000};
    return {(hundredths * 9'290'304 + 5'000) / 10'000};
}

typed::Dwelling any_dwelling(typed::Job const& job) {
    typed::Dwelling d;
    d.area_units = chance(2) ? UnitSystem::metric : UnitSystem::inch;
    if (!chance(8)) d.area = any_area(d.area_units, 60'000);
    if (chance(5)) d.area = Area{*rc::gen::inRange<std::int64_t>(1, 8) * 90'000'000}; // whole blocks
    if (chance(3)) d.basement = any_area(d.area_units, 20'000);
    if (chance(3)) d.small_appliance_circuits = *rc::gen::inRange(0, 5);
    if (chance(3)) d.laundry_circuits = *rc::gen::inRange(0, 3);
    if (chance(2)) d.thermostats = *rc::gen::inRange(0, 7);
    if (chance(3)) d.together.push_back(any_group(job));
    if (chance(2))
        d.peak = typed::PeakDraw{Amps{*rc::gen::inRange<std::int64_t>(1, 2000) * 100}, *rc::gen::element(20, 30, 365)};
    if (chance(3)) {
        typed::EnergyManagement e{Amps{*rc::gen::inRange<std::int64_t>(1, 80) * 1000}, {}};
        for (int n = *rc::gen::inRange(1, 4); n > 0; --n) {
            auto const mark = (*rc::gen::elementOf(job.circuits)).mark;
            if (std::ranges::find(e.circuits, mark) == e.circuits.end()) e.circuits.push_back(mark);
        }
        d.energy_management = e;
    }
    return d;
}

typed::Panel panel_named(std::string name) {
    typed::Panel p;
    p.name = std::move(name);
    p.spaces = 42;
    return p;
}

// A panel below another: with the feeder's circuit in the other.
void add_sub_panel(typed::Job& job, std::string const& name, std::string const& above) {
    auto sub = panel_named(name);
    typed::Circuit feeder;
    feeder.mark = "F" + name;
    feeder.panel = above;
    feeder.poles = 2;
    feeder.use = chance(2) ? "feeder" : "";
    feeder.breaker = 60_A;
    if (chance(2)) feeder.load = 3000_VA;
    sub.feeder = typed::FeederName{above, feeder.mark};
    if (chance(5)) sub.building = "Workshop";
    job.circuits.push_back(feeder);
    job.panels.push_back(sub);
}

} // namespace

bool chance(int of) { return *rc::gen::inRange(0, of) == 0; }

typed::Circuit any_circuit(int n, std::string const& panel) { return some_circuit(n, panel); }

typed::Job any_job() {
    typed::Job job;
    job.code = *rc::gen::element<std::string>("NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024");
    auto main = panel_named("Main");
    main.supply = typed::Supply{};
    main.supply->kind = *rc::gen::weightedElement<SupplyKind>({{6, SupplyKind::split_120_240},
                                                               {2, SupplyKind::wye_120_208},
                                                               {1, SupplyKind::bridged_120},
                                                               {1, SupplyKind::one_leg_120}});
    if (chance(2)) main.main = Amps{*rc::gen::element<std::int64_t>(60, 100, 200) * 1000};
    job.panels.push_back(main);
    if (chance(2)) add_sub_panel(job, "Sub", "Main");
    if (job.panels.size() > 1 && chance(3)) add_sub_panel(job, "Loft", "Sub");
    bool const all_below = job.panels.size() > 1 && chance(4);
    int const n = *rc::gen::inRange(0, 10);
    for (int i = 1; i <= n; ++i) {
        auto const at = all_below ? 1 : *rc::gen::inRange<std::size_t>(0, job.panels.size());
        job.circuits.push_back(some_circuit(i, job.panels[at].name));
    }
    if (!job.circuits.empty() && !chance(4)) job.dwelling = any_dwelling(job);
    return job;
}

std::string told(typed::Job const& job) {
    std::string all = job.code;
    if (auto const& d = job.dwelling) {
        all += fmt::format(" dwelling {} + {} mm2 thermostats {}", d->area.value_or(Area{}).count,
                           d->basement.value_or(Area{}).count, d->thermostats.value_or(-1));
        for (auto const& g : d->together) all += fmt::format(" together {}", fmt::join(g, ","));
        if (d->energy_management)
            all += fmt::format(" managed {} {}", d->energy_management->limit.count,
                               fmt::join(d->energy_management->circuits, ","));
    }
    for (typed::Circuit const& c : job.circuits)
        all +=
            fmt::format("\n  {} {} {} poles={} load={} mca={} measured={} existing={} off={} interlocked={} motor={} "
                        "continuous={} building={}",
                        c.panel, c.mark, c.use, c.poles, c.load.value_or(VoltAmperes{-1}).count,
                        c.mca.value_or(Amps{-1}).count, c.measured.value_or(Amps{-1}).count, c.existing, c.off,
                        c.interlocked, c.motor.has_value() ? (*c.motor ? "yes" : "no") : "",
                        c.continuous.has_value() ? (*c.continuous ? "yes" : "no") : "", c.building);
    return all;
}

} // namespace made
