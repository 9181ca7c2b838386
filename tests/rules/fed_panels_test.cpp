// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the rules say of a panel behind one that is not listed, and of a DC panel's power supply: that they meet the
// feeder and the circuit as any other.
#include "judged_file.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;

namespace {
std::string suite(std::string const& feeder) {
    return "[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"House\"\nlisted = false\nsupply = "
           "\"120/240\"\n[[panel]]\nname "
           "= \"Suite\"\nspaces = 12\nfeeder = \"House\"\n" +
           feeder +
           "[[circuit]]\nmark = \"R1\"\nname = \"Outlets, den\"\nbreaker = \"20 A\"\ncable = \"12/2\"\nlength = \"6 "
           "m\"\nload = \"1500 VA\"\n";
}

std::vector<Finding> of(std::string_view rule, std::string const& job) {
    auto const judged = made::judge(job);
    CAPTURE(judged.problems);
    REQUIRE(judged.problems.empty());
    std::vector<Finding> found;
    std::ranges::copy_if(judged.findings, std::back_inserter(found), [&](Finding const& f) { return f.rule == rule; });
    return found;
}

std::string const kGood = "feeder_breaker = \"50 A\"\nfeeder_cable = \"6/3\"\nfeeder_length = \"9 m\"\n";
} // namespace

TEST_CASE("unlisted: the neutral of the panel behind it is judged, and its feeder", "[check][panel][unlisted]") {
    REQUIRE(of("panel-sub-neutral", suite(kGood)).size() == 1);
    REQUIRE(of("panel-feeder-wires", suite(kGood)).empty());
    // Two hots and a ground bring no neutral.
    auto const wires =
        of("panel-feeder-wires", suite("feeder_breaker = \"50 A\"\nfeeder_cable = \"6/2\"\nfeeder_length = \"9 m\"\n"));
    REQUIRE(wires.size() == 1);
    // 12 AWG is good for 20 A.
    auto const breaker = of("wire-breaker-fits", suite("feeder_breaker = \"50 A\"\nfeeder_cable = \"12/3\"\n"));
    REQUIRE(breaker.size() == 1);
    REQUIRE(breaker[0].where.circuits == std::vector<std::string>{"FD"});
    REQUIRE(of("wire-breaker-fits", suite(kGood)).empty());
    // 1500 VA on one leg over 200 m of 6 AWG.
    auto const far = suite("feeder_breaker = \"50 A\"\nfeeder_cable = \"6/3\"\nfeeder_length = \"400 m\"\n");
    REQUIRE(of("wire-drop", far).size() == 1);
    REQUIRE(of("wire-drop", suite(kGood)).empty());
}

TEST_CASE("unlisted: no rule asks for a space or a name of the feeder", "[check][unlisted]") {
    auto const judged = made::judge(suite(kGood));
    for (Finding const& f : judged.findings) {
        CAPTURE(f.rule, f.message);
        bool const of_feeder = std::ranges::count(f.where.circuits, "FD") > 0;
        CHECK_FALSE((of_feeder && f.rule != "panel-feeder-wires"));
        CHECK(f.message.find("House\" is not") == std::string::npos);
    }
    REQUIRE(of("panel-no-room", suite(kGood)).empty());
}

TEST_CASE("unlisted: what is not known of the feeder is on the list", "[check][job][unlisted]") {
    auto const unknown = of("job-unknown", suite("feeder_breaker = \"?\"\nfeeder_cable = \"6/3\"\n"));
    auto const at = std::ranges::find_if(
        unknown, [](Finding const& f) { return f.where.circuits == std::vector<std::string>{"FD"}; });
    REQUIRE(at != unknown.end());
    REQUIRE_THAT(at->message, Contains("breaker") && Contains("length"));
}

TEST_CASE("power supply: breaker and wire are held against what the DC panel draws", "[check][wire][dc]") {
    // 1700 VA / 0.9 = 1889 VA, 15.7 A at 120 V: more than a breaker of 15 A.
    auto const job = [](int va) {
        return "[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"Main\"\nspaces = 8\nsupply = "
               "\"120/240\"\n[[panel]]\nname = "
               "\"Low\"\nspaces = 8\nsupply = \"12 V DC\"\nfeeder = \"Main/PS\"\n[[circuit]]\nmark = \"PS\"\npanel = "
               "\"Main\"\nuse = \"appliance\"\nbreaker = \"15 A\"\ncable = \"14/2\"\nlength = \"3 "
               "m\"\n[[circuit]]\nmark = "
               "\"D1\"\npanel = \"Low\"\nfuse = \"200 A\"\nload = \"" +
               std::to_string(va) + " VA\"\n";
    };
    auto const found = of("wire-load-fits", job(1700));
    REQUIRE(found.size() == 1);
    REQUIRE_THAT(found[0].message, Contains("PS draws 15.7 A"));
    REQUIRE(of("wire-load-fits", job(1600)).empty()); // 1778 VA, 14.8 A
    // Its load is known, so nobody is sent to measure it; and it is no sub-panel.
    for (Finding const& f : of("job-unknown", job(1600)))
        CHECK_FALSE((f.where.circuits == std::vector<std::string>{"PS"}));
    REQUIRE(of("panel-sub-neutral", job(1600)).empty());
}
