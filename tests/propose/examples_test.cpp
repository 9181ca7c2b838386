// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes that tables of the trade and published answers give, and the reckoning beside them.
#include "job/job.h"
#include "proposed_jobs.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::testing;

TEST_CASE("a storage water heater of 4500 W is on 25 A and 10 AWG, and the steps say why", "[propose]") {
    // Source: NEC 422.13, 240.6(A), 240.4(D): 18.75 A x 125 % = 23.4 A, next standard breaker 25 A; 12 AWG stops at 20
    // A.
    auto const job = job_of({bare("water heater", 4500_VA, 2)});
    REQUIRE(sized(job, GENERATE("CE 2018", "CE 2024", "NEC 2017", "NEC 2023")) == "25 A 10/2");
    auto const steps = steps_of(proposed(job, "NEC 2023"));
    for (auto const* words : {"4500 VA at 240 V = 18.75 A", "18.75 A x 125 % = 23.44 A [NEC 2023 422.13]",
                              "next standard breaker: 25 A [NEC 2023 240.6(A)]", "12 AWG takes a 20 A breaker at most",
                              "two hots, no neutral, and ground: 10/2"})
        CHECK_THAT(steps, Contains(words));
}

TEST_CASE("what each code eases or asks is in the size", "[propose]") {
    SECTION("fixed heating: CE 62-114(7), (8) stands 3600 W on 20 A and 14 AWG") {
        REQUIRE(sized(bare("baseboard", 3600_VA, 2), "CE 2021") == "20 A 14/2");
        REQUIRE(sized(bare("baseboard", 3600_VA, 2), "NEC 2020") == "20 A 12/2");
    }
    SECTION("a range of 12 kW: 8 kW of demand; NEC 210.19(A)(3) asks 40 A from 8 3/4 kW on") {
        REQUIRE(sized(bare("range", 12000_VA, 2), "NEC 2017") == "40 A 8/3");
        // 33.3 A: 35 A would do, and a 14-50R may stand on 40 A.
        REQUIRE(sized(bare("range", 12000_VA, 2), "CE 2018") == "40 A 8/3");
    }
    SECTION("nameplate: wire by mca, breaker not above mop") {
        auto c = bare("heat pump", {}, 2);
        c.mca = 18_A;
        c.mop = 30_A;
        REQUIRE(sized(c, "NEC 2023") == "20 A 12/2");
        c.mop = 15_A;
        REQUIRE_THAT(proposed(job_of({c}), "NEC 2023").find_out, Contains("15 A is the most"));
    }
    SECTION("a receptacle has a circuit that its rating belongs to") {
        auto c = bare("dryer", 5000_VA, 2);
        REQUIRE_THAT(steps_of(proposed(job_of({c}), "NEC 2023")),
                     Contains("the next breaker that 14-30R, the usual receptacle of a dryer, may stand on (wired in "
                              "without one, 25 A would do): 30 A"));
        c.outlets = {"14-30R"};
        REQUIRE(sized(c, "NEC 2023") == "30 A 10/3");
        REQUIRE(sized(bare("dryer", 8000_VA, 2), "NEC 2023") == "35 A 8/3"); // too much for one
        auto tools = bare("workshop", 900_VA);
        tools.outlets = {"5-20R"};
        REQUIRE(sized(tools, "NEC 2023") == "20 A 12/2");
    }
}

TEST_CASE("with no load known, the code's or the usual circuit, and it is said so", "[propose]") {
    auto const use = GENERATE("kitchen counter", "laundry", "bathroom", "garage");
    auto home = job_of({bare(use, {})});
    home.dwelling = typed::Dwelling{};
    CAPTURE(use);
    // Source: NEC 210.11(C)(1) to (4).
    REQUIRE(sized(home, "NEC 2020") == "20 A 12/2");
    REQUIRE_THAT(steps_of(proposed(home, "NEC 2020")), Contains("its load is not known; a dwelling's"));
    auto counter = bare("kitchen counter", {});
    home.circuits = {counter};
    home.circuits.front().panel = "Main";
    REQUIRE(sized(home, "CE 2024") == "20 A 12/2"); // CE 26-722(d)
}

TEST_CASE("where nothing can be said, what to find out is", "[propose]") {
    REQUIRE_THAT(proposed(job_of({bare("", {})}), "NEC 2023").find_out, Contains("what hangs on it"));
    REQUIRE_THAT(proposed(job_of({bare("water heater", {}, 2)}), "NEC 2023").find_out, Contains("nameplate"));
    auto old = bare("lighting", 240_VA);
    old.existing = true;
    REQUIRE_THAT(proposed(job_of({old}), "NEC 2023").find_out, Contains("read and not chosen"));
    REQUIRE(all_proposed(job_of({bare("spare", {})}), "NEC 2023").empty());
}

TEST_CASE("a feeder is sized by what its panel draws", "[propose][feeder]") {
    auto feeder = bare("feeder", {}, 2);
    feeder.mark = "SP";
    auto heater = bare("baseboard", 4800_VA, 2), tools = bare("workshop", 1200_VA);
    heater.mark = "H", tools.mark = "T";
    heater.panel = tools.panel = "Shop";
    heater.space = Spot{1, 0}, tools.space = Spot{2, 0};
    auto job = job_of({feeder, heater, tools});
    typed::Panel shop = job.panels.front();
    shop.name = "Shop";
    shop.supply.reset();
    shop.feeder = typed::FeederName{"Main", "SP"};
    job.panels.push_back(shop);
    // 20 A of heat x 125 % and 10 A of tools on one leg: 35 A.
    auto const p = all_proposed(job, "NEC 2023").front();
    CAPTURE(steps_of(p), p.find_out);
    REQUIRE(p.breaker == 35_A);
    REQUIRE(p.cables == std::vector<std::string>{"8/3"});
    job.circuits.back().load.reset();
    REQUIRE_THAT(all_proposed(job, "NEC 2023").front().find_out, Contains("the load of T"));
    job.panels.back().main = 60_A;
    REQUIRE(all_proposed(job, "NEC 2023").front().breaker == 60_A);
}
