// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Solar and battery on the bus. Sources: NEC 705.12 as trade pages tell it: 125 % of the output and the main within
// 120 % of the bus, at opposite ends; worked example: bus 200 A, main 200 A leave 40 A, an inverter of 32 A. CE 64-112
// from memory: the breakers' ratings, 120 %, in a dwelling 125 %.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Circuit solar(std::string mark, int space, Amps breaker = 40_A) {
    return two_pole(std::move(mark), space).use("solar").breaker(breaker).with([](typed::Circuit& c) {
        c.fixed = true;
    });
}

// A panel of 24 spaces with the main at the top: spaces 21+23 and 22+24 are at the far end.
typed::Job fed(std::vector<typed::Circuit> circuits, int bus, int main, int output) {
    auto made = job(std::move(circuits));
    typed::Panel& p = made.panels[0];
    p.main_at = PanelEnd::top;
    p.bus = p.main = p.output = std::nullopt;
    if (bus) p.bus = Amps{bus * 1000};
    if (main) p.main = Amps{main * 1000};
    if (output) p.output = Amps{output * 1000};
    return made;
}
constexpr auto kRule = "panel-backfeed";
} // namespace

TEST_CASE("panel-backfeed: the worked example, either side of the limit", "[check][panel]") {
    auto const [edition, section] = GENERATE(table<std::string, std::string>(
        {{"NEC 2017", "705.12(B)(2)(3)(b)"}, {"NEC 2020", "705.12(B)(3)(2)"}, {"NEC 2023", "705.12(B)(2)"}}));
    CAPTURE(edition);
    REQUIRE(says(kRule, fed({solar("SO", 21)}, 200, 200, 32), edition).empty());
    auto const over = found(kRule, fed({solar("SO", 21)}, 200, 200, 33), edition);
    REQUIRE(in_short(over) == "error SO");
    REQUIRE(over[0].reference.section == section);
    REQUIRE_THAT(over[0].message, Contains("33 A") && Contains("41.25 A") && Contains("241.25 A") && Contains("240 A"));
    REQUIRE_THAT(over[0].fix, Contains("an output of 32 A"));
    // Old work heats the bus as new work does.
    REQUIRE(says(kRule, fed({made::Make{solar("SO", 21)}.old()}, 200, 200, 33), edition) == "error SO");
}

TEST_CASE("panel-backfeed: at the end away from the main, and fixed there", "[check][panel]") {
    for (int const space : {21, 22}) REQUIRE(says(kRule, fed({solar("SO", space)}, 200, 200, 32)).empty());
    for (int const space : {1, 2, 19, 20}) {
        auto const f = found(kRule, fed({solar("SO", space)}, 200, 200, 32));
        REQUIRE(in_short(f) == "error SO");
        REQUIRE_THAT(f[0].fix, Contains("Move it so that it takes space 23 or 24") && !Contains("fixed"));
    }
    auto bottom = fed({solar("SO", 1)}, 200, 200, 32);
    bottom.panels[0].main_at = PanelEnd::bottom;
    REQUIRE(says(kRule, bottom).empty());
    bottom.panels[0].first = Corner::bottom_left; // space 1 beside the main
    REQUIRE(says(kRule, bottom) == "error SO");
    auto loose = fed({solar("SO", 21)}, 200, 200, 32);
    loose.circuits[0].fixed = false;
    REQUIRE(says(kRule, loose) == "error SO");
    REQUIRE_THAT(found(kRule, loose)[0].message, Contains("a balance may move it"));
    // An odd number of spaces: the shorter column ends at 22.
    auto odd = fed({solar("SO", 20)}, 200, 200, 32);
    odd.panels[0].spaces = 23;
    REQUIRE(says(kRule, odd).empty());
    // Spaces that stay empty for good, and a second source, may lie behind it.
    auto blocked = fed({solar("SO", 19)}, 200, 200, 32);
    blocked.panels[0].blocked = {23};
    blocked.panels[0].spaces = 24;
    REQUIRE(says(kRule, blocked).empty());
    REQUIRE(says(kRule, fed({solar("SO", 21), solar("BT", 17)}, 200, 200, 30)).empty());
    REQUIRE(says(kRule, fed({solar("SO", 21), solar("BT", 15)}, 200, 200, 30)) == "error BT"); // 19 lies between
    REQUIRE(says(kRule, fed({solar("SO", 21), solar("BT", 22)}, 200, 200, 30)).empty());
    REQUIRE(says(kRule, fed({solar("SO", 21), solar("BT", 1)}, 200, 100, 30)).empty()); // within the bus
}

TEST_CASE("panel-backfeed: within the bus it may stand anywhere and move", "[check][panel]") {
    // Source: the first of the choices of NEC 705.12: 125 % of the output and the main within 100 % of the bus.
    auto anywhere = fed({solar("SO", 1)}, 125, 100, 20);
    anywhere.circuits[0].fixed = false;
    anywhere.panels[0].main_at.reset();
    REQUIRE(says(kRule, anywhere).empty());
    REQUIRE(says(kRule, fed({solar("SO", 1)}, 125, 100, 21)) == "error SO");
}

TEST_CASE("panel-backfeed: all breakers within the bus are offered, not presumed", "[check][panel]") {
    // Source, from memory: NEC 705.12 takes a sum of all breakers but the main within the bus, with a sign.
    auto const offered = [](typed::Circuit c, std::string const& edition = "NEC 2023") {
        auto const pair = std::vector<typed::Circuit>{solar("SO", 1, 60_A), std::move(c),
                                                      one_pole("A", 5).pair("K", Tie::two_pole_breaker),
                                                      one_pole("B", 7).pair("K", Tie::two_pole_breaker)};
        auto const f = found(kRule, fed(pair, 100, 100, 48), edition);
        REQUIRE(f.size() == 1);
        return f[0].fix.find("[[accept]]") != std::string::npos;
    };
    REQUIRE(offered(one_pole("C", 8))); // 60 + 20 A, and one breaker of 20 A for the pair
    REQUIRE_FALSE(offered(one_pole("C", 8).breaker(25_A)));
    REQUIRE_FALSE(offered(one_pole("C", 8).with([](typed::Circuit& c) { c.breaker.reset(); })));
    REQUIRE(offered(two_pole("MN", 9).use("main").breaker(100_A))); // the main is not counted
    REQUIRE_FALSE(offered(one_pole("C", 8), "CE 2024"));
}

TEST_CASE("panel-backfeed: what is not known is a warning that says what to read", "[check][panel]") {
    auto const no_bus = found(kRule, fed({solar("SO", 1)}, 0, 100, 32));
    REQUIRE(in_short(no_bus) == "warning SO");
    REQUIRE_THAT(no_bus[0].message, Contains("bus") && Contains("does not stand at the end away from the main"));
    REQUIRE_THAT(no_bus[0].fix, Contains("label in the panel's door"));
    REQUIRE(says(kRule, fed({solar("SO", 21)}, 200, 0, 32)) == "warning SO");
    // The breaker that carries the output is at least 125 % of it: when it fits, the output does.
    REQUIRE(says(kRule, fed({solar("SO", 21, 40_A)}, 200, 200, 0)).empty());
    auto const output = found(kRule, fed({solar("SO", 21, 50_A)}, 200, 200, 0));
    REQUIRE(in_short(output) == "warning SO");
    REQUIRE_THAT(output[0].fix, Contains("nameplate") && Contains("an output of 32 A"));
    // Whatever it gives, it is more than a bus the main alone may fill.
    REQUIRE(says(kRule, fed({solar("SO", 1, 40_A)}, 200, 200, 0)) == "error SO");
    REQUIRE(says(kRule, fed({solar("SO", 1, 40_A)}, 200, 175, 0)) == "warning SO");
    REQUIRE(says(kRule, fed({solar("SO", 21, 40_A)}, 100, 125, 0)) == "error SO");
    auto no_end = fed({solar("SO", 21)}, 200, 200, 32);
    no_end.panels[0].main_at.reset();
    REQUIRE(says(kRule, no_end) == "warning SO");
    REQUIRE_THAT(found(kRule, no_end)[0].fix, Contains("`main_at`"));
    no_end.circuits.push_back(two_pole("MN", 1).use("main").breaker(200_A)); // a main among the spaces says it too
    REQUIRE(says(kRule, no_end).empty());
}

TEST_CASE("panel-backfeed: CE counts the breakers, and warns", "[check][panel]") {
    auto const edition = GENERATE("CE 2018", "CE 2021", "CE 2024");
    REQUIRE(says(kRule, fed({solar("SO", 21, 40_A)}, 200, 200, 0), edition).empty());
    REQUIRE(says(kRule, fed({solar("SO", 21, 50_A)}, 200, 200, 20), edition) == "warning SO");
    auto dwelling = fed({solar("SO", 21, 50_A)}, 200, 200, 0);
    dwelling.dwelling = typed::Dwelling{};
    REQUIRE(says(kRule, dwelling, edition).empty());
    dwelling.circuits[0].breaker = 60_A;
    REQUIRE(says(kRule, dwelling, edition) == "warning SO");
    REQUIRE_THAT(found(kRule, dwelling, edition)[0].fix, Contains("source breakers of 50 A"));
    REQUIRE(says(kRule, fed({solar("SO", 1, 40_A)}, 200, 200, 0), edition) == "warning SO");
    dwelling.circuits[0].breaker.reset();
    REQUIRE_THAT(found(kRule, dwelling, edition).at(0).fix, Contains("source's breaker"));
}

TEST_CASE("panel-backfeed: only what runs beside the main", "[check][panel]") {
    // An interlocked inlet feeds the bus alone; a charge controller on direct current has no main to run beside.
    REQUIRE(says(kRule, fed({two_pole("GI", 1).use("generator inlet").breaker(50_A)}, 100, 100, 0)).empty());
    REQUIRE(says(kRule, fed({two_pole("WH", 1).use("water heater")}, 100, 100, 40)).empty());
    REQUIRE(says(kRule, fed({made::Make{solar("BT", 1)}.use("battery")}, 200, 200, 32)) == "error BT");
    auto dc = job({one_pole("SO", 1).use("solar")}, SupplyKind::dc_12);
    REQUIRE(says(kRule, dc).empty());
}

TEST_CASE("panel-backfeed: through a feeder it reaches the panel above", "[check][panel]") {
    auto made = fed({two_pole("SP", 1).use("feeder").breaker(60_A), solar("SO", 21)}, 200, 200, 0);
    made.circuits[1].panel = "Shed";
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supply.reset();
    shed.feeder = typed::FeederName{"Main", "SP"};
    shed.bus = 125_A;
    shed.main.reset(); // lugs: the feeder's breaker is its main
    shed.output = 32_A;
    made.panels.push_back(shed);
    auto const f = found(kRule, made);
    REQUIRE(in_short(f) == "warning SP"); // 200 + 40 A on 200 A, and the feeder stands beside the main
    REQUIRE_THAT(f[0].message, Contains("space") && Contains("240 A"));
    made.circuits[0].space = Spot{22, 0};
    made.circuits[0].fixed = true;
    REQUIRE(says(kRule, made).empty());
    made.panels[1].output = 48_A; // 60 + 60 A on the shed's bus of 125 A, 200 + 60 A above
    REQUIRE(says(kRule, made) == "warning SP");
    made.panels[1].bus = 90_A;
    REQUIRE(says(kRule, made) == "warning SP; error SO");
}
