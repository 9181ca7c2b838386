// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is said where no size can be proposed, and of each step that decides one.
#include "job/job.h"
#include "proposed_jobs.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::testing;

namespace {
std::string find_out(typed::Job const& job, std::string_view edition = "NEC 2023") {
    auto const p = proposed(job, edition);
    CHECK_FALSE(p.breaker);
    CHECK_FALSE(p.has_cable());
    CHECK(p.reference.edition.empty());
    return p.find_out;
}
std::string find_out(typed::Circuit circuit) { return find_out(job_of({std::move(circuit)})); }
std::string steps(typed::Circuit circuit, std::string_view edition = "NEC 2023") {
    return steps_of(proposed(job_of({std::move(circuit)}), edition));
}

typed::Job with_shop(std::vector<typed::Circuit> in_shop) {
    auto feeder = bare("feeder", {}, 2);
    feeder.mark = "SP";
    std::vector<typed::Circuit> all{feeder};
    for (typed::Circuit& c : in_shop) {
        c.panel = "Shop";
        all.push_back(std::move(c));
    }
    auto job = job_of(std::move(all));
    typed::Panel shop = job.panels.front();
    shop.name = "Shop";
    shop.supply.reset();
    shop.feeder = typed::FeederName{"Main", "SP"};
    job.panels.push_back(shop);
    return job;
}
} // namespace

TEST_CASE("what is to be found out is what would let the size be proposed", "[propose][messages]") {
    CHECK(find_out(bare("", {})) == "what hangs on it: its load, its use, or its receptacle types (outlets)");
    CHECK(find_out(bare("baseboard", {}, 2)) == "its load: read it on the nameplate");
    CHECK(find_out(bare("air conditioner", {}, 2)) ==
          "its nameplate: the minimum circuit ampacity (mca) and the largest breaker (mop)");
    CHECK_THAT(find_out(bare("solar", {}, 2)), Contains("read the output current on its nameplate"));
}

TEST_CASE("no sizes for direct current, and why", "[propose][messages]") {
    auto const job = job_of({bare("lighting", 36_VA)}, SupplyKind::dc_12);
    CHECK_THAT(find_out(job), Contains("none are proposed for direct current, since the tables here are of building"));
    CHECK(steps_of(proposed(job, "NEC 2023")) == "36 VA at 12 V = 3 A\n");
    auto fused = job;
    fused.circuits.front().breaker = 5_A;
    CHECK_THAT(find_out(fused, "CE 2018"), Contains("fuse and wire by hand"));
}

TEST_CASE("what stands in the file already is not overruled", "[propose][messages]") {
    SECTION("a breaker too small for the load") {
        auto c = bare("water heater", 4500_VA, 2);
        c.breaker = 20_A;
        CHECK(find_out(c) == "another breaker: K1 has 20 A, and 23.44 A or more is asked");
    }
    SECTION("a breaker too large for the nameplate") {
        auto c = bare("heat pump", {}, 2);
        c.mca = 12_A, c.mop = 20_A, c.breaker = 30_A;
        CHECK(find_out(c) == "another breaker: K1 has 30 A, and 20 A is the most");
    }
    SECTION("a wire too thin for the breaker that the load asks") {
        auto c = bare("water heater", 4500_VA, 2);
        c.run.front().kind = "12/2";
        CHECK_THAT(find_out(c), Contains("a 25 A breaker is needed, and 12 AWG takes a 20 A breaker at most"));
    }
    SECTION("sizes of what is there already are read") {
        auto c = bare("lighting", 240_VA);
        c.existing = true;
        CHECK_THAT(find_out(c), Contains("it is there already, so its sizes are read and not chosen"));
    }
}

TEST_CASE("a nameplate that no breaker suits, and receptacles that none suits", "[propose][messages]") {
    auto c = bare("heat pump", {}, 2);
    c.mca = 18_A, c.mop = 15_A;
    CHECK(find_out(c) == "at least 18 A is needed, and 15 A is the most");
    auto tools = bare("workshop", 2300_VA); // 19.2 A, and no receptacle of 15 A on more than 20 A
    tools.continuous = true;
    tools.outlets = {"5-15R"};
    CHECK_THAT(find_out(tools), Contains("no standard breaker of 23.96 A or more suits its receptacles (5-15R)"));
}

TEST_CASE("a load too large, or too far away, for any wire is to be divided", "[propose][messages]") {
    CHECK_THAT(find_out(bare("appliance", 100'000_VA, 2)),
               Contains("a breaker of 416.67 A or more is needed, and 400 A is the largest here; divide the load"));
    auto far = bare("receptacles", 1800_VA);
    far.run.front().length = from_mm(4'000'000);
    CHECK_THAT(find_out(far),
               Contains("would lose") && Contains("bring the panel nearer to the load, or divide the load"));
}

TEST_CASE("of a pair each is told by its mark", "[propose][messages]") {
    auto one = bare("receptacles", 1200_VA), two = bare("", {});
    two.mark = "K2";
    one.multiwire = two.multiwire = "K";
    SECTION("what is not known of one") {
        for (Proposal const& p : all_proposed(job_of({one, two}), "NEC 2023"))
            CHECK(p.find_out == "of K2 what hangs on it: its load, its use, or its receptacle types (outlets)");
    }
    two.use = "receptacles";
    SECTION("one size for both") {
        two.load = 2300_VA;
        auto const all = all_proposed(job_of({one, two}), "NEC 2023");
        REQUIRE(all.size() == 2);
        CHECK_THAT(steps_of(all[0]), Contains("one size with K2: 20 A"));
        CHECK(all[0].breaker == 20_A);
        CHECK_THAT(steps_of(all[1]), Contains("one hot each of K2 and K1, one neutral for both, and ground: 12/3"));
    }
    SECTION("one has a breaker that the other is too much for") {
        one.breaker = 15_A;
        two.load = 2300_VA;
        auto const all = all_proposed(job_of({one, two}), "NEC 2023");
        for (Proposal const& p : all)
            CHECK(p.find_out == "19.17 A is needed, and its pair has 15 A: one breaker size for both");
    }
    SECTION("a piece of its own makes the runs differ, and the lines say whose is whose") {
        two.load = 1200_VA;
        one.run.push_back({"", from_mm(3'000), ""});
        auto const words = steps_of(all_proposed(job_of({one, two}), "NEC 2023").front());
        CHECK_THAT(words, Contains("K1: one wire at 75 °C: 13 m of 14 AWG") &&
                              Contains("K2: one wire at 75 °C: 10 m of 14 AWG"));
    }
}

TEST_CASE("a range's demand is reckoned before its amperes", "[propose][messages]") {
    // Source: NEC Table 220.55 note 1, 14 kW: 8 kW and 5 % for each of 2 kW; CE 8-300(1): 8 kW and 40 % of the 2 kW.
    CHECK_THAT(steps(bare("range", 12'000_VA, 2)), Contains("a range of 12000 VA: 8000 VA for any of up to 12000 VA"));
    CHECK_THAT(steps(bare("range", 14'000_VA, 2)), Contains("8000 VA + 2 x 5 % x 8000 VA") && Contains("= 8800 VA") &&
                                                       Contains("8800 VA at 240 V = 36.67 A"));
    CHECK_THAT(steps(bare("range", 14'000_VA, 2), "CE 2021"),
               Contains("8000 VA + 40 % of the 2000 VA above 12000 VA = 8800 VA [CE 2021 8-300]"));
    CHECK_THAT(steps(bare("range", 12'000_VA, 2)), Contains("a range of 8750 VA or more has at least 40 A"));
}

TEST_CASE("each easing is said where it decides", "[propose][messages]") {
    CHECK_THAT(steps(bare("baseboard", 3600_VA, 2), "CE 2024"),
               Contains("14 AWG, the smallest wire of a circuit, is good for 15 A (60 °C column), and feeding fixed "
                        "heating may stand on 20 A [CE 2024 62-114(7), (8)]"));
    // NEC 240.4(B): 6 AWG carries 55 A at 60 °C, the next standard breaker is 60 A.
    auto c = bare("appliance", 13'000_VA, 2); // 54.17 A
    c.continuous = false;
    CHECK_THAT(steps(c), Contains("6 AWG is good for 55 A (60 °C column), and may stand on 60 A, the next standard "
                                  "breaker"));
    auto known = bare("baseboard", 2000_VA, 2);
    known.run.front().kind = "12/2";
    CHECK_THAT(steps(known), Contains("its wire: 12 AWG is good for 20 A"));
    auto pump = bare("heat pump", {}, 2);
    pump.mca = 18_A, pump.mop = 30_A;
    CHECK_THAT(steps(pump), Contains("30 A at most (mop); up to that it may be larger, should it trip at the start"));
}

TEST_CASE("208 V heat draws less, and the power it gives is reckoned", "[propose][messages]") {
    // (208/240)² of 3000 W = 2253 W; / 208 V = 10.83 A.
    auto const job = job_of({bare("baseboard", 3000_VA, 2)}, SupplyKind::wye_120_208);
    auto const words = steps_of(proposed(job, "NEC 2023"));
    CHECK_THAT(words, Contains("3000 VA x (208 / 240)² = 2253 VA") && Contains("2253 VA at 208 V = 10.83 A"));
}

TEST_CASE("a feeder says what of its panel it carries", "[propose][messages][feeder]") {
    auto heater = bare("baseboard", 4800_VA, 2), tools = bare("workshop", 1200_VA);
    heater.mark = "H", tools.mark = "T";
    heater.space = Spot{1, 0}, tools.space = Spot{2, 0};
    SECTION("each circuit with its share") {
        CHECK_THAT(steps_of(all_proposed(with_shop({heater, tools}), "NEC 2023").front()),
                   Contains("leg A: H 20 A x 125 % + T 10 A = 35 A; leg B 25 A [NEC 2023 215.2(A)(1), 215.3, 430.24"));
    }
    SECTION("never more than the bus takes without a main") {
        auto job = with_shop({heater, tools});
        job.panels.back().bus = 30_A;
        auto const p = all_proposed(job, "NEC 2023").front();
        CHECK_THAT(steps_of(p), Contains("its bus, with no main ahead of it, takes 30 A at most"));
        CHECK(p.find_out == "at least 35 A is needed, and 30 A is the most");
    }
    SECTION("a main that lets less through") {
        auto job = with_shop({heater, tools});
        job.panels.back().main = 30_A;
        auto const p = all_proposed(job, "NEC 2023").front();
        CHECK_THAT(steps_of(p), Contains("less at any time; its main lets 30 A through"));
        CHECK(p.breaker == 30_A);
    }
    SECTION("a panel with nothing in it yet") {
        auto job = with_shop({});
        CHECK(find_out(job) == "the circuits of panel \"Shop\" and what they draw, or give that panel a main");
        job.panels.back().main = 60_A;
        CHECK(sized(job, "NEC 2023") == "60 A 4/3");
        job.panels.back().main.reset();
        job.circuits.front().load = 7200_VA; // 30 A
        CHECK_THAT(sized(job, "NEC 2023"), Contains("30 A 10/3"));
    }
    SECTION("a circuit that found no space") {
        tools.space.reset();
        CHECK(all_proposed(with_shop({heater, tools}), "NEC 2023").front().find_out ==
              "a space for T in panel \"Shop\", or give that panel a main");
    }
    SECTION("on one pole its one hot carries both legs") {
        auto job = with_shop({tools});
        job.circuits.front().poles = 1;
        CHECK_THAT(all_proposed(job, "NEC 2023").front().find_out,
                   Contains("Panel \"Shop\" is taken to have two hots, and its feeder SP has one pole"));
        job.panels.front().supply->kind = SupplyKind::bridged_120;
        auto const p = all_proposed(job, "NEC 2023").front();
        CHECK_THAT(steps_of(p), Contains("its one hot: T 10 A = 10 A"));
        CHECK(p.cables == std::vector<std::string>{"14/2"});
        CHECK_THAT(steps_of(p), Contains("it loses 2 x 10 A x 0.1007 ohm = 2.01 V, 1.7 % of 120 V"));
    }
}

TEST_CASE("what a proposed cable carries is said for each piece of the run", "[propose][messages]") {
    CHECK_THAT(steps(bare("water heater", 3000_VA, 2)), Contains("two hots, no neutral, and ground: 12/2"));
    CHECK_THAT(steps(bare("range", 12'000_VA, 2)), Contains("two hots and a neutral, and ground: 8/3"));
    auto fan = bare("lighting", 100_VA);
    fan.third = "switched";
    CHECK_THAT(steps(fan), Contains("a hot and a neutral, one more (switched), and ground: 14/3"));
    auto loop = bare("lighting", 100_VA);
    loop.switch_loop = true;
    loop.run.push_back(loop.run.front());
    CHECK_THAT(steps(loop), Contains("in piece 1: a hot and a neutral, and ground: 14/2") &&
                                Contains("in piece 2: a hot and a neutral, one more (switched, back from the switch), "
                                         "and ground: 14/3"));
    auto charger = bare("vehicle charger", 7680_VA, 2);
    CHECK_THAT(steps(charger), Contains("if its terminals have an N, say third"));
    charger.wiring = Wiring::conduit;
    CHECK_THAT(steps(charger), Contains("in conduit neither hot is white: pull black and red"));
    charger.colors = {"black", "red"};
    CHECK_THAT(steps(charger), !Contains("in conduit neither"));
}
