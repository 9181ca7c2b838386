// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Feeders of dwellings and of their parts: the load calculation sizes them, worked out beside each.
#include "building/resolve.h"
#include "job/job.h"
#include "proposed_jobs.h"
#include "rules/check.h"
#include "shops.h"

#include "catch.h"
#include <rapidcheck.h>

#include <algorithm>

using namespace legwork;
using namespace legwork::testing;

namespace {
typed::Circuit one(std::string mark, std::string use, VoltAmperes load, int poles, int space) {
    auto c = bare(std::move(use), load, poles);
    c.mark = std::move(mark);
    c.panel = "Shop";
    c.space = Spot{space, 0};
    return c;
}

typed::Job behind_feeder(std::vector<typed::Circuit> circuits) {
    auto feeder = bare("feeder", {}, 2);
    feeder.mark = "SP";
    circuits.insert(circuits.begin(), feeder);
    auto job = job_of(std::move(circuits));
    typed::Panel panel = job.panels.front();
    panel.name = "Shop";
    panel.supply.reset();
    panel.feeder = typed::FeederName{"Main", "SP"};
    job.panels.push_back(panel);
    job.dwelling = typed::Dwelling{};
    return job;
}

// All at once: 50 A of the range, 23.44 and 31.25 A of water and heat for hours, 20.83 A of the dryer, 10 A on one leg:
// 135.52 A.
typed::Job suite(VoltAmperes heat = 6000_VA) {
    auto job = behind_feeder({one("RG", "range", 12'000_VA, 2, 1), one("WH", "water heater", 4500_VA, 2, 2),
                              one("H1", "baseboard", heat, 2, 5), one("DR", "dryer", 5000_VA, 2, 6),
                              one("DW", "dishwasher", 1200_VA, 1, 9)});
    job.dwelling->area = Area{55'741'824}; // 600 ft²
    job.dwelling->area_units = UnitSystem::inch;
    return job;
}

// A light at the main panel, so that the feeder carries a part only. Two counter circuits stand on each leg.
typed::Job kitchen() {
    auto job = behind_feeder({one("K1", "kitchen counter", 1500_VA, 1, 1), one("K2", "kitchen counter", 1500_VA, 1, 3),
                              one("K3", "kitchen counter", 1500_VA, 1, 5), one("K4", "kitchen counter", 1500_VA, 1, 7),
                              one("L1", "lighting", 300_VA, 1, 21)});
    job.circuits.back().panel = "Main";
    return job;
}

Proposal of_feeder(typed::Job const& job, std::string_view edition) {
    auto const all = all_proposed(job, edition);
    REQUIRE(all.front().circuit == "SP");
    return all.front();
}
std::string feeder_size(typed::Job const& job, std::string_view edition) {
    auto const p = of_feeder(job, edition);
    return p.breaker ? std::to_string(p.breaker->count / 1000) + " A " + p.cables.front() : p.find_out;
}
} // namespace

TEST_CASE("the feeder of a whole suite carries its calculated load", "[propose][feeder][load]") {
    SECTION("NEC 2023 220.82, 310.12") {
        // 600 ft² x 3 + 2 x 1500 + 1500 + 12000 + 4500 + 5000 + 1200 = 29000 VA; 10000 + 19000 x 40 % = 17600; 11 kW
        // of heat x 65 % = 7150: 24750 VA, 103.13 A. Table 310.12 has 3 AWG on 110 A, which 334.80 takes from sheathed
        // cable: nobody is told to build by what is argued about. 1 AWG is good for 110 A at 60 °C.
        REQUIRE(feeder_size(suite(11'000_VA), "NEC 2023") == "110 A 1/3");
        auto const p = of_feeder(suite(11'000_VA), "NEC 2023");
        CHECK_THAT(steps_of(p),
                   Contains("Optional method for one dwelling (NEC 2023 220.82(B)): 24750 VA at 240 V = "
                            "103.13 A; `legwork load --panel \"Shop\"` shows the steps [NEC 2023 220.5(A)]"));
        CHECK_THAT(steps_of(p), !Contains("310.12"));
        CHECK_THAT(steps_of(p), Contains("(the calculated load)"));
        CHECK(p.reference.section == "220.82(B)");
    }
    SECTION("CE 2021 8-200") {
        // 5000 + 6000 of heat + 6000 of the range + (4500 + 5000) x 25 % = 19375 VA, 80.73 A.
        REQUIRE(feeder_size(suite(), "CE 2021") == "90 A 3/3");
        CHECK_THAT(steps_of(of_feeder(suite(), "CE 2021")), Contains("19375 VA at 240 V = 80.73 A"));
        // The least for a dwelling under 80 m²: 60 A, wire and all (8-200(1)(b)).
        auto small = behind_feeder({one("L1", "lighting", 300_VA, 1, 1)});
        small.dwelling->area = Area{30'000'000};
        CHECK(feeder_size(small, "CE 2021") == "60 A 4/3");
    }
    SECTION("where a method holds from a size on, the size that it is calculated by") {
        // 21500 VA by the optional method, 89.58 A; that is of 100 A or more.
        REQUIRE(feeder_size(suite(), "NEC 2023") == "100 A 4/3");
        CHECK_THAT(steps_of(of_feeder(suite(), "NEC 2023")),
                   Contains("90 A would not do: by the standard method it must carry") &&
                       Contains("is for a service of 100 A or more"));
    }
}

TEST_CASE("the feeder of a part of a dwelling carries what the code counts of it", "[propose][feeder][load]") {
    // NEC 220.52(A), Table 220.42: 3000 + 3000 x 35 % = 4050 VA, 16.88 A; all at once 25 A a leg.
    REQUIRE(feeder_size(kitchen(), GENERATE("NEC 2017", "NEC 2020", "NEC 2023")) == "20 A 12/3");
    SECTION("CE reckons such a part as all that is listed: at once") {
        CHECK(feeder_size(kitchen(), "CE 2021") == "25 A 10/3");
    }
    SECTION("a named situation draws more") {
        auto job = kitchen();
        job.situations.push_back({"Feast", 1'000'000, {}, {}});
        CHECK(feeder_size(job, "NEC 2023") == "25 A 10/3");
        CHECK_THAT(steps_of(of_feeder(job, "NEC 2023")), Contains("situation \"Feast\" draws more: 25 A"));
        // It loses more than the calculated load does, so the wire goes by it; without it by the calculated load.
        CHECK_THAT(steps_of(of_feeder(job, "NEC 2023")),
                   Contains("(in \"Feast\"), which is more than with the calculated load; up to 3 % is advised"));
        CHECK_THAT(steps_of(of_feeder(kitchen(), "NEC 2023")), Contains("(the calculated load); up to 3 % is advised"));
    }
    SECTION("a main that is too small is put right first") {
        auto job = kitchen();
        job.panels.back().main = 15_A;
        CHECK_THAT(feeder_size(job, "NEC 2023"), Contains("Too much for the main of 15 A"));
        job.panels.back().main = 20_A;
        CHECK(feeder_size(job, "NEC 2023") == "20 A 12/3");
    }
    SECTION("so is a breaker that is there") {
        auto job = kitchen();
        job.circuits.front().breaker = 15_A;
        CHECK_THAT(of_feeder(job, "NEC 2023").find_out, Contains("Too much for the feeder SP of 15 A"));
        job.circuits.front().breaker = 30_A;
        CHECK(of_feeder(job, "NEC 2023").cables == std::vector<std::string>{"10/3"});
    }
    SECTION("no more than the bus takes") {
        auto job = kitchen();
        job.panels.back().bus = 15_A;
        CHECK_THAT(of_feeder(job, "NEC 2023").find_out, Contains("16.88 A is needed, and 15 A is the most"));
    }
}

TEST_CASE("where there is no calculation with demand factors, all at once", "[propose][feeder][load]") {
    SECTION("an outbuilding") {
        auto job = kitchen();
        job.dwelling.reset();
        CHECK(feeder_size(job, "NEC 2023") == "25 A 10/3");
        CHECK_THAT(steps_of(of_feeder(job, "NEC 2023")), Contains("all of panel \"Shop\" at once"));
    }
    SECTION("a floor area that nobody knows") {
        auto job = suite();
        job.dwelling->area.reset();
        CHECK(feeder_size(job, "NEC 2023") == "150 A 1/0/3");
        CHECK_THAT(steps_of(of_feeder(job, "NEC 2023")),
                   Contains("its load calculation is not complete (the floor area of the dwelling)"));
    }
    SECTION("an unknown load") {
        auto job = suite();
        job.circuits[2].load.reset();
        CHECK(of_feeder(job, "NEC 2023").find_out == "the load of WH in panel \"Shop\", or give that panel a main");
        job.panels.back().main = 125_A;
        CHECK(of_feeder(job, "NEC 2023").breaker == 125_A);
    }
    SECTION("a load that stands on one hot, nobody knows which") {
        auto job = suite();
        job.circuits.back().use = "freezer";
        job.circuits.back().space.reset();
        CHECK(of_feeder(job, "CE 2024").breaker == 90_A); // within the blocks
        job.circuits.push_back(one("L1", "lighting", 300_VA, 1, 21));
        job.circuits.back().panel = "Main";
        CHECK(of_feeder(job, "NEC 2023").find_out == "a space for DW in panel \"Shop\", or give that panel a main");
    }
}

namespace {
void furnish(typed::Job& job) {
    static std::vector<std::string> const two{"range", "dryer",   "vehicle charger", "air conditioner", "heat pump",
                                              "oven",  "cooktop", "heating",         "water heater"};
    static std::vector<std::string> const one_pole{"dishwasher", "kitchen counter", "laundry", "freezer", "furnace"};
    for (typed::Circuit& c : job.circuits)
        if (c.panel == "Shop" && chance(2)) c.use = *rc::gen::elementOf(c.poles == 2 ? two : one_pole);
    job.dwelling = typed::Dwelling{};
    if (!chance(5)) job.dwelling->area = Area{*rc::gen::inRange<std::int64_t>(15, 300) * 1'000'000};
    if (chance(3)) job.situations.push_back({"Evening", *rc::gen::inRange<std::int64_t>(0, 11) * 100'000, {}, {}});
    if (chance(3)) job.panels.back().main = *rc::gen::element(30_A, 60_A, 100_A, 125_A);
    if (chance(5)) job.panels.back().bus = *rc::gen::element(60_A, 100_A);
    if (chance(6)) job.circuits.back().load.reset();
    if (chance(6)) job.circuits.back().existing = true;
    if (chance(3)) {
        auto light = one("L1", "lighting", 300_VA, 1, 21);
        light.panel = "Main";
        job.circuits.push_back(light);
    }
}

// Warnings and errors of sizes that are about the feeder or the load of its panel.
std::string of_sizes(typed::Job const& job, std::string_view edition) {
    auto const plan = as_typed(job);
    std::string all;
    for (auto const* id : {"load-service", "panel-main-overloaded", "wire-breaker-fits", "wire-load-fits",
                           "wire-continuous", "wire-breaker-size", "wire-drop", "panel-feeder-wires"})
        for (Finding const& f : judged(*rule_named(id), {resolve(job), plan, *code_book(edition)}).findings()) {
            bool const of_load = f.where.panel == "Shop" && f.where.circuits.empty();
            bool const of_feeder = std::ranges::find(f.where.circuits, "SP") != f.where.circuits.end();
            if (f.severity != Severity::note && (of_load || of_feeder)) all += f.rule + ": " + f.message + "\n";
        }
    return all;
}
} // namespace

TEST_CASE("whatever is proposed for the feeder of a dwelling is found good by check", "[propose][feeder][load]") {
    REQUIRE(rc::check([] {
        auto const edition = any_edition();
        auto feeder = bare("feeder", {}, 2);
        feeder.run.front().length = any_length(60);
        if (chance(4)) feeder.metal = Metal::aluminium;
        if (chance(4)) feeder.wiring = Wiring::conduit;
        if (chance(5)) feeder.breaker = *rc::gen::element(40_A, 60_A, 100_A, 125_A);
        auto job = any_shop(feeder).job;
        furnish(job);
        auto const all = all_proposed(job, edition);
        auto const& p = all.front();
        RC_ASSERT(p.circuit == "SP");
        RC_LOG() << edition << "\n" << steps_of(p) << "find out: " << p.find_out << "\n";
        bool const proposes = p.breaker || p.has_cable();
        RC_CLASSIFY(proposes);
        RC_CLASSIFY(steps_of(p).find("legwork load") != std::string::npos);
        RC_ASSERT(proposes == p.find_out.empty());
        if (!proposes) return;
        auto const said = of_sizes(*with_proposals(resolve(job), {p}).said, edition);
        RC_LOG() << said;
        RC_ASSERT(said.empty());
    }));
}
