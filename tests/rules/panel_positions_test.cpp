// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Positions in the panel of a dwelling. Source: CE 8-108 as read in Quebec's print of the 2015 text: 16 to 60 A, 24 to
// 100 A, 30 to 125 A, 40 above; with central electric heating 16, 24, 24, 30; two left free; taken to stand in 2018. CE
// 2021 and 2024 8-108 as three persons' notes tell it: four spare spaces in a single dwelling, with room for a two-pole
// device, when the panel is fitted; two in each unit of an apartment building.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto kRule = "panel-spare-spaces";
constexpr auto kOld = "CE 2018"; // of which 8-108 was not seen, so all is a warning

typed::Job home(int spaces, Amps main, std::vector<typed::Circuit> circuits = {}) {
    auto made = job(std::move(circuits));
    made.dwelling = typed::Dwelling{};
    made.panels[0].spaces = spaces;
    made.panels[0].main = main;
    return made;
}

std::vector<typed::Circuit> filled(int to) {
    std::vector<typed::Circuit> all;
    for (int s = 1; s <= to; ++s) all.push_back(one_pole("C" + std::to_string(s), s));
    return all;
}
} // namespace

TEST_CASE("panel-spare-spaces: the least number for the service", "[check][panel]") {
    auto const edition = kOld;
    auto const [service, positions] = GENERATE(table<Amps, int>(
        {{40_A, 16}, {60_A, 16}, {70_A, 24}, {100_A, 24}, {125_A, 30}, {150_A, 40}, {200_A, 40}, {225_A, 40}}));
    CAPTURE(edition, service.count, positions);
    REQUIRE(says(kRule, home(positions, service), edition).empty());
    auto const few = found(kRule, home(positions - 2, service), edition);
    REQUIRE(in_short(few) == "warning Main");
    REQUIRE(few[0].reference.section == "8-108(1)");
    REQUIRE_THAT(few[0].message, Contains(std::to_string(positions)));
}

TEST_CASE("panel-spare-spaces: central electric heating asks for fewer", "[check][panel]") {
    auto const furnace = std::vector<typed::Circuit>{two_pole("FU", 1).use("furnace")};
    auto const [service, positions] = GENERATE(table<Amps, int>({{60_A, 16}, {100_A, 24}, {125_A, 24}, {200_A, 30}}));
    REQUIRE(says(kRule, home(positions, service, furnace), kOld).empty());
    REQUIRE(says(kRule, home(positions - 2, service, furnace), kOld) == "warning Main");
    // The blower of a gas furnace heats nothing; a heat pump may heat one room or the whole dwelling.
    auto const blower = std::vector<typed::Circuit>{one_pole("FU", 1).use("furnace")};
    REQUIRE(says(kRule, home(30, 200_A, blower), kOld) == "warning Main");
    auto const pump = std::vector<typed::Circuit>{two_pole("HP", 1).use("heat pump")};
    REQUIRE(says(kRule, home(30, 200_A, pump), kOld) == "warning Main");
    REQUIRE(says(kRule, home(28, 200_A, pump), kOld) == "warning Main");
    REQUIRE(says(kRule, home(40, 200_A, pump), kOld).empty());
}

TEST_CASE("panel-spare-spaces: two left free", "[check][panel]") {
    REQUIRE(says(kRule, home(16, 60_A, filled(14)), kOld).empty());
    auto const full = found(kRule, home(16, 60_A, filled(15)), kOld);
    REQUIRE(in_short(full) == "warning Main");
    REQUIRE(full[0].reference.section == "8-108(2)");
    REQUIRE_THAT(full[0].message, Contains("1 position left"));
    REQUIRE(says(kRule, home(16, 60_A, filled(16)), kOld) == "warning Main");
    REQUIRE(says(kRule, home(14, 60_A, filled(14)), kOld) == "warning Main"); // one fault, told once
    auto spare = filled(16);
    for (auto const i : {14U, 15U}) spare[i].use = "spare", spare[i].run.clear(); // a breaker, and no wire on it
    REQUIRE(says(kRule, home(16, 60_A, spare), kOld).empty());
}

TEST_CASE("panel-spare-spaces: halves, blocked and dead spaces, the label, a main", "[check][panel]") {
    auto const with = [](auto change) {
        auto made = home(16, 60_A);
        change(made.panels[0]);
        return says(kRule, made, kOld);
    };
    REQUIRE(with([](typed::Panel& p) { p.spaces = 14, p.tandem = {13, 14}; }).empty());
    REQUIRE(with([](typed::Panel& p) { p.spaces = 14, p.tandem = {13}; }) == "warning Main");
    REQUIRE(with([](typed::Panel& p) { p.blocked = {16}; }) == "warning Main");
    REQUIRE(with([](typed::Panel& p) { p.dead = {16}; }) == "warning Main");
    REQUIRE(with([](typed::Panel& p) { p.circuits_max = 15; }) == "warning Main");
    REQUIRE(with([](typed::Panel& p) { p.circuits_max = 16; }).empty());
    REQUIRE(says(kRule, home(18, 60_A, {two_pole("MN", 1).use("main")}), kOld).empty());
    REQUIRE(says(kRule, home(16, 60_A, {two_pole("MN", 1).use("main")}), kOld) == "warning Main");
    // A full-size breaker on a space for halves takes both, a half one.
    auto tandem = home(16, 60_A, filled(16));
    tandem.panels[0].tandem = {15, 16};
    REQUIRE(says(kRule, tandem, kOld) == "warning Main");
    for (std::size_t const i : {14u, 15u}) tandem.circuits[i].space->half = 'a';
    REQUIRE(says(kRule, tandem, kOld).empty());
}

TEST_CASE("panel-spare-spaces: what is not known or not new is a warning at most", "[check][panel]") {
    auto old = home(12, 60_A);
    old.panels[0].existing = true;
    REQUIRE(says(kRule, old, kOld) == "warning Main");
    auto unknown = home(16, 60_A);
    unknown.panels[0].main.reset();
    REQUIRE(says(kRule, unknown, kOld).empty());
    unknown.panels[0].spaces = 14; // too few whatever the service
    REQUIRE(says(kRule, unknown, kOld) == "warning Main");
    unknown.panels[0].supply->kind = SupplyKind::bridged_120; // a cord: perhaps no service at all
    REQUIRE(says(kRule, unknown, kOld) == "warning Main");
    auto sub = home(12, 60_A, {two_pole("SP", 1).use("feeder"), one_pole("L1", 5)});
    auto loft = sub.panels[0];
    loft.name = "Loft";
    loft.supply.reset();
    loft.feeder = typed::FeederName{"Main", "SP"};
    sub.panels.push_back(loft);
    REQUIRE(says(kRule, sub, kOld) == "warning Main"); // 24 together
    sub.panels[1].building = "Boat house";
    REQUIRE(says(kRule, sub, kOld) == "warning Main");
}

TEST_CASE("panel-spare-spaces: behind a panel of feeders the dwelling's own is judged", "[check][panel]") {
    auto yard = home(8, 200_A, {two_pole("HO", 1).use("feeder"), two_pole("BA", 5).use("feeder")});
    for (auto const& [name, mark] : {std::pair{"House", "HO"}, {"Barn", "BA"}}) {
        auto fed = yard.panels[0];
        fed.name = name;
        fed.main = 100_A;
        fed.supply.reset();
        fed.feeder = typed::FeederName{"Main", mark};
        yard.panels.push_back(fed);
    }
    yard.panels[2].building = "Barn";
    yard.panels[1].spaces = 24;
    REQUIRE(says(kRule, yard, kOld).empty());
    yard.panels[1].spaces = 20;
    REQUIRE(says(kRule, yard, kOld) == "warning House");
    yard.panels[1].main.reset();
    yard.circuits[0].breaker = 60_A;
    REQUIRE(says(kRule, yard, kOld).empty());
}

TEST_CASE("panel-spare-spaces: dwellings under CE only", "[check][panel]") {
    auto shed = home(8, 60_A, filled(8));
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) REQUIRE(says(kRule, shed, edition).empty());
    shed.dwelling.reset();
    REQUIRE(says(kRule, shed, kOld).empty());
    shed.dwelling = typed::Dwelling{};
    shed.panels[0].building = "Garage";
    REQUIRE(says(kRule, shed, kOld).empty());
    shed.panels[0].building.clear();
    shed.panels[0].supply->kind = SupplyKind::dc_12;
    REQUIRE(says(kRule, shed, kOld).empty());
}

TEST_CASE("panel-spare-spaces: since 2021 four spaces, with room for a two-pole breaker", "[check][panel]") {
    auto const edition = GENERATE("CE 2021", "CE 2024");
    CAPTURE(edition);
    REQUIRE(says(kRule, home(16, 200_A, filled(12)), edition).empty()); // however few positions there are
    auto const three = found(kRule, home(16, 200_A, filled(13)), edition);
    REQUIRE(in_short(three) == "error Main");
    REQUIRE(three[0].reference.section == "8-108(1)");
    REQUIRE_THAT(three[0].message, Contains("3 spaces free") && Contains("4 at least"));
    REQUIRE(says(kRule, home(16, 200_A, filled(16)), edition) == "error Main");
    auto spare = filled(14);
    for (auto const i : {12U, 13U}) spare[i].use = "spare", spare[i].run.clear(); // a breaker, and no wire on it
    REQUIRE(says(kRule, home(16, 200_A, spare), edition).empty());
    // 1 and 9, 2 and 10 are free: none beside another.
    auto scattered = filled(16);
    std::erase_if(scattered, [](typed::Circuit const& c) {
        int const s = c.space->space;
        return s == 1 || s == 2 || s == 9 || s == 10;
    });
    auto const apart = found(kRule, home(16, 200_A, scattered), edition);
    REQUIRE(in_short(apart) == "warning Main");
    REQUIRE_THAT(apart[0].message, Contains("no two beside each other"));
    // Halves of spaces that take them: whether they count is not said.
    auto halves = home(16, 200_A, filled(14));
    halves.panels[0].tandem = {15, 16};
    REQUIRE(says(kRule, halves, edition) == "warning Main");
}

TEST_CASE("panel-spare-spaces: since 2021 when the panel is fitted, and two in a flat", "[check][panel]") {
    auto const edition = GENERATE("CE 2021", "CE 2024");
    CAPTURE(edition);
    auto old = home(16, 200_A, filled(16));
    old.panels[0].existing = true;
    REQUIRE(says(kRule, old, edition).empty());
    auto flat = home(16, 100_A, filled(14));
    flat.panels[0].supply->kind = SupplyKind::wye_120_208;
    REQUIRE(says(kRule, flat, edition).empty());
    flat.circuits = filled(15);
    auto const one = found(kRule, flat, edition);
    REQUIRE(in_short(one) == "error Main");
    REQUIRE(one[0].reference.section == "8-108(2)");
    auto shed = home(16, 100_A, filled(16));
    shed.panels[0].building = "Shed";
    REQUIRE(says(kRule, shed, edition).empty());
    shed.panels[0].building.clear();
    shed.dwelling.reset();
    REQUIRE(says(kRule, shed, edition).empty());
}
