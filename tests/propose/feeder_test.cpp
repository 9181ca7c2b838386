// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random feeders and the circuits behind them, against the slow twin: what is proposed passes every wire rule, and
// nothing smaller carries the panel.
#include "codebook/uses.h"
#include "exhaustive.h"
#include "proposed_jobs.h"
#include "units/text.h"

#include <catch2/catch.hpp>
#include <rapidcheck.h>

#include <algorithm>
#include <array>

using namespace legwork;
using namespace legwork::testing;

namespace {
bool chance(int of) { return *rc::gen::inRange(0, of) == 0; }
std::string any_edition() {
    return *rc::gen::elementOf(std::vector<std::string>(std::begin(kEditions), std::end(kEditions)));
}
Length any_length(int most_metres) { return from_mm(*rc::gen::inRange<std::int64_t>(1, most_metres * 2) * 500); }

// NEC Table 310.16 and CE Table 2, copper, from 14 AWG to 4/0. NEC 334.80 holds cable to 60 °C; CE 4-006 takes 75 °C
// for gear above 100 A.
constexpr std::array k60{15, 20, 30, 40, 55, 70, 85, 95, 110, 125, 145, 165, 195};
constexpr std::array k75{15, 20, 30, 50, 65, 85, 100, 115, 130, 150, 175, 200, 230};
int ampacity(Gauge gauge, int breaker, bool nec) {
    auto const* row = std::ranges::find(kGauges, gauge, &GaugeName::gauge);
    auto const* first = std::ranges::find(kGauges, Gauge::awg14, &GaugeName::gauge);
    auto const i = static_cast<std::size_t>(row - first);
    return breaker <= 100 || (nec && gauge <= Gauge::awg2) ? k60.at(i) : k75.at(i);
}

// A circuit of the shop with all its sizes, in one of the first spaces.
Circuit in_shop(std::string mark, int space) {
    int const poles = chance(3) ? 2 : 1;
    static std::vector<std::string> const one{"receptacles", "lighting", "workshop", "bath fan"};
    static std::vector<std::string> const two{"baseboard", "well pump", "water heater"};
    auto c = bare(*rc::gen::elementOf(poles == 2 ? two : one),
                  VoltAmperes{*rc::gen::inRange<std::int64_t>(1, poles == 2 ? 96 : 16) * 100'000}, poles);
    c.mark = std::move(mark);
    c.panel = "Shop";
    c.space = Spot{space, 0};
    c.breaker = poles == 2 ? 60_A : 20_A;
    c.run = {{poles == 2 ? "4/2" : "12/2", chance(2) ? from_mm(21'000) : any_length(21), ""}};
    return c;
}

struct Shop {
    Job job;
    std::vector<std::string> branches;
};
// Spaces 1 and 2 are on leg A, 3 and 4 on leg B: across a row of the panel legs agree.
Shop any_shop(Circuit feeder) {
    feeder.mark = "SP";
    std::vector<Circuit> all{std::move(feeder)};
    Shop shop;
    for (int const space : {1, 2, 9, 7, 14}) {
        if (space > 1 && *rc::gen::inRange(0, 3) == 2) continue;
        all.push_back(in_shop("B" + std::to_string(space), space));
        shop.branches.push_back(all.back().mark);
    }
    shop.job =
        job_of(std::move(all),
               *rc::gen::weightedElement<SupplyKind>({{4, SupplyKind::split_120_240}, {1, SupplyKind::wye_120_208}}));
    Panel panel = shop.job.panels.front();
    panel.name = "Shop";
    panel.supply.reset();
    panel.feeder = FeederName{"Main", "SP"};
    shop.job.panels.push_back(panel);
    return shop;
}

// Amperes on each leg, by hand: what runs for hours and the largest motor at 125 %.
std::array<double, 2> weighed_legs(Job const& job, bool nec) {
    bool const wye = job.panels.front().supply->kind == SupplyKind::wye_120_208;
    auto const draws = [&](Circuit const& c) {
        double const volts = c.poles == 1 ? 120 : wye ? 208 : 240;
        double const load = value(*c.load) * (wye && c.use == "baseboard" ? 208.0 * 208 / (240 * 240) : 1);
        return load / volts;
    };
    auto const is_motor = [](Circuit const& c) { return c.use == "bath fan" || c.use == "well pump"; };
    auto const for_hours = [&](Circuit const& c) {
        if (c.use == "baseboard" || c.use == "water heater") return true;
        if (c.use == "lighting") return !(nec && job.dwelling);
        return !nec && is_motor(c); // CE presumes it of all that is not of short use
    };
    Circuit const* largest = nullptr;
    for (Circuit const& c : job.circuits)
        if (c.panel == "Shop" && is_motor(c) && (!largest || draws(c) > draws(*largest))) largest = &c;
    std::array<double, 2> legs{};
    for (Circuit const& c : job.circuits) {
        if (c.panel != "Shop") continue;
        double const amps = draws(c) * (for_hours(c) || &c == largest ? 1.25 : 1);
        std::size_t const leg = static_cast<std::size_t>((c.space->space - 1) / 2 % 2);
        legs[leg] += amps;
        if (c.poles == 2) legs[1 - leg] += amps;
    }
    return legs;
}

std::string told(std::vector<Proposal> const& all) {
    std::string words;
    for (auto const& p : all) words += p.circuit + "\n" + steps_of(p) + "find out: " + p.find_out + "\n";
    return words;
}
} // namespace

TEST_CASE("of any feeder, the smallest that carries its panel and loses little enough", "[propose][twin][feeder]") {
    REQUIRE(rc::check([] {
        auto const edition = any_edition();
        auto feeder = bare("feeder", {}, 2);
        feeder.run.front().length = from_mm(*rc::gen::inRange<std::int64_t>(1, 12) * 10'000);
        auto shop = any_shop(feeder);
        if (chance(2)) shop.job.dwelling = Dwelling{};
        auto marks = shop.branches;
        auto near = filled(shop.job, {"SP"}, 225_A, Gauge::awg4_0, 3);
        near.circuits.front().run.front().length = from_mm(10);
        // The branches by themselves lose little; what else is said of them is no matter of the feeder.
        auto const others = objections(near, marks, edition);
        bool const nec = edition.starts_with("NEC");
        auto const legs = weighed_legs(shop.job, nec);
        double const most = std::max(legs[0], legs[1]);

        auto const all = all_proposed(shop.job, edition);
        RC_ASSERT(others.find("wire-drop") == std::string::npos);
        RC_LOG() << edition << " " << legs[0] << " " << legs[1] << "\n" << told(all);
        RC_ASSERT(all.size() == 1U);
        auto const& p = all.front();
        std::optional<Sizes> best;
        marks.push_back("SP");
        for (int const breaker : {15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200}) {
            if (best || breaker < most - 0.006) continue;
            for (GaugeName const& g : kGauges) {
                if (best || g.gauge < Gauge::awg14 || ampacity(g.gauge, breaker, nec) < most - 0.006) continue;
                auto const tried = filled(shop.job, {"SP"}, Amps{breaker * 1000}, g.gauge, 3);
                if (objections(tried, marks, edition) == others)
                    best = Sizes{Amps{breaker * 1000}, std::string(g.name) + "/3"};
            }
        }
        if (best) RC_LOG() << "twin: " << text(best->breaker) << " " << best->cable << "\n";
        RC_ASSERT(p.find_out.empty() == best.has_value());
        if (!best) return;
        RC_ASSERT(p.breaker == best->breaker);
        RC_ASSERT(p.cables == std::vector<std::string>{best->cable});
    }));
}

TEST_CASE("behind any feeder, the smallest branch that loses little enough with it", "[propose][twin][feeder]") {
    REQUIRE(rc::check([] {
        auto const edition = any_edition();
        auto feeder = bare("feeder", {}, 2);
        feeder.run = {{*rc::gen::element<std::string>("8/3", "6/3", "2/3"), any_length(50), ""}};
        feeder.breaker = *rc::gen::element(40_A, 60_A);
        auto shop = any_shop(feeder);
        auto far = in_shop("K1", 20);
        far.breaker.reset();
        far.run = {{"", any_length(40), ""}};
        shop.job.circuits.push_back(far);
        if (chance(3) && shop.branches.size() > 1) shop.job.circuits[1].load.reset(); // then a share of its breaker
        RC_LOG() << edition << "\n" << told(all_proposed(shop.job, edition));
        auto const all = all_proposed(shop.job, edition);
        auto const best = smallest(shop.job, {"K1"}, edition);
        if (best) RC_LOG() << "twin: " << text(best->breaker) << " " << best->cable << "\n";
        RC_ASSERT(all.size() == 1U);
        RC_ASSERT(all.front().find_out.empty() == best.has_value());
        if (!best) return;
        RC_ASSERT(all.front().breaker == best->breaker);
        RC_ASSERT(all.front().cables.front() == best->cable);
    }));
}
