// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Arc-fault protection. Sources: NEC 210.12(A) 2017 and 2020, 210.12(B) 2023 (rooms, 15 A and 20 A, 10 A from 2023), CE
// 26-656 and 26-658 (every receptacle circuit up to 20 A of a dwelling save kitchen counter, refrigerator, bathroom
// basin, sump pump): trade pages on these editions. CE garages: from memory, a warning at most.
#include "job/job.h"
#include "protection_jobs.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto kRule = "afci-needed";
} // namespace

TEST_CASE("afci-needed: by place and use, NEC 2017, 2020, 2023 and CE 2018, 2021, 2024", "[check][afci]") {
    auto const [use, room, in_nec, in_ce] = GENERATE(table<std::string, std::string, std::string, std::string>({
        {"receptacles", "Bedroom", "EEE", "EEE"},
        {"receptacles", "Living room", "EEE", "EEE"},
        {"receptacles", "Kitchen and dining", "EEE", "EEE"},
        {"lighting", "Bedroom", "EEE", "---"}, // CE: receptacle circuits
        {"lighting", "Hall", "EEE", "---"},
        {"lighting", "Stair", "---", "---"}, // NEC lists halls, not stairs
        {"receptacles", "Closet", "EEE", "EEE"},
        {"kitchen counter", "Kitchen", "EEE", "---"},
        {"refrigerator", "", "EEE", "---"},
        {"microwave", "", "EEE", "EEE"},
        {"dishwasher", "", "EEE", "---"},
        {"laundry", "", "EEE", "EEE"},
        {"bathroom", "", "---", "---"},
        {"lighting", "Bathroom", "---", "---"},
        {"receptacles", "Hall and bathroom", "EEE", "EEE"},
        {"garage", "", "---", "WWW"},
        {"outdoor", "", "---", "---"},
        {"receptacles", "Dock", "---", "---"},
        {"receptacles", "Attic", "---", "WWW"},
        {"receptacles", "Unfinished basement", "---", "EEE"},
        {"receptacles", "Basement", "WWW", "EEE"}, // finished or not
        {"receptacles", "Crawl space", "---", "WWW"},
        {"receptacles", "Loft", "WWW", "EEE"},
        {"sump pump", "Unfinished basement", "---", "---"},
        {"furnace", "Hall closet", "WWW", "---"},
        {"furnace", "Furnace room", "---", "---"},
        {"receptacles", "", "WWW", "WWW"}, // nothing tells where
        {"lighting", "", "WWW", "---"},
        {"smoke alarms", "", "WWW", "---"},
        {"network", "", "---", "---"},
        {"spare", "", "---", "---"},
        {"receptacles", "Finished basement", "EEE", "EEE"},
        {"receptacles", "Wet bar", "WWW", "WWW"}, // in which room is not told
        {"receptacles", "Kitchen island", "EEE", "---"},
        {"receptacles", "Kitchen island and counter", "EEE", "---"},
        {"receptacles", "Kitchen and island", "EEE", "EEE"},
        {"bathroom", "Bathroom and hall", "EEE", "EEE"}, // 26-658: no other receptacle on the circuit
        {"kitchen counter", "Kitchen counter and dining", "EEE", "EEE"},
        {"kitchen counter", "Main room", "EEE", "---"},
        {"refrigerator", "Garage", "---", "---"},
    }));
    CAPTURE(use, room);
    REQUIRE(nec(kRule, at(use, room)) == in_nec);
    REQUIRE(ce(kRule, at(use, room)) == in_ce);
    REQUIRE(nec(kRule, at(use, room).afci(Protection::breaker)) == "---");
    REQUIRE(ce(kRule, at(use, room).afci(Protection::outlet)) == "---");
}

TEST_CASE("afci-needed: of several things in a name each is judged", "[check][afci]") {
    auto const both = one_pole("K1").called("Lights and plugs, bedroom").use("lighting");
    REQUIRE(ce(kRule, both) == "EEE"); // CE asks it of receptacles
    REQUIRE(ce(kRule, Make(both).called("Lights, bedroom")) == "---");
    REQUIRE(ce(kRule, one_pole("K1").called("Fridge and kitchen outlets").use("refrigerator")) == "EEE");
    REQUIRE(nec(kRule, one_pole("K1").called("Upstairs bathroom receptacles").use("bathroom")) == "---");
}

TEST_CASE("afci-needed: only in a dwelling, a warning on existing work", "[check][afci]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(letter(kRule, job({at("receptacles", "Bedroom")}), edition) == "-");
        REQUIRE(letter(kRule, at("receptacles", "Bedroom").old(), edition) == "W");
    }
}

TEST_CASE("afci-needed: breakers in scope", "[check][afci]") {
    REQUIRE(nec(kRule, at("receptacles", "Bedroom").breaker(15_A)) == "EEE");
    REQUIRE(nec(kRule, at("lighting", "Bedroom").breaker(10_A)) == "--E"); // 10 A circuits: from 2023
    REQUIRE(nec(kRule, at("receptacles", "Bedroom").breaker(30_A)) == "---");
    REQUIRE(ce(kRule, at("receptacles", "Bedroom", {"TT-30R"}).breaker(30_A)) == "---");
    REQUIRE(nec(kRule, at_240("heating", "Bedroom").breaker(20_A)) == "---"); // 120 V circuits
    REQUIRE(ce(kRule, at_240("receptacles", "Bedroom", {"6-20R"}).breaker(20_A)) == "---");
    auto const not_known = at("receptacles", "Bedroom").with([](typed::Circuit& c) { c.breaker.reset(); });
    REQUIRE(nec(kRule, not_known) == "WWW");
    REQUIRE(ce(kRule, not_known) == "WWW");
}

TEST_CASE("afci-needed: message and fix, a pair once", "[check][afci]") {
    auto const f = found(kRule, home({at("receptacles", "Bedroom").afci(Protection::no)}), "NEC 2023").at(0);
    REQUIRE_THAT(f.message, Contains("bedroom") && Contains("NEC 2023 210.12(B)") && Contains("afci = false"));
    REQUIRE_THAT(f.fix, Contains("AFCI breaker"));
    auto const pair = home({one_pole("R1").use("receptacles").called("", "Bedroom").pair("R", Tie::handle_tie),
                            one_pole("R2").use("receptacles").called("", "Bedroom").pair("R", Tie::handle_tie)});
    for (auto const& edition : editions()) REQUIRE(says(kRule, pair, edition) == "error R1 R2");
    REQUIRE_THAT(found(kRule, pair).at(0).fix, Contains("one two-pole AFCI breaker for R1 and R2"));
}

TEST_CASE("afci-needed: a house full of old circuits is told in one warning a panel", "[check][afci]") {
    auto const old = [](std::string mark, std::string room) {
        return one_pole(std::move(mark)).use("receptacles").called("Receptacles", std::move(room)).old();
    };
    auto rooms = home({old("R1", "Bedroom"), old("R2", "Living room"), old("R3", "Hall"),
                       one_pole("R4").use("receptacles").called("", "Den")});
    REQUIRE(says(kRule, rooms) == "warning R1 R2 R3; error R4");
    auto const told = found(kRule, rooms);
    REQUIRE_THAT(told[0].message, Contains("R1 (bedroom)") && Contains("there before"));
    rooms.circuits.erase(rooms.circuits.begin());
    REQUIRE(says(kRule, rooms) == "warning R2; warning R3; error R4"); // two are told apart, with what to fit
}
