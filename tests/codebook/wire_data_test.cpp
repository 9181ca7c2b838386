// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/wire_data.h"

#include "catch.h"

#include <cmath>

using namespace legwork;

TEST_CASE("diameters follow the gauge formula and the published table", "[codebook]") {
    // Source: ASTM B258: 36 AWG 0.0050 in, 4/0 0.4600 in, 39 equal ratios between; table values as printed in NEC
    // Chapter 9 Table 8 (solid, inches and circular mils).
    REQUIRE(diameter_inches(Gauge::awg4_0) == Approx(0.4600).margin(1e-9));
    for (auto const& g : kGauges) {
        if (g.gauge == Gauge::awg24 || awg_number(g.gauge) != kGauges[static_cast<std::size_t>(g.gauge) - 1].number - 1)
            continue;
        auto const thinner = kGauges[static_cast<std::size_t>(g.gauge) - 1].gauge;
        REQUIRE(diameter_inches(g.gauge) / diameter_inches(thinner) == Approx(1.1229322).epsilon(1e-6));
    }
    auto const [gauge, inches, mils] = GENERATE(table<Gauge, double, double>({
        {Gauge::awg18, 0.040, 1620},
        {Gauge::awg16, 0.051, 2580},
        {Gauge::awg14, 0.064, 4110},
        {Gauge::awg12, 0.081, 6530},
        {Gauge::awg10, 0.102, 10380},
        {Gauge::awg8, 0.128, 16510},
        {Gauge::awg6, 0.162, 26240},
        {Gauge::awg4, 0.204, 41740},
        {Gauge::awg3, 0.229, 52620},
        {Gauge::awg2, 0.258, 66360},
        {Gauge::awg1, 0.289, 83690},
        {Gauge::awg1_0, 0.325, 105600},
        {Gauge::awg2_0, 0.365, 133100},
        {Gauge::awg3_0, 0.410, 167800},
        {Gauge::awg4_0, 0.460, 211600},
    }));
    REQUIRE(diameter_inches(gauge) == Approx(inches).margin(0.0006));
    REQUIRE(circular_mils(gauge) == Approx(mils).epsilon(0.003)); // printed to three or four figures
}

TEST_CASE("areas agree with the metric sizes beside which gauges are printed", "[codebook]") {
    // Source: common data sheets: 14 AWG 2.08 mm², 12 AWG 3.31 mm², 10 AWG 5.26 mm², 4/0 107 mm².
    REQUIRE(area_mm2(Gauge::awg14) == Approx(2.08).margin(0.005));
    REQUIRE(area_mm2(Gauge::awg12) == Approx(3.31).margin(0.005));
    REQUIRE(area_mm2(Gauge::awg10) == Approx(5.26).margin(0.005));
    REQUIRE(area_mm2(Gauge::awg4_0) == Approx(107.2).margin(0.1));
}

TEST_CASE("the resistance table agrees with the gauge formula and the resistivity of copper and aluminium",
          "[codebook]") {
    // Source: International Annealed Copper Standard, 0.017241 ohm mm²/m at 20 °C, 0.00393 per degree; aluminium 61 %
    // of its conductivity, 0.00403 per degree. Stranded wire is about 2 % longer than the cable.
    double const copper_75 = 0.017241 * (1 + 0.00393 * 55), aluminium_75 = 0.017241 / 0.61 * (1 + 0.00403 * 55);
    for (ResistanceRow const& row : resistances()) {
        CAPTURE(name(row.gauge));
        double const copper = copper_75 / area_mm2(row.gauge) * 1000,
                     aluminium = aluminium_75 / area_mm2(row.gauge) * 1000;
        auto const near = [](double found, double reckoned, double lay) {
            REQUIRE(found == Approx(reckoned * lay).epsilon(0.01));
        };
        if (auto const r = ohms_per_km_75(row.gauge, Metal::copper, Stranding::solid)) near(*r, copper, 1.0);
        if (auto const r = ohms_per_km_75(row.gauge, Metal::copper, Stranding::stranded)) near(*r, copper, 1.02);
        if (auto const r = ohms_per_km_75(row.gauge, Metal::aluminium, Stranding::solid)) near(*r, aluminium, 1.0);
        if (auto const r = ohms_per_km_75(row.gauge, Metal::aluminium, Stranding::stranded)) near(*r, aluminium, 1.02);
    }
}

TEST_CASE("resistance at 20 °C agrees with a published list", "[codebook]") {
    // Source: a list built on IEC 60228 ed. 3 and UL 1581, ohm/km at 20 °C, which are the largest allowed: solid copper
    // 14 AWG 8.45, 12 AWG 5.315, 10 AWG 3.334; stranded 8.62, 5.435, 3.409. Ours is nominal, up to 3 % less.
    auto const [gauge, solid, stranded] = GENERATE(table<Gauge, double, double>({
        {Gauge::awg14, 8.45, 8.62},
        {Gauge::awg12, 5.315, 5.435},
        {Gauge::awg10, 3.334, 3.409},
        {Gauge::awg8, 2.102, 2.144},
    }));
    auto const within = [](double ours, double largest) {
        REQUIRE(ours <= largest);
        REQUIRE(ours >= largest * 0.97);
    };
    within(*ohms_per_km(gauge, Metal::copper, Stranding::solid, 20), solid);
    within(*ohms_per_km(gauge, Metal::copper, Stranding::stranded, 20), stranded);
}

TEST_CASE("resistance at 20 °C is the nominal one of the gauge formula", "[codebook]") {
    // Source: ASTM B258, 14 AWG solid copper 8.285 ohm/km; the 8.45 of data sheets is the largest allowed.
    REQUIRE(*ohms_per_km(Gauge::awg14, Metal::copper, Stranding::solid, 20) == Approx(8.285).epsilon(0.001));
}

TEST_CASE("published drops come out of the table", "[codebook]") {
    // Source: 12 AWG stranded, 100 ft one way, 20 A: 7.92 V; 16 AWG, 100 ft, 4 A: 3.992 V (published worked examples).
    double const km = 2 * 100 * 0.3048 / 1000;
    REQUIRE(*ohms_per_km_75(Gauge::awg12, Metal::copper, Stranding::stranded) * km * 20 == Approx(7.92).margin(0.005));
    REQUIRE(*ohms_per_km_75(Gauge::awg16, Metal::copper, Stranding::stranded) * km * 4 == Approx(3.992).margin(0.005));
    REQUIRE_FALSE(ohms_per_km_75(Gauge::awg24, Metal::copper, Stranding::solid));
    REQUIRE_FALSE(ohms_per_km_75(Gauge::awg6, Metal::copper, Stranding::solid));
    REQUIRE(usual_stranding(Gauge::awg10) == Stranding::solid);
    REQUIRE(usual_stranding(Gauge::awg8) == Stranding::stranded);
}
