// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Whether the service carries the calculated load. Sources: NEC 220.82, 220 Part III, 230.79(C); CE 8-200(1) with its
// floors; the figures are added up beside each case.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
// A dwelling of so many square metres with a range of 12 kW and heat, tank or what else is listed.
typed::Job home(std::int64_t m2, std::vector<typed::Circuit> circuits, Amps main) {
    auto made = job(std::move(circuits));
    typed::Dwelling d;
    d.area = Area{m2 * 1'000'000};
    made.dwelling = d;
    made.panels[0].main = main;
    return made;
}
typed::Circuit load(std::string mark, std::string use, VoltAmperes va) {
    return two_pole(std::move(mark)).use(std::move(use)).load(va);
}
std::string const nec[] = {"NEC 2017", "NEC 2020", "NEC 2023"};
std::string const ce[] = {"CE 2018", "CE 2021", "CE 2024"};
} // namespace

TEST_CASE("load-service: CE, a dwelling above its main and just within it", "[check][load]") {
    auto const edition = GENERATE(from_range(std::begin(ce), std::end(ce)));
    // 90 m²: 5000; one furnace in full; range 6000; tank of 4000 at 25 %: 1000.
    auto const with_furnace = [](VoltAmperes va) {
        return home(90, {load("FU", "furnace", va), load("RG", "range", 12000_VA), load("WH", "water heater", 4000_VA)},
                    100_A);
    };
    REQUIRE(says("load-service", with_furnace(12000_VA), edition).empty());         // 24 000 VA = 100 A
    REQUIRE(says("load-service", with_furnace(12100_VA), edition) == "error Main"); // 24 100 VA = 100.4 A
    auto const f = found("load-service", with_furnace(12100_VA), edition).at(0);
    REQUIRE_THAT(f.message, Contains("24100 VA") && Contains("the main of 100 A") && Contains("100.42 A"));
    REQUIRE_THAT(f.fix, Contains("a service of 110 A"));
    REQUIRE(f.reference.source == Source::seen);
}

TEST_CASE("load-service: NEC, under half an ampere is left out", "[check][load]") {
    auto const edition = GENERATE(from_range(std::begin(nec), std::end(nec)));
    // 100 m² at 33 VA: 3300 + 3000 + 1500 and a range of 12 000: 19 800; 10 000 + 40 % of 9800 = 13 920. Central heat
    // at 65 %.
    auto const with_heat = [](VoltAmperes va) {
        return home(100, {load("RG", "range", 12000_VA), load("FU", "furnace", va)}, 100_A);
    };
    REQUIRE(says("load-service", with_heat(15690_VA), edition).empty()); // 13 920 + 10 199: 24 119 VA, 100.496 A
    REQUIRE(says("load-service", with_heat(15695_VA), edition) == "error Main"); // + 10 202: 24 122 VA, 100.508 A
}

TEST_CASE("load-service: NEC, it is enough that one method keeps it within", "[check][load]") {
    auto const edition = GENERATE(from_range(std::begin(nec), std::end(nec)));
    // Optional: 8100 + 12 000 + 5000 + 4500 = 29 600; 10 000 + 7840 + 65 % of 9000: 23 690 VA, 98.7 A.
    // Standard: 3000 + 1785 + 8000 + 5000 + 4500 + 9000 = 31 285 VA, 130.4 A.
    auto const made = home(109,
                           {load("RG", "range", 12000_VA), load("DR", "dryer", 5000_VA),
                            load("WH", "water heater", 4500_VA), load("FU", "furnace", 9000_VA)},
                           100_A);
    REQUIRE(says("load-service", made, edition).empty());
    // An existing furnace makes 220.83 the usual method: it puts the new heat in full, and 220.82 still carries it.
    auto part_old = made;
    part_old.circuits[0].existing = true;
    REQUIRE(says("load-service", part_old, edition).empty());
}

TEST_CASE("load-service: what was there before is a warning", "[check][load]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2018", "CE 2021", "CE 2024", "NEC 2017", "NEC 2020", "NEC 2023");
    auto made = home(100, {load("FU", "furnace", 70000_VA)}, 100_A);
    REQUIRE(says("load-service", made, code) == "error Main");
    made.circuits[0].existing = true;
    REQUIRE(says("load-service", made, code) == "error Main"); // in a new panel
    made.panels[0].existing = true;
    REQUIRE(says("load-service", made, code) == "warning Main");
    made.circuits.push_back(load("WH", "water heater", 3000_VA)); // something new joins it
    REQUIRE(says("load-service", made, code) == "error Main");
}

TEST_CASE("load-service: the least service of a dwelling, CE by its area without the basement", "[check][load]") {
    auto const edition = GENERATE(from_range(std::begin(ce), std::end(ce)));
    auto const small = [](std::int64_t mm2, Amps main) {
        auto made = home(1, {load("WH", "water heater", 3000_VA)}, main);
        made.dwelling->area = Area{mm2};
        made.dwelling->basement = Area{40'000'000};
        return made;
    };
    REQUIRE(says("load-service", small(79'999'999, 60_A), edition).empty());
    REQUIRE(says("load-service", small(79'999'999, 50_A), edition) == "error Main");
    REQUIRE(says("load-service", small(80'000'000, 100_A), edition).empty());
    REQUIRE(says("load-service", small(80'000'000, 90_A), edition) == "error Main");
    auto old = small(80'000'000, 60_A);
    old.panels[0].existing = true;
    REQUIRE(says("load-service", old, edition) == "warning Main");
    REQUIRE_THAT(found("load-service", small(80'000'000, 60_A), edition).at(0).message,
                 Contains("the main of 60 A") && Contains("the least for it is 100 A"));
}

TEST_CASE("load-service: NEC, a dwelling's disconnect is of 100 A at least, and a small one may be told otherwise",
          "[check][load]") {
    auto const edition = GENERATE(from_range(std::begin(nec), std::end(nec)));
    REQUIRE(says("load-service", home(30, {load("WH", "water heater", 3000_VA)}, 60_A), edition) == "warning Main");
    REQUIRE(says("load-service", home(30, {load("WH", "water heater", 3000_VA)}, 100_A), edition).empty());
    auto fed = home(30, {load("WH", "water heater", 3000_VA)}, 60_A); // from another panel
    fed.circuits[0].panel = "Loft";
    fed.circuits.push_back(two_pole("SP").use("feeder").breaker(60_A));
    typed::Panel loft = fed.panels[0];
    loft.name = "Loft";
    loft.supply.reset();
    loft.feeder = typed::FeederName{"Main", "SP"};
    fed.panels.push_back(loft);
    fed.panels[0].main = 100_A;
    REQUIRE(says("load-service", fed, edition).empty()); // the service has its 100 A, a feeder may be less
}

TEST_CASE("load-service: the least of main, source and feeder, each panel by itself", "[check][load]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2021", "NEC 2020");
    auto made = home(60, {load("FU", "furnace", 14000_VA), load("WH", "water heater", 3000_VA)}, 200_A);
    REQUIRE(says("load-service", made, code).empty());
    made.panels[0].supply->amps = 60_A;
    auto const f = found("load-service", made, code);
    REQUIRE(in_short(f) == "error Main");
    REQUIRE_THAT(f[0].message, Contains("the supply of 60 A"));
    // A generator for the days when the grid is gone is not what the service is judged by.
    made.panels[0].supply.reset();
    made.panels[0].supplies = {"Generator", "Grid"};
    typed::Supply generator, grid;
    generator.name = "Generator", generator.amps = 30_A;
    grid.name = "Grid", grid.amps = 200_A;
    made.supplies = {generator, grid};
    REQUIRE(says("load-service", made, code).empty());
    // All of it behind a feeder.
    for (typed::Circuit& c : made.circuits) c.panel = "Loft";
    made.circuits.push_back(two_pole("SP").use("feeder").breaker(60_A));
    typed::Panel loft;
    loft.name = "Loft", loft.spaces = 24, loft.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(loft);
    auto const at_feeder = found("load-service", made, code);
    REQUIRE(in_short(at_feeder) == "error Loft");
    REQUIRE_THAT(at_feeder[0].message, Contains("the feeder SP of 60 A"));
}

TEST_CASE("load-service: another building is all that is listed at once, and a note", "[check][load]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2018", "CE 2021", "CE 2024", "NEC 2017", "NEC 2020", "NEC 2023");
    auto made = job({two_pole("M1").use("appliance").load(13000_VA), two_pole("M2").use("appliance").load(12000_VA)});
    made.circuits[0].continuous = made.circuits[1].continuous = false;
    made.panels[0].main = 100_A;
    auto const f = found("load-service", made, code);
    REQUIRE(in_short(f) == "note Main"); // 25 000 VA, 104 A
    REQUIRE_THAT(f[0].message, Contains("All of it at once"));
    REQUIRE_THAT(f[0].fix, Contains("Name what does run together"));
    typed::Situation day;
    day.name = "Any day";
    made.situations = {day};
    REQUIRE_THAT(found("load-service", made, code).at(0).fix, Contains("panel-main-overloaded"));
    made.circuits[0].load = 12000_VA; // 24 000 VA, 100 A
    REQUIRE(says("load-service", made, code).empty());
}

TEST_CASE("load-service: nothing is said of what is not known, but that it is too much already", "[check][load]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2024", "NEC 2023");
    auto made = home(100, {load("FU", "furnace", 10000_VA), load("XX", "range", 0_VA)}, 100_A);
    made.circuits[1].load.reset();
    REQUIRE(says("load-service", made, code).empty());
    made.circuits[0].load = 40000_VA;
    auto const f = found("load-service", made, code);
    REQUIRE(in_short(f) == "error Main");
    REQUIRE_THAT(f[0].message, Contains("at least"));
    made.panels[0].main.reset(); // no rating, no verdict
    REQUIRE(says("load-service", made, code).empty());
}

TEST_CASE("load-service: of a DC panel, or of one without circuits, nothing is asked", "[check][load]") {
    REQUIRE(says("load-service", job({one_pole("L1").load(9000_VA)}, SupplyKind::dc_12)).empty());
    REQUIRE(says("load-service", home(90, {}, 30_A), "CE 2024").empty());
}
