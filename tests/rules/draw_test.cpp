// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit draws is one figure, whoever asks. Sources: Ohm's law and Joule's (P = V² / R: a heater made for 240 V
// gives (208 / 240)² = 75.1 % of its power on 208 V).
#include "balance/balance.h"
#include "building/resolve.h"
#include "made_job.h"
#include "reckon/draw.h"
#include "reckon/leg_amps.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto wye = SupplyKind::wye_120_208;

// Amperes by the wire's reckoning and by the legs', of the job's one circuit.
std::pair<double, double> amperes(typed::Job const& job) {
    auto const building = resolve(job);
    auto const plan = as_filed(building);
    Case const c{building, plan, *code_book("NEC 2023")};
    Circuit const& circuit = building.circuits.front();
    auto const draw = draw_of(c, circuit);
    REQUIRE(draw);
    return {value(draw->current), amps_of(circuit, nullptr, circuit.panel->feeds.front())};
}
std::int64_t balanced_va(typed::Job const& job) {
    auto const plan = as_filed(resolve(job));
    auto const& all = plan.panels.at(0).situations.at(0);
    return all.leg_a_va + all.leg_b_va;
}
} // namespace

TEST_CASE("draw: a tank made for 240 V on 208 V is one figure for wires, legs and the note", "[check][draw]") {
    auto const tank = job({two_pole("WH", 1).use("water heater").breaker(30_A).load(4500_VA)}, wye);
    auto const [wire, legs] = amperes(tank);
    CHECK(wire == Approx(4500.0 * 208 / (240 * 240)).margin(0.001)); // 16.25 A
    CHECK(legs == Approx(wire).margin(0.01));
    auto const f = found("panel-208-heat", tank);
    REQUIRE(f.size() == 1);
    CHECK_THAT(f[0].message, Contains("WH 3380 VA of its 4500 VA"));
    auto const on_240 = amperes(job({two_pole("WH", 1).use("water heater").breaker(30_A).load(4500_VA)}));
    CHECK(on_240.first == Approx(18.75));
    auto const lamp = amperes(job({two_pole("EV", 1).use("vehicle charger").breaker(40_A).load(4500_VA)}, wye));
    CHECK(lamp.first == Approx(4500.0 / 208).margin(0.001)); // no plain heater
}

TEST_CASE("draw: wires take the largest of load, reading and nameplate", "[check][draw]") {
    auto const drawn = [](std::optional<VoltAmperes> load, std::optional<Amps> measured, std::optional<Amps> mca) {
        auto made = job({two_pole("HP", 1).use("heat pump").breaker(40_A)});
        made.circuits[0].load = load;
        made.circuits[0].measured = measured;
        made.circuits[0].mca = mca;
        return amperes(made).first;
    };
    CHECK(drawn(4800_VA, 15_A, 18_A) == Approx(20));
    CHECK(drawn(4800_VA, 24_A, 18_A) == Approx(24));
    CHECK(drawn(4800_VA, 15_A, 25_A) == Approx(25));
    CHECK(drawn({}, {}, 25_A) == Approx(25));
}

TEST_CASE("draw: balancing takes the reading, else the load, else the nameplate", "[check][draw]") {
    auto made = job({two_pole("HP", 1).use("heat pump").breaker(40_A)});
    made.circuits[0].load.reset(); // of the make-up
    made.circuits[0].mca = 25_A;
    CHECK(balanced_va(made) == 2 * 25 * 120);
    made.circuits[0].load = 4800_VA;
    CHECK(balanced_va(made) == 4800);
    made.circuits[0].measured = 15_A;
    CHECK(balanced_va(made) == 2 * 15 * 120);
}

TEST_CASE("draw: a current that was said or read is that current on 208 V too", "[check][draw]") {
    auto made = job({two_pole("HP", 1).use("heat pump").breaker(40_A)}, wye);
    made.circuits[0].measured = 15_A;
    CHECK(amperes(made) == std::pair{15.0, 15.0});
    made.circuits[0].measured.reset();
    made.circuits[0].load.reset();
    made.circuits[0].mca = 21_A;
    CHECK(amperes(made) == std::pair{21.0, 21.0});
}

TEST_CASE("draw: with a nameplate's least circuit ampacity the load is known", "[check][draw]") {
    auto made = job({two_pole("HP", 1).use("heat pump").breaker(40_A).cable("8/2")});
    made.circuits[0].load.reset(); // of the make-up
    CHECK_THAT(found("job-unknown", made).at(0).message, Contains("load"));
    made.circuits[0].mca = 25_A;
    for (Finding const& f : found("job-unknown", made)) CHECK_THAT(f.message, !Contains("load"));
    made.circuits[0].breaker = 20_A; // and a breaker that is smaller is told
    CHECK_THAT(found("wire-load-fits", made).at(0).message,
               Contains("HP asks for 25 A (mca), more than its 20 A breaker"));
    made.circuits[0].breaker = 25_A;
    CHECK(found("wire-load-fits", made).empty());
}
