// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Direct current: fuses, drop, sources, colours. Sources: Ohm's law; resistances of NEC Chapter 9 Table 8 (stranded,
// 75 °C) and data sheets of strip cable; fuse against wire by NEC 240.4(D) and the 60 °C column of Table 310.16, below
// 14 AWG from memory, below 18 AWG common practice; limits of drop common practice (3 %, lights and strips 2 %).
#include "balance/balance.h"
#include "building/resolve.h"
#include "codebook/stock/dc_wire.h"
#include "made_job.h"
#include "reckon/dc_run.h"
#include "rules/job/measure.h"

#include "catch.h"

#include <cmath>

using namespace made;

namespace {
bool near(double a, double b, double off) { return std::abs(a - b) <= off; }

typed::Circuit dc(std::string mark, std::string cable, double metres, Amps fuse, Amps load) {
    typed::Circuit c = one_pole(std::move(mark)).breaker(fuse).cable(std::move(cable));
    c.run[0].length = from_mm(static_cast<std::int64_t>(metres * 1000));
    c.load.reset();
    c.load_amps = load;
    return c;
}
// A block of fuses on this source, with a space for each.
typed::Job block(std::vector<typed::Circuit> circuits, SupplyKind kind = SupplyKind::dc_12) {
    int space = 0;
    for (typed::Circuit& c : circuits) c.space = Spot{++space, 0};
    auto made = job(std::move(circuits), kind);
    made.panels[0].main.reset();
    return made;
}
std::optional<DcDrop> drop(typed::Job const& made, std::size_t n = 0) {
    auto const b = resolve(made);
    return dc_drop_of(b.circuits[n]);
}
} // namespace

TEST_CASE("dc-fuse: a fuse within its wire, and one above", "[check][dc]") {
    for (auto const& edition : {"NEC 2023", "NEC 2017", "CE 2024"}) {
        CAPTURE(edition);
        CHECK(says("dc-fuse", block({dc("D1", "14/2", 1, 15_A, 5_A)}), edition).empty());
        CHECK(says("dc-fuse", block({dc("D1", "14/2", 1, 20_A, 5_A)}), edition) == "error D1"); // seen
        CHECK(says("dc-fuse", block({dc("D1", "10/2", 1, 30_A, 5_A)}), edition).empty());
        CHECK(says("dc-fuse", block({dc("D1", "8/2", 1, 50_A, 5_A)}), edition) == "error D1");
        CHECK(says("dc-fuse", block({dc("D1", "18/2 lighting strip", 1, 7_A, 5_A)}), edition).empty());
        CHECK(says("dc-fuse", block({dc("D1", "22/2 lighting strip", 1, 3_A, 2_A)}), edition).empty());
        CHECK(says("dc-fuse", block({dc("D1", "22/2 lighting strip", 1, 5_A, 2_A)}), edition) ==
              "warning D1"); // practice
    }
}

TEST_CASE("dc-fuse: 18 and 16 AWG, by what was read of each edition", "[check][dc]") {
    // 240.4(D)(1), (2): 7 A and 10 A; pages of the text of 2017 and of 2023. Of the others from memory.
    for (auto const& [edition, grade] :
         {std::pair("NEC 2017", "error D1"), std::pair("NEC 2020", "warning D1"), std::pair("NEC 2023", "error D1"),
          std::pair("CE 2018", "warning D1"), std::pair("CE 2021", "warning D1"), std::pair("CE 2024", "warning D1")}) {
        CAPTURE(edition);
        for (auto const& [cable, most, above] :
             {std::tuple("18/2 lighting strip", 7_A, 10_A), std::tuple("16/2 lighting strip", 10_A, 15_A)}) {
            CHECK(says("dc-fuse", block({dc("D1", cable, 1, most, 5_A)}), edition).empty());
            CHECK(says("dc-fuse", block({dc("D1", cable, 1, above, 5_A)}), edition) == grade);
        }
    }
}

TEST_CASE("dc-fuse: the thinnest wire of the run decides, wherever it stands", "[check][dc]") {
    auto c = dc("D1", "12/2", 1, 20_A, 4_A);
    c.run[0].to = "Controller";
    c.run.push_back({"18/4 lighting strip", from_mm(1000), "Strip"});
    auto const all = found("dc-fuse", block({c}));
    REQUIRE(in_short(all) == "error D1");
    CHECK(text(all[0].reference) == "NEC 2023 240.4(D)(1), (2)");
    CHECK_THAT(all[0].message, Contains("18 AWG (18/4 lighting strip after Controller)"));
    CHECK_THAT(all[0].message, Contains("good for 7 A"));
    c.breaker = 7_A;
    CHECK(says("dc-fuse", block({c})).empty());
}

TEST_CASE("dc-fuse: above 80 % of the fuse, and above what the block is made for", "[check][dc]") {
    CHECK(says("dc-fuse", block({dc("D1", "12/2", 1, 10_A, 8_A)})).empty());
    CHECK(says("dc-fuse", block({dc("D1", "12/2", 1, 10_A, 9_A)})) == "warning D1");
    auto made = block({dc("D1", "8/2", 1, 40_A, 8_A)});
    made.panels[0].bus = 40_A;
    CHECK(says("dc-fuse", made).empty());
    made.panels[0].bus = 30_A;
    CHECK(says("dc-fuse", made) == "warning D1");
}

// Worked examples D1 to D4, by Table 8, stranded, 75 °C: 18 26.1, 14 10.3, 12 6.50, 10 4.07, 8 2.55 ohm/km.
TEST_CASE("dc-drop: out and back, by worked examples", "[check][dc]") {
    struct {
        std::string_view cable;
        double volts;
    } const pump[] = {{"14/2", 1.236}, {"12/2", 0.780}, {"10/2", 0.488}, {"8/2", 0.306}};
    for (auto const& [cable, volts] : pump) {
        auto const made = block({dc("D1", std::string(cable), 6, 15_A, 10_A)});
        CAPTURE(cable);
        CHECK(near(drop(made)->volts, volts, 0.002));
        CHECK(says("dc-drop", made) == (cable == "8/2" ? "" : "warning D1")); // 2.55 % of 3 %
    }
    CHECK_THAT(found("dc-drop", block({dc("D1", "14/2", 6, 15_A, 10_A)}))[0].fix, Contains("Pull 8 AWG all the way"));
    auto const at_24 = block({dc("D2", "10/2", 15, 10_A, 5_A)}, SupplyKind::dc_24);
    CHECK(near(drop(at_24)->own_percent(), 2.54, 0.02));
    CHECK(says("dc-drop", at_24).empty());
    CHECK(says("dc-drop", block({dc("D2", "12/2", 15, 10_A, 5_A)}, SupplyKind::dc_24)) == "warning D2");
    CHECK(says("dc-drop", block({dc("D3", "8/2", 10, 30_A, 20_A)}, SupplyKind::dc_48)).empty());
    CHECK(says("dc-drop", block({dc("D3", "10/2", 10, 30_A, 20_A)}, SupplyKind::dc_48)) == "warning D3");
    CHECK(near(volts_lost({{Gauge::awg10, from_mm(5000), 0}}, 8) + volts_lost({{Gauge::awg14, from_mm(3000), 0}}, 4),
               0.573, 0.002));
}

// D5 to D8: 18 AWG strip cable of 20.34 ohm/km and 16 AWG of 13.8 ohm/km by their data sheets.
TEST_CASE("dc-drop: a strip's plus carries the sum, each channel its part", "[check][dc]") {
    CHECK(near(strip_drop(6, 2, 4 * 0.02034), 0.651, 0.001)); // D5; as a pair it would be 0.976
    CHECK(near(strip_drop(2, 2, 4 * 0.02034), 0.325, 0.001)); // D6, red alone
    CHECK(near(strip_drop(4, 1, 8 * 0.02034), 0.814, 0.001)); // D7
    CHECK(near(strip_drop(3, 1, 10 * 0.0138), 0.552, 0.001)); // D8
    auto const made = block({dc("S1", "18/4 lighting strip", 4, 7_A, 6_A)});
    CHECK(near(drop(made)->volts, 4 * 0.0261 * 8, 0.002)); // D5 at 75 °C
    auto const all = found("dc-drop", made);
    REQUIRE(in_short(all) == "warning S1");
    CHECK_THAT(all[0].message, Contains("each channel its part"));
    CHECK_THAT(all[0].message, Contains("more than 2 %"));
}

TEST_CASE("dc-drop: lights are held to 2 %, a feeder counts, an unknown piece is no verdict", "[check][dc]") {
    auto lamp = dc("D1", "12/2", 4, 10_A, 6_A); // 2.6 %
    CHECK(says("dc-drop", block({lamp})).empty());
    lamp.use = "lighting";
    CHECK(says("dc-drop", block({lamp})) == "warning D1");
    auto half = dc("D1", "12/2", 1, 10_A, 6_A);
    half.run.push_back({"14/2", std::nullopt, ""});
    CHECK(says("dc-drop", block({half})).empty());
    // 0.4 V in the feeder (3.3 %) speaks for the lamp behind it.
    auto made = block({dc("F1", "10/2", 5, 30_A, 10_A)});
    auto below = made.panels[0];
    below.name = "Bow", below.supply.reset(), below.feeder = typed::FeederName{"Main", "F1"};
    made.panels.push_back(below);
    made.circuits.push_back(dc("D2", "12/2", 1, 15_A, 10_A));
    made.circuits[1].panel = "Bow", made.circuits[1].space = Spot{1, 0};
    CHECK(says("dc-drop", made) == "warning F1");
    made.circuits[0].run[0].length = from_mm(4000); // 2.7 %, and 1.1 % more behind it
    CHECK(says("dc-drop", made) == "warning D2");
}

TEST_CASE("dc-source: loads within the source, fuses within the block", "[check][dc]") {
    auto made = block({dc("D1", "12/2", 1, 15_A, 8_A), dc("D2", "12/2", 1, 15_A, 8_A)});
    CHECK(says("dc-source", made).empty()); // nothing is known of either
    made.panels[0].output = 16_A;
    CHECK(says("dc-source", made).empty());
    made.panels[0].output = 15_A;
    CHECK(says("dc-source", made) == "warning Main");
    made.panels[0].output.reset();
    made.panels[0].bus = 30_A; // the sum of the fuses
    CHECK(says("dc-source", made).empty());
    made.panels[0].bus = 20_A;
    CHECK(says("dc-source", made) == "warning Main");
    made.panels[0].main = 20_A; // the fuse at the battery
    CHECK(says("dc-source", made).empty());
    made.panels[0].main = 25_A;
    CHECK(says("dc-source", made) == "warning Main");
}

TEST_CASE("tape-dc: one colour with two meanings in one panel, the channels of strips apart", "[check][dc]") {
    auto const red_black = dc("D1", "18/2 lighting strip", 1, 5_A, 1_A);
    auto const house = dc("D2", "14/2", 1, 5_A, 1_A); // black plus, white minus
    CHECK(says("tape-dc", block({red_black})).empty());
    CHECK(says("tape-dc", block({red_black, house})) == "warning D2 D1");
    CHECK(says("tape-dc", block({house, dc("S1", "18/4 lighting strip", 1, 5_A, 1_A)})).empty());
    auto said = house;
    said.colors = {"red", "black"};
    CHECK(says("tape-dc", block({red_black, said})).empty());
}

TEST_CASE("dc-source: no verdict while a load or a fuse is not known, unless what is known is too much",
          "[check][dc]") {
    auto made = block({dc("D1", "12/2", 1, 15_A, 8_A), dc("D2", "12/2", 1, 15_A, 8_A)});
    made.circuits[1].load_amps.reset(), made.circuits[1].breaker.reset();
    made.panels[0].output = 16_A, made.panels[0].bus = 20_A;
    auto const kind = [&] {
        auto const building = resolve(made);
        auto const plan = as_filed(building);
        return judged(*rule_named("dc-source"), {building, plan, *code_book("NEC 2023")}).kind();
    };
    CHECK(kind() == Verdict::Kind::nothing);
    made.panels[0].output = 7_A;
    CHECK(kind() == Verdict::Kind::fired);
    made.circuits[1].load_amps = 8_A, made.circuits[1].breaker = 5_A;
    made.panels[0].output = 16_A;
    CHECK(kind() == Verdict::Kind::passed);
}

TEST_CASE("job-unknown: what a DC circuit lacks is told, by the words of its panel", "[check][dc]") {
    auto bare = block({dc("D1", "14/2", 1, 5_A, 1_A)});
    bare.circuits[0].breaker.reset(), bare.circuits[0].load_amps.reset(), bare.circuits[0].run.clear();
    auto const all = found("job-unknown", bare);
    REQUIRE(in_short(all) == "note Main; warning D1");
    CHECK_THAT(all[0].message, Contains("bus rating"));
    CHECK_THAT(all[0].message, Contains("output"));
    for (auto const* what : {"the fuse's rating", "the cable", "the length", "the load"})
        CHECK_THAT(all[1].message, Contains(what));
    CHECK_THAT(all[1].message, !Contains("breaker"));
}
