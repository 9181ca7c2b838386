// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "shops.h"

#include "codebook/stock/uses.h"
#include "job/job.h"
#include "proposed_jobs.h"

#include <rapidcheck.h>

#include <algorithm>

namespace legwork::testing {

bool chance(int of) { return *rc::gen::inRange(0, of) == 0; }
std::string any_edition() {
    return *rc::gen::elementOf(std::vector<std::string>(std::begin(kEditions), std::end(kEditions)));
}
Length any_length(int most_metres) { return from_mm(*rc::gen::inRange<std::int64_t>(1, most_metres * 2) * 500); }

namespace {
// NEC Table 310.16 and CE Tables 2 and 4, from 14 AWG to 4/0.
constexpr std::array kCopper60{15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195};
constexpr std::array kCopper75{20, 25, 35, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230};
constexpr std::array kAluminium60{0, 15, 25, 35, 40, 55, 65, 75, 85, 100, 115, 130, 150};
constexpr std::array kAluminium75{0, 20, 30, 40, 50, 65, 75, 90, 100, 120, 135, 155, 180};
} // namespace

int ampacity_of_feeder(Gauge gauge, Amps breaker, typed::Circuit const& feeder, bool nec) {
    auto const* row = std::ranges::find(kGauges, gauge, &GaugeName::gauge);
    auto const* first = std::ranges::find(kGauges, Gauge::awg14, &GaugeName::gauge);
    auto const i = static_cast<std::size_t>(row - first);
    bool const copper = feeder.metal == Metal::copper;
    bool const sheathed = nec && copper && feeder.wiring == Wiring::cable && gauge <= Gauge::awg2;
    bool const at_60 = sheathed || (breaker <= 100_A && gauge <= Gauge::awg1);
    if (copper) return at_60 ? kCopper60.at(i) : kCopper75.at(i);
    return at_60 ? kAluminium60.at(i) : kAluminium75.at(i);
}

// A circuit of the shop with all its sizes, in one of the first spaces.
typed::Circuit in_shop(std::string mark, int space, bool one_pole) {
    int const poles = one_pole ? 1 : chance(3) ? 2 : 1;
    static std::vector<std::string> const one{"receptacles", "lighting", "workshop", "bath fan", "kitchen counter"};
    static std::vector<std::string> const two{"baseboard", "well pump", "water heater", "dryer"};
    auto c = bare(*rc::gen::elementOf(poles == 2 ? two : one),
                  VoltAmperes{*rc::gen::inRange<std::int64_t>(1, poles == 2 ? 96 : 16) * 100'000}, poles);
    c.mark = std::move(mark);
    c.panel = "Shop";
    c.space = Spot{space, 0};
    c.breaker = poles == 2 ? 60_A : 20_A;
    c.run = {{poles == 2 ? "4/2" : "12/2", chance(2) ? from_mm(21'000) : any_length(21), ""}};
    return c;
}

// Spaces 1 and 2 are on leg A, 3 and 4 on leg B: across a row of the panel legs agree.
Shop any_shop(typed::Circuit feeder) {
    bool const one_pole = feeder.poles == 1;
    feeder.mark = "SP";
    std::vector<typed::Circuit> all{std::move(feeder)};
    Shop shop;
    for (int const space : {1, 2, 9, 7, 14}) {
        if (space > 1 && *rc::gen::inRange(0, 3) == 2) continue;
        all.push_back(in_shop("B" + std::to_string(space), space, one_pole));
        shop.branches.push_back(all.back().mark);
    }
    shop.job = job_of(std::move(all), one_pole ? SupplyKind::bridged_120
                                               : *rc::gen::weightedElement<SupplyKind>(
                                                     {{4, SupplyKind::split_120_240}, {1, SupplyKind::wye_120_208}}));
    typed::Panel panel = shop.job.panels.front();
    panel.name = "Shop";
    panel.supply.reset();
    panel.feeder = typed::FeederName{"Main", "SP"};
    shop.job.panels.push_back(panel);
    return shop;
}

// Amperes on each leg, by hand: what runs for hours and the largest motor at 125 %.
std::array<double, 2> weighed_legs(typed::Job const& job, bool nec) {
    bool const wye = job.panels.front().supply->kind == SupplyKind::wye_120_208;
    auto const draws = [&](typed::Circuit const& c) {
        double const volts = c.poles == 1 ? 120 : wye ? 208 : 240;
        double const load = value(*c.load) * (wye && (c.use == "baseboard" || (c.use == "water heater" && c.poles == 2))
                                                  ? 208.0 * 208 / (240 * 240)
                                                  : 1);
        return load / volts;
    };
    auto const is_motor = [](typed::Circuit const& c) { return c.use == "bath fan" || c.use == "well pump"; };
    auto const for_hours = [&](typed::Circuit const& c) {
        if (c.use == "baseboard" || c.use == "water heater") return true;
        if (c.use == "lighting") return !(nec && job.dwelling);
        return !nec && is_motor(c); // CE presumes it of all that is not of short use
    };
    typed::Circuit const* largest = nullptr;
    for (typed::Circuit const& c : job.circuits)
        if (c.panel == "Shop" && is_motor(c) && (!largest || draws(c) > draws(*largest))) largest = &c;
    std::array<double, 2> legs{};
    for (typed::Circuit const& c : job.circuits) {
        if (c.panel != "Shop") continue;
        double const amps = draws(c) * (for_hours(c) || &c == largest ? 1.25 : 1);
        std::size_t const leg = static_cast<std::size_t>((c.space->space - 1) / 2 % 2);
        legs[leg] += amps;
        if (c.poles == 2) legs[1 - leg] += amps;
    }
    return legs;
}

} // namespace legwork::testing
