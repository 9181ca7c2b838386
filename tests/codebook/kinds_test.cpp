// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"

#include "catch.h"

#include <set>

using namespace legwork;

TEST_CASE("building cable: gauge, conductors, colours", "[codebook]") {
    // Source: common practice, no source (black and white; black, red, white; a fourth is blue).
    auto const two = cable_kind("12/2");
    REQUIRE(two);
    REQUIRE(two->gauge == Gauge::awg12);
    REQUIRE(names(two->colors) == std::vector<std::string>{"black", "white"});
    REQUIRE(two->ground);
    REQUIRE(two->power);
    REQUIRE(two->jacket == "yellow");
    REQUIRE(names(cable_kind("14/3")->colors) == std::vector<std::string>{"black", "red", "white"});
    REQUIRE(names(cable_kind("14/4")->colors) == std::vector<std::string>{"black", "red", "blue", "white"});
    auto const large = cable_kind("1/0/3"); // splits at the last "/"
    REQUIRE(large);
    REQUIRE(large->gauge == Gauge::awg1_0);
    REQUIRE(large->insulated == 3);
    REQUIRE(cable_kind("1/3")->gauge == Gauge::awg1);
    REQUIRE(cable_kind("4/0/4")->gauge == Gauge::awg4_0);
    for (auto const* gauge : {"14", "12", "10", "8", "6", "4", "3", "2", "1", "1/0", "2/0", "3/0", "4/0"})
        for (char const n : {'2', '3', '4'}) {
            auto const kind = cable_kind(std::string(gauge) + "/" + n);
            REQUIRE(kind);
            REQUIRE(static_cast<int>(kind->colors.size()) == kind->insulated);
        }
}

TEST_CASE("a building cable may say its type", "[codebook]") {
    // Source: common practice, no source: the sheath of UF is grey, armour has none.
    auto const wet = cable_kind("12/3 UF");
    REQUIRE(wet);
    REQUIRE(wet->type == CableType::uf);
    REQUIRE(wet->insulated == 3);
    REQUIRE(wet->power);
    REQUIRE(wet->jacket == "grey");
    REQUIRE(cable_kind("12/3")->type == CableType::indoor);
    REQUIRE(cable_kind("1/0/3 TECK")->type == CableType::teck);
    REQUIRE(cable_kind("14/2 AC")->jacket.empty());
    REQUIRE(cable_kind_named("10/2 NMWU")->name == "10/2 NMWU");
    for (auto const* name : {"12/3UF", "12/3  UF", "12/3 uf", "UF", " UF", "12/3 UF ", "cat6 UF", "18/2 UF"})
        REQUIRE_FALSE(cable_kind(name));
}

TEST_CASE("what is no cable kind", "[codebook]") {
    for (auto const* name : {"", "/", "12", "12/", "12/1", "12/5", "12/22", "16/2", "13/2", "1/0", "5/2", "12/2 ",
                             "12-2", "cat7", "1/0/", "/3"})
        REQUIRE_FALSE(cable_kind(name));
}

TEST_CASE("named kinds carry no AC power", "[codebook]") {
    std::set<std::string> seen;
    for (auto const& name : named_cable_kinds()) {
        auto const kind = cable_kind(name);
        REQUIRE(kind);
        REQUIRE(seen.insert(name).second);
        REQUIRE_FALSE(kind->power);
        REQUIRE(static_cast<int>(kind->colors.size()) == kind->insulated);
    }
    for (auto const* name : {"cat5e", "cat6", "coax", "18/2 lighting strip", "18/5 thermostat"})
        REQUIRE(seen.count(name) == 1);
    REQUIRE(cable_kind("cat6")->insulated == 8);
    REQUIRE(cable_kind("18/5 thermostat")->insulated == 5);
}

TEST_CASE("receptacles agree with the letters of their names", "[codebook]") {
    // Source: NEMA WD 6: the first number is the configuration (5: 125 V, 6: 250 V without neutral, 10 and 14: 125/250
    // V, 10 without ground), the second the amperes, L is locking.
    std::set<std::string_view> seen;
    for (Receptacle const& r : receptacles()) {
        CAPTURE(r.name);
        REQUIRE(seen.insert(r.name).second);
        REQUIRE(receptacle_named(r.name) == &r);
        REQUIRE(r.name.find("-" + std::to_string(r.amps) + "R") != std::string_view::npos);
        REQUIRE(r.locking == (r.name.starts_with("L") || r.name.starts_with("SS")));
        auto const family = r.name.substr(r.locking && r.name[0] == 'L' ? 1 : 0);
        if (family.starts_with("5-")) REQUIRE((r.hots == 1 && r.neutral && r.ground));
        if (family.starts_with("6-")) REQUIRE((r.hots == 2 && !r.neutral && r.ground));
        if (family.starts_with("10-")) REQUIRE((r.hots == 2 && r.neutral && !r.ground));
        if (family.starts_with("14-")) REQUIRE((r.hots == 2 && r.neutral && r.ground));
        REQUIRE((r.hots == 2) == (r.volts == 250));
    }
    REQUIRE(receptacle_named("TT-30R")->never_two_pole);
    REQUIRE(receptacle_named("5-20") == nullptr);
    REQUIRE(receptacle_names().size() == receptacles().size());
}

TEST_CASE("the uses that a job file may name", "[codebook]") {
    for (auto const* name : {"receptacles",
                             "lighting",
                             "kitchen counter",
                             "refrigerator",
                             "dishwasher",
                             "disposer",
                             "microwave",
                             "range",
                             "cooktop",
                             "oven",
                             "laundry",
                             "dryer",
                             "bathroom",
                             "bath fan",
                             "outdoor",
                             "garage",
                             "workshop",
                             "well pump",
                             "sump pump",
                             "water heater",
                             "tankless water heater",
                             "furnace",
                             "boiler",
                             "heat pump",
                             "backup heat",
                             "air conditioner",
                             "baseboard",
                             "heating",
                             "floor heating",
                             "vehicle charger",
                             "hot tub",
                             "welder",
                             "door opener",
                             "gate operator",
                             "pump",
                             "outdoor pump",
                             "attic fan",
                             "heat pump water heater",
                             "air handler",
                             "pool pump",
                             "pool heater",
                             "hydromassage tub",
                             "sauna",
                             "kiln",
                             "electric fireplace",
                             "battery charger",
                             "appliance",
                             "freezer",
                             "smoke alarms",
                             "network",
                             "power supply",
                             "generator inlet",
                             "solar",
                             "battery",
                             "surge protector",
                             "feeder",
                             "main",
                             "spare"})
        REQUIRE(use_named(name));
    REQUIRE(use_names().size() == uses().size());
    for (Use const& u : uses()) {
        CAPTURE(u.name);
        REQUIRE_FALSE((u.continuous && u.intermittent));
        REQUIRE_FALSE((u.heating && !u.continuous)); // heating is continuous by use
        REQUIRE_FALSE((u.cooking && u.continuous));
        REQUIRE_FALSE((u.poles == Poles::one && (u.uses_neutral_at_240 || u.may_use_neutral_at_240)));
    }
    REQUIRE(use_named("Range") == nullptr);
}
