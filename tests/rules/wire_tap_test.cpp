// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Taps to cooking appliances, and the feeder of a whole dwelling in sheathed cable, both under wire-breaker-fits.
// Source: NEC 210.19(A)(3) Exception No. 1 (2023: 210.19(C)): taps of 20 A or more from a circuit of 50 A; 310.12
// (2017: 310.15(B)(7)) against 334.80, argued on trade forums; CE 26-746(3).
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Segment piece(std::string kind, std::string to, std::int64_t mm = 2000) {
    return {std::move(kind), from_mm(mm), std::move(to)};
}
Make cooking(Amps breaker, std::string tap, std::string use = "cooktop") {
    return two_pole("CK", 1).use(std::move(use)).breaker(breaker).load(7000_VA).with([&](typed::Circuit& c) {
        c.run = {piece("6/3", "Oven box", 9000), piece(std::move(tap), "Cooktop")};
        c.run[1].tap = true;
    });
}
std::string fits(typed::Circuit c, std::string_view edition) {
    return says("wire-breaker-fits", job({std::move(c)}), edition);
}

typed::Job whole_dwelling(std::string kind, Wiring wiring = Wiring::cable) {
    auto made = job({two_pole("SP", 1).breaker(100_A).cable(std::move(kind)).use("feeder")});
    made.dwelling = typed::Dwelling{};
    made.circuits[0].terminals = 75;
    made.circuits[0].wiring = wiring;
    typed::Panel sub;
    sub.name = "Sub";
    sub.spaces = 24;
    sub.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(sub);
    made.circuits.push_back(one_pole("L1", 1).in("Sub"));
    return made;
}
} // namespace

TEST_CASE("wire-breaker-fits: a lawful tap to a cooking appliance stands", "[check][wire]") {
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        CAPTURE(edition);
        CHECK(fits(cooking(50_A, "12/3"), edition).empty());
        CHECK(fits(cooking(50_A, "14/3"), edition) == "error CK");          // 15 A: less than 20 A
        CHECK(fits(cooking(60_A, "10/3"), edition) == "error CK");          // a circuit above 50 A
        CHECK(fits(cooking(50_A, "12/3", "dryer"), edition) == "error CK"); // no cooking appliance
    }
    auto untold = cooking(50_A, "12/3");
    untold.c.run[1].tap = false;
    CHECK(fits(untold, "NEC 2023") == "error CK");
}

TEST_CASE("wire-breaker-fits: a tap that the wording leaves open is asked about", "[check][wire]") {
    CHECK(fits(cooking(40_A, "12/3"), "NEC 2017") == "warning CK"); // "from a 50-ampere circuit"
    CHECK(fits(cooking(40_A, "12/3"), "NEC 2020").empty());
    auto far = cooking(50_A, "12/3");
    far.c.run[1].length = from_mm(9000);
    CHECK(fits(far, "NEC 2023") == "warning CK");
    CHECK(fits(cooking(50_A, "12/3"), "CE 2021") == "warning CK"); // its size was not read
    CHECK(fits(cooking(50_A, "6/3"), "CE 2021").empty());
}

TEST_CASE("wire-load-fits: a tap need not carry what the circuit does", "[check][wire]") {
    CHECK(says("wire-load-fits", job({cooking(50_A, "12/3")}), "NEC 2023").empty());
}

TEST_CASE("wire-breaker-fits: sheathed cable as a whole dwelling's feeder is a warning that names both sections",
          "[check][wire]") {
    for (auto const& [edition, sections] :
         {std::pair{"NEC 2017", "310.15(B)(7), 334.80"}, std::pair{"NEC 2020", "310.12, 334.80"},
          std::pair{"NEC 2023", "310.12, 334.80"}}) {
        CAPTURE(edition);
        auto const all = found("wire-breaker-fits", whole_dwelling("4/3"), edition);
        REQUIRE(in_short(all) == "warning SP");
        CHECK(all[0].reference.section == sections);
        CHECK(all[0].message.find("60 °C") != std::string::npos);
        CHECK(says("wire-breaker-fits", whole_dwelling("4/3", Wiring::conduit), edition).empty());
        CHECK(says("wire-breaker-fits", whole_dwelling("6/3"), edition) == "error SP"); // less than the table asks
        CHECK(says("wire-breaker-fits", whole_dwelling("2/3"), edition).empty());       // 95 A: the next size is 100 A
    }
}
