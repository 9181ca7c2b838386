// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Voltage drop against worked examples of textbooks, forums and code courses. Resistances at 75 °C are those of NEC
// Chapter 9 Table 8; a "K" is ohms of a wire of one circular mil and one foot.
#include "cable/drop.h"
#include "codebook/stock/wire_data.h"

#include "catch.h"

#include <vector>

using namespace legwork;

namespace {
constexpr double kKilometresPerFoot = 0.0003048;

double stranded(Gauge gauge, double feet) {
    return *ohms_per_km_75(gauge, Metal::copper, Stranding::stranded) * feet * kKilometresPerFoot;
}
double of_mils(double k, double feet, double mils) { return k * feet / mils; }
std::vector<DropPiece> copper(Gauge gauge, double feet) {
    return {{gauge, Metal::copper, {static_cast<std::int64_t>(feet * 304'800)}}};
}
} // namespace

TEST_CASE("drop: out and back on two wires", "[cable][drop]") {
    SECTION("24 V, 16 AWG, 100 ft, 4 A: 3.992 V, 16.6 %") {
        // Source: electrician2.com, lesson 135, by Table 8 stranded, 4.99 ohm/kft.
        double const volts = two_wire_drop(4, stranded(Gauge::awg16, 100));
        REQUIRE(volts == Approx(3.992).margin(0.0005));
        REQUIRE(volts / 24 * 100 == Approx(16.63).margin(0.005));
    }
    SECTION("120 V, 12 AWG and 8 AWG, 100 ft, 20 A: 7.9 V and 3.1 V, 6.6 % and 2.6 %") {
        // Source: tradelicenseprep.com, voltage drop, K 12.9, which is Table 8 in other units.
        REQUIRE(two_wire_drop(20, of_mils(12.9, 100, 6530)) == Approx(7.9).margin(0.05));
        double const volts = two_wire_drop(20, stranded(Gauge::awg12, 100));
        REQUIRE(volts == Approx(7.9).margin(0.05));
        REQUIRE(volts / 120 * 100 == Approx(6.6).margin(0.05));
        double const larger = two_wire_drop(20, *one_way_ohms(copper(Gauge::awg8, 100)));
        REQUIRE(larger == Approx(3.1).margin(0.05));
        REQUIRE(larger / 120 * 100 == Approx(2.6).margin(0.05));
    }
    SECTION("240 V line to line, 12 AWG, 100 ft, 20 A: 7.92 V, 3.3 %") {
        // Source: fatskills.com, wire sizing and voltage drop, by Table 8 stranded.
        double const volts = two_wire_drop(20, stranded(Gauge::awg12, 100));
        REQUIRE(volts == Approx(7.92).margin(0.001));
        REQUIRE(volts / 240 * 100 == Approx(3.3).margin(0.01));
    }
    SECTION("120 V, 12 AWG, 100 ft, 20 A at K 12: 7.35 V, 6.125 %") {
        // Source: an exercise at gauthmath.com; K 12 is copper at some 53 °C.
        double const volts = two_wire_drop(20, of_mils(12, 100, 6530));
        REQUIRE(volts == Approx(7.35).margin(0.005));
        REQUIRE(volts / 120 * 100 == Approx(6.125).margin(0.005));
    }
    SECTION("240 V, 6 AWG, 160 ft, 44 A: 6.9 V, 2.9 %, the load sees 233.1 V") {
        // Source: a published exercise, by Table 8.
        double const volts = two_wire_drop(44, *one_way_ohms(copper(Gauge::awg6, 160)));
        REQUIRE(volts == Approx(6.913).margin(0.005));
        REQUIRE(volts / 240 * 100 == Approx(2.9).margin(0.05));
        REQUIRE(240 - volts == Approx(233.1).margin(0.05));
    }
    SECTION("3 % of 120 V along 100 ft: 14 AWG 5.8 A, 12 AWG 9 A, 10 AWG 14.4 A") {
        // Source: homeownershub.com thread on voltage drop, 3.1, 2.0 and 1.25 ohm/kft.
        auto const [amperes, ohms] = GENERATE(table<double, double>({{5.8, 0.31}, {9, 0.20}, {14.4, 0.125}}));
        REQUIRE(two_wire_drop(amperes, ohms) == Approx(3.6).margin(0.01));
    }
}

TEST_CASE("drop: the gauge that a length asks for", "[cable][drop]") {
    // Source: smartsolve.ai, a 240 V load of 24 A, 321 ft away, 4.8 V at most, K 10.9: 8 AWG 10.2 V, 6 AWG 6.4 V,
    // 4 AWG 4.0 V, so 4 AWG. At 75 °C it is 12.0, 7.6 and 4.7 V: 4 AWG too.
    REQUIRE(two_wire_drop(24, of_mils(10.9, 321, 16510)) == Approx(10.2).margin(0.05));
    REQUIRE(two_wire_drop(24, of_mils(10.9, 321, 26240)) == Approx(6.4).margin(0.05));
    REQUIRE(two_wire_drop(24, of_mils(10.9, 321, 41740)) == Approx(4.0).margin(0.05));
    auto const run = copper(Gauge::awg8, 321);
    double const most = 4.8 / two_wire_drop(24, 1);
    REQUIRE(gauge_within(run, most) == Gauge::awg4);
    REQUIRE_FALSE(gauge_within(run, most / 100));
    REQUIRE(gauge_within(copper(Gauge::awg4, 321), 1) <= Gauge::awg4); // nothing larger than what is there
}

TEST_CASE("drop: lengths that 3 % of 120 V allows", "[cable][drop]") {
    // Source: own reckoning, 3.6 V at 60 °C, stranded: 14 AWG 12 A 15.3 m, 12 AWG 16 A 18.3 m, 10 AWG 24 A 19.4 m (the
    // distances of CE Appendix D, Table D3, from memory, agree: 1.2 V at 1 A over 61.4, 97.8 and 155.6 m).
    auto const [gauge, amperes, length, at_one_ampere] = GENERATE(table<Gauge, double, double, double>(
        {{Gauge::awg14, 12, 15.3, 61.4}, {Gauge::awg12, 16, 18.3, 97.8}, {Gauge::awg10, 24, 19.4, 155.6}}));
    double const per_metre = *ohms_per_km(gauge, Metal::copper, Stranding::stranded, 60) / 1000;
    REQUIRE(two_wire_drop(amperes, per_metre * length) == Approx(3.6).epsilon(0.01));
    REQUIRE(two_wire_drop(amperes, per_metre * length * 2) / 240 == Approx(0.03).epsilon(0.01)); // at 240 V the double
    REQUIRE(two_wire_drop(1, per_metre * at_one_ampere) == Approx(1.2).epsilon(0.01));
}

TEST_CASE("drop: three wires share a neutral", "[cable][drop]") {
    SECTION("20 A and 10 A, 0.1 ohm a wire: 3 V on the heavy leg, 101 V of 104 V left") {
        // Source: jikkyo.co.jp, examination of electricians (Japan), written part 2005, question 6.
        auto const drop = three_wire_drop(20, 10, 180, 0.1);
        REQUIRE(drop.a == Approx(3.0));
        REQUIRE(104 - drop.a == Approx(101));
        REQUIRE(drop.b == Approx(0.0).margin(1e-9)); // 0.1 x 10 on its hot, 0.1 x 10 gained on the neutral
        REQUIRE(drop.between == Approx(3.0));        // of 208 V: what both loads together lose
    }
    SECTION("balanced, half of what one leg alone loses; alone, what two wires lose") {
        auto const both = three_wire_drop(16, 16, 180, 0.2), alone = three_wire_drop(16, 0, 180, 0.2);
        REQUIRE(alone.a == Approx(two_wire_drop(16, 0.2)));
        REQUIRE(both.a == Approx(alone.a / 2));
        REQUIRE(both.between == Approx(two_wire_drop(16, 0.2)));
    }
    SECTION("two phases of a wye: the neutral carries as much as each") {
        REQUIRE(three_wire_drop(16, 16, 120, 0.2).a == Approx(1.5 * 16 * 0.2));
    }
    SECTION("legs in phase: the neutral carries the sum") {
        REQUIRE(three_wire_drop(16, 16, 0, 0.2).a == Approx(3 * 16 * 0.2));
    }
}

TEST_CASE("drop: along a run of several sizes, and what the table lacks", "[cable][drop]") {
    auto run = copper(Gauge::awg12, 60);
    auto const near = *one_way_ohms(run), tail = *one_way_ohms(copper(Gauge::awg14, 22));
    run.push_back(copper(Gauge::awg14, 22).front());
    REQUIRE(*one_way_ohms(run) == Approx(near + tail));
    REQUIRE(*one_way_ohms({}) == 0);
    REQUIRE_FALSE(one_way_ohms(copper(Gauge::awg22, 10)));
    // Source: Table 8, aluminium 6 AWG 0.808 ohm/kft.
    std::vector<DropPiece> const aluminium{{Gauge::awg6, Metal::aluminium, {304'800'000}}};
    REQUIRE(*one_way_ohms(aluminium) == Approx(0.808));
}
