// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Limits: CE 8-102(1), (2), mandatory; NEC informational notes of 210.19 and 215.2, advice. Volts by Ohm's law with NEC
// Chapter 9 Table 8 (14 AWG 3.07, 12 AWG 1.93, 10 AWG 1.21 ohm/kft solid): see the worked examples of cable/drop_test.
#include "job/job.h"
#include "made_job.h"
#include "reckon/run_drop.h"

#include "catch.h"

using namespace made;

namespace {
typed::Circuit long_run(Make m, double metres, std::string kind = "14/2") {
    m.c.run = {{std::move(kind), from_mm(static_cast<std::int64_t>(metres * 1000)), ""}};
    return m;
}
// 12 A of a 15 A breaker, its load not being known.
Make unknown(std::string mark = "R1", int space = 1) {
    return one_pole(std::move(mark), space).breaker(15_A).with([](typed::Circuit& c) { c.load.reset(); });
}
std::string drop(typed::Circuit c, std::string_view edition = "CE 2024", SupplyKind kind = SupplyKind::split_120_240) {
    return says("wire-drop", job({std::move(c)}, kind), edition);
}

// Panel "Shop" behind 10/3 on 30 A, two poles.
typed::Job with_shop(double feeder_metres, std::vector<typed::Circuit> in_shop) {
    std::vector<typed::Circuit> all{
        long_run(two_pole("SP", 1).breaker(30_A).use("feeder").with([](typed::Circuit& c) { c.load.reset(); }),
                 feeder_metres, "10/3")};
    for (typed::Circuit& c : in_shop) {
        c.panel = "Shop";
        all.push_back(std::move(c));
    }
    typed::Job made = job(std::move(all));
    typed::Panel shop;
    shop.name = "Shop";
    shop.spaces = 12;
    shop.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(shop);
    return made;
}
} // namespace

TEST_CASE("wire-drop: either side of 3 %, demanded by one family and advised by the other", "[check][wire]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        std::string const told = edition.starts_with("CE") ? "warning R1" : "note R1";
        REQUIRE(drop(long_run(unknown(), 14.8), edition).empty()); // 3.58 V
        REQUIRE(drop(long_run(unknown(), 16), edition) == told);   // 3.87 V
        REQUIRE(drop(long_run(unknown().old(), 16), edition) == told);
    }
}

TEST_CASE("wire-drop: says volts, amperes, length, size and what cures it", "[check][wire]") {
    auto const f = found("wire-drop", job({long_run(unknown(), 16)}), "CE 2024").at(0);
    REQUIRE(f.message == "R1 loses 3.2 % of its voltage (3.9 V of 120 V) at 12 A (80 % of its breaker, its load not "
                         "being known) over 16 m of 14 AWG, wire at 75 °C: more than 3 %.");
    REQUIRE(f.fix == "Pull 12 AWG all the way (2.0 %). Or write its real load, which may be less.");
    REQUIRE(f.reference.section == "8-102(1), (2)");
    auto const advised = found("wire-drop", job({long_run(unknown(), 16)}), "NEC 2023").at(0);
    REQUIRE_THAT(advised.fix, Contains("does not demand it"));
    // 20 A over 55 m ask for 6 AWG, which no receptacle takes.
    auto const far = found("wire-drop", job({long_run(one_pole("R1").load(2400_VA), 55, "12/2")}), "CE 2024").at(0);
    REQUIRE_THAT(far.fix, Contains("6 AWG to the last box, with short tails"));
}

TEST_CASE("wire-drop: the load where it is known, else 80 % of the breaker", "[check][wire]") {
    REQUIRE(drop(long_run(unknown().load(600_VA), 25)).empty());         // 5 A: 2.1 %
    REQUIRE(drop(long_run(unknown().load(600_VA), 40)) == "warning R1"); // 3.4 %
    REQUIRE(drop(long_run(unknown().with([](typed::Circuit& c) { c.measured = 5_A; }), 25)).empty());
    REQUIRE(drop(long_run(unknown().with([](typed::Circuit& c) { c.breaker.reset(); }), 100)).empty());
    REQUIRE(drop(long_run(unknown().load(0_VA), 100)).empty());
}

TEST_CASE("wire-drop: out and back on one pole, and from hot to hot on two", "[check][wire]") {
    auto const two = [](double metres) {
        return long_run(two_pole("WH", 1).breaker(15_A).with([](typed::Circuit& c) { c.load.reset(); }), metres);
    };
    REQUIRE(drop(two(30)).empty()); // 7.25 V of 240 V: twice as far as at 120 V
    REQUIRE(drop(two(32)) == "warning WH");
    REQUIRE(drop(two(30), "CE 2024", SupplyKind::wye_120_208) == "warning WH"); // of 208 V
    // Heat made for 240 V draws less between the phases of a wye: 2880 W give 2163 W, 10.4 A.
    auto const heater = long_run(two_pole("H1", 1).breaker(20_A).load(2880_VA).use("baseboard"), 30);
    REQUIRE(drop(heater, "CE 2024", SupplyKind::wye_120_208).empty()); // 6.28 V of 208 V: 3.0 %
}

TEST_CASE("wire-drop: along every piece of the run", "[check][wire]") {
    auto c = long_run(unknown(), 18, "12/2");
    REQUIRE(drop(c).empty());
    c.run.push_back({"14/2", from_mm(6000), ""}); // 2.74 V and 1.45 V
    auto const f = found("wire-drop", job({c}), "CE 2024");
    REQUIRE(f.size() == 1);
    REQUIRE_THAT(f[0].message, Contains("3.5 %") && Contains("over 24 m of 12 AWG and 14 AWG"));
    c.run[1] = {"18/2 lighting strip", from_mm(9000), ""}; // behind a power supply
    REQUIRE(drop(c).empty());
    c.run = {{"14/2", from_mm(16000), ""}, {"14/2", std::nullopt, ""}};
    REQUIRE_THAT(found("wire-drop", job({c}), "CE 2024").at(0).message, Contains("at least 16 m"));
    c.run[0].length = from_mm(10000); // what is not known is not told
    REQUIRE(drop(c).empty());
    c.run = {{"", from_mm(50000), ""}};
    REQUIRE(drop(c).empty());
}

TEST_CASE("wire-drop: a pair is reckoned with the other circuit off", "[check][wire]") {
    auto made = pair_job({1, 0}, {3, 0}, Tie::two_pole_breaker);
    for (typed::Circuit& c : made.circuits) c.load = 1920_VA; // 16 A
    made.circuits[0].run = {{"12/3", from_mm(20000), ""}};
    made.circuits[1].run.clear(); // said at one member
    auto const f = found("wire-drop", made, "CE 2021");
    REQUIRE(in_short(f) == "warning K1; warning K2");
    REQUIRE_THAT(f[0].message, Contains("3.4 %") && Contains("with K2 off"));
}

TEST_CASE("wire-drop: what draws nothing, and direct current", "[check][wire]") {
    REQUIRE(drop(long_run(unknown().use("spare"), 100)).empty());
    REQUIRE(drop(long_run(two_pole("GI", 1).use("generator inlet"), 300)).empty());
    REQUIRE(drop(long_run(unknown().with([](typed::Circuit& c) { c.off = true; }), 100)).empty());
    REQUIRE(drop(long_run(unknown(), 100), "CE 2024", SupplyKind::dc_12).empty());
}

TEST_CASE("wire-drop: a dwelling's lighting and receptacles may go by a table of lengths", "[check][wire]") {
    auto made = job({long_run(unknown().use("receptacles"), 16)});
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).fix, !Contains("Table 68"));
    made.dwelling = typed::Dwelling{};
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).fix, Contains("Table 68"));
    REQUIRE_THAT(found("wire-drop", made, "NEC 2023").at(0).fix, !Contains("Table 68"));
    made.circuits[0].use = "refrigerator";
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).fix, !Contains("Table 68"));
}

TEST_CASE("wire-drop: feeder and branch together", "[check][wire]") {
    // Two legs of 20 A on 10 AWG, 40 m: 3.18 V a leg, 2.6 %; a branch of 10 A on 14 AWG: 0.17 % a metre.
    auto const shop = [](double branch_metres) {
        return with_shop(40, {long_run(one_pole("S1", 1).load(1200_VA), branch_metres), one_pole("S2", 5).load(1200_VA),
                              one_pole("S3", 3).load(2400_VA).cable("10/2")});
    };
    REQUIRE(says("wire-drop", shop(13), "CE 2024").empty()); // 4.8 %
    auto const f = found("wire-drop", shop(16), "CE 2024");
    REQUIRE(in_short(f) == "warning S1");
    REQUIRE(f[0].message ==
            "With the feeder SP (2.6 % over 40 m of 10 AWG) more than 5 % of the voltage is lost at the "
            "far end: S1 5.3 %.");
    REQUIRE(f[0].where.panel == "Shop");
    REQUIRE_THAT(f[0].fix, Contains("Pull 8 AWG all the way (1.7 %) for the feeder"));
    REQUIRE(says("wire-drop", shop(16), "NEC 2020") == "note S1");
    // Beyond its own 3 % the branch is at fault, and says the sum too.
    auto const own = found("wire-drop", shop(20), "CE 2024");
    REQUIRE(in_short(own) == "warning S1");
    REQUIRE_THAT(own[0].message, Contains("3.4 %") && Contains("with its feeder 6.0 % in all, more than 5 %"));
}

TEST_CASE("wire-drop: a feeder at fault speaks for the branches behind it", "[check][wire]") {
    // All on one leg: the neutral carries it back, 2 x 20 A x 0.159 ohm.
    auto const made = with_shop(40, {long_run(one_pole("S1", 1).load(1200_VA), 10), one_pole("S2", 5).load(1200_VA)});
    auto const f = found("wire-drop", made, "CE 2024");
    REQUIRE(in_short(f) == "warning SP");
    REQUIRE_THAT(f[0].message, Contains("The feeder SP of panel \"Shop\" loses 5.3 % of its voltage at 20 A") &&
                                   Contains("more than 3 %") && Contains("at the end of S1 7.0 % are lost in all"));
    REQUIRE(f[0].reference.section == "8-102(1)");
    REQUIRE(says("wire-drop", made, "NEC 2017") == "note SP");
    // On even legs the same load loses half as much.
    auto even = made;
    even.circuits[2].space = Spot{3, 0};
    REQUIRE(says("wire-drop", even, "CE 2024").empty());
}

TEST_CASE("wire-drop: the load of a feeder", "[check][wire]") {
    // With everything on no more than 80 % of its breaker is taken: 24 A a leg on 10 AWG, 45 m, 3.6 %.
    auto made = with_shop(45, {two_pole("S1", 1).breaker(30_A).load(7000_VA).cable("10/2"),
                               two_pole("S2", 5).breaker(30_A).load(7000_VA).cable("10/2")});
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).message, Contains("3.6 %") && Contains("at 24 A over"));
    made.situations = {{"Sawing", 0, {}, {{"S1", 400'000}, {"S2", 100'000}}}}; // what happens: 14.6 A
    REQUIRE(says("wire-drop", made, "CE 2024").empty());
    // S2 in no situation runs at some time all the same: by itself 29.2 A, 4.3 %.
    made.situations[0].by_mark.erase("S2");
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).message,
                 Contains("with S2 alone, which is in no situation"));
    made.situations.push_back({"Planing", 0, {}, {{"S2", 300'000}}});
    REQUIRE(says("wire-drop", made, "CE 2024").empty());
    made.situations.pop_back();
    made.circuits[2].off = true;
    REQUIRE(says("wire-drop", made, "CE 2024").empty());
    made.circuits[2].off = false;
    made.situations[0].by_mark["S1"] = 1'000'000;
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).message, Contains("in \"Sawing\""));
    made.situations.clear();
    made.circuits[1].load = 500_VA;
    made.circuits[2].load.reset(); // one load not known: 80 % of the feeder's breaker
    REQUIRE_THAT(found("wire-drop", made, "CE 2024").at(0).message,
                 Contains("at 24 A (80 % of its breaker, since not every load is known)"));
    made.circuits[0].breaker.reset();
    REQUIRE(says("wire-drop", made, "CE 2024").empty());
}

TEST_CASE("wire-drop: a feeder of one pole, and feeders in a row", "[check][wire]") {
    // One hot carries both legs of its panel: 20 A out and back on 10 AWG, 40 m, 5.3 %.
    auto one = with_shop(40, {one_pole("S1", 1).load(1200_VA), one_pole("S2", 3).load(1200_VA)});
    one.circuits[0].poles = 1;
    one.panels[1].supply = typed::Supply{"", SupplyKind::bridged_120, {}, Leg::a, {}};
    REQUIRE_THAT(found("wire-drop", one, "CE 2024").at(0).message, Contains("loses 5.3 %") && Contains("at 20 A"));
    // 2.6 % to the shop and 2.6 % on to the kiln: each within its own, both together not.
    auto row = with_shop(
        40, {long_run(two_pole("KF", 1).breaker(30_A).use("feeder").with([](typed::Circuit& c) { c.load.reset(); }), 40,
                      "10/3")});
    typed::Panel kiln = row.panels[1];
    kiln.name = "Kiln";
    kiln.feeder = typed::FeederName{"Shop", "KF"};
    row.panels.push_back(kiln);
    row.circuits.push_back(two_pole("KN", 1).in("Kiln").load(4800_VA).cable("10/2"));
    auto const f = found("wire-drop", row, "CE 2024");
    REQUIRE(in_short(f) == "warning KF");
    REQUIRE_THAT(f[0].message, Contains("with the feeders ahead of it 5.3 %, more than 5 %"));
    // Told once: a third feeder behind it, in any order of the file, adds nothing of its own.
    row.circuits.push_back(long_run(two_pole("LF", 5).in("Kiln").breaker(30_A).use("feeder").load(0_VA), 5, "10/3"));
    typed::Panel last = kiln;
    last.name = "Last";
    last.feeder = typed::FeederName{"Kiln", "LF"};
    row.panels.insert(row.panels.begin(), last);
    row.circuits.push_back(one_pole("LA", 1).in("Last").load(100_VA));
    REQUIRE(says("wire-drop", row, "CE 2024") == "warning KF");
}
