// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Panels behind a power supply, and behind a panel that is not listed: what the reader makes of them, and what it says
// of their mistakes.
#include "made_text.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;

namespace {
std::string const kHead = "[job]\ncode = \"CE 2024\"\n";

// Main with PS and SP, then "Low", whose keys begin in line 17.
std::string low(std::string const& rest) {
    return kHead + "[[panel]]\nname = \"Main\"\nspaces = 24\nsupply = \"120/240\"\n" +
           "[[circuit]]\nmark = \"PS\"\npanel = \"Main\"\n[[circuit]]\nmark = \"SP\"\npanel = \"Main\"\npoles = 2\n" +
           "[[panel]]\nname = \"Low\"\nspaces = 8\n" + rest;
}

// "House", which is not listed, in lines 3 to 6, then "Suite", whose keys begin in line 10.
std::string suite(std::string const& rest, std::string const& house = "supply = \"120/240\"") {
    return kHead + "[[panel]]\nname = \"House\"\nlisted = false\n" + house +
           "\n[[panel]]\nname = \"Suite\"\nspaces = 12\n" + rest;
}

// One way to say it a line: how it begins, "~" and a part of it.
void says(std::string const& job, std::vector<std::string> const& expected) {
    auto const told = made::complaints(job);
    CAPTURE(job, told);
    REQUIRE(told.size() == expected.size());
    for (std::size_t i = 0; i < told.size(); ++i) {
        auto const tilde = expected[i].find('~');
        CHECK_THAT(told[i], Catch::Matchers::StartsWith(expected[i].substr(0, tilde)));
        if (tilde != std::string::npos) CHECK_THAT(told[i], Contains(expected[i].substr(tilde + 1)));
    }
}
} // namespace

TEST_CASE("a DC panel hangs on the AC circuit of its power supply", "[job][dc]") {
    auto const job = made::good(low("supply = \"12 V DC\"\nfeeder = \"Main/PS\"\nefficiency = 0.85\n"));
    CHECK(job.panels[1].feeder == typed::FeederName{"Main", "PS"});
    CHECK(job.panels[1].efficiency == 850'000);
    CHECK_FALSE(made::good(low("supply = \"12 V DC\"\nfeeder = \"Main/PS\"\n")).panels[1].efficiency);
    // Two power supplies may be plugged into one circuit.
    made::good(low("supply = \"12 V DC\"\nfeeder = \"Main/PS\"\nefficiency = 1\n[[panel]]\nname = \"Lower\"\nspaces = "
                   "4\nsupply = \"24 V DC\"\nfeeder = \"Main/PS\"\n[[circuit]]\nmark = \"D1\"\npanel = \"Low\"\nfuse = "
                   "\"5 A\"\n"));
}

TEST_CASE("mistakes about power supplies", "[job][dc][mistakes]") {
    for (auto const* amount : {"0", "0.05", "-1", "1.01", "nan", "\"90 %\""}) {
        CAPTURE(amount);
        auto const told = made::complaints(
            low("supply = \"12 V DC\"\nfeeder = \"Main/PS\"\nefficiency = " + std::string(amount) + "\n"));
        REQUIRE(told.size() == 1);
        CHECK_THAT(told[0], Catch::Matchers::StartsWith("19:14 panel \"Low\": ") && Contains("9"));
    }
    says(low("supply = \"12 V DC\"\nefficiency = 0.9\n"),
         {"18:14 panel \"Low\": \"efficiency\" is of the power supply~name the AC circuit"});
    says(low("feeder = \"Main/SP\"\nefficiency = 0.9\n"),
         {"18:14 panel \"Low\": \"efficiency\" is of the power supply~take  efficiency  away"});
    says(low("feeder = \"Main/XX\"\nsupply = \"12 V DC\"\nefficiency = 0.9\n"),
         {"17:10 panel \"Low\": there is no circuit \"XX\""});
    // A cable that ends at a sub-panel's lugs has no room for a power supply.
    says(
        low("feeder = \"Main/SP\"\n[[panel]]\nname = \"DC\"\nspaces = 4\nsupply = \"12 V DC\"\nfeeder = \"Main/SP\"\n"),
        {"22:10 panel \"DC\": SP feeds the panel \"Low\" already"});
    // An inverter is no sub-panel.
    says(low("supply = \"12 V DC\"\n[[circuit]]\nmark = \"IN\"\npanel = \"Low\"\n[[panel]]\nname = "
             "\"Inverter\"\nspaces = "
             "4\nsupply = \"120 on both legs\"\nfeeder = \"Low/IN\"\n"),
         {"24:10 panel \"Inverter\": panel \"Inverter\" is fed by another kind of current~take  feeder  away"});
    // Round and round.
    says(kHead + "[[panel]]\nname = \"A\"\nspaces = 8\nsupply = \"120/240\"\nfeeder = \"B/F2\"\n[[panel]]\nname = "
                 "\"B\"\nspaces = 8\nsupply = \"12 V DC\"\nfeeder = \"A/F1\"\n[[circuit]]\nmark = \"F1\"\npanel = "
                 "\"A\"\n[[circuit]]\nmark = \"F2\"\npanel = \"B\"\n",
         {"7:10 panel \"A\": in the end this panel feeds itself", "12:10 panel \"B\": in the end this panel"});
}

TEST_CASE("a sub-panel behind a panel that is not listed", "[job][unlisted]") {
    auto const words = suite("feeder = \"House\"\nfeeder_breaker = \"60 A\"\nfeeder_cable = \"6/3\"\nfeeder_length = "
                             "\"?\"\n[[circuit]]\nmark = \"FD\"\n[[cable]]\nmark = \"FD2\"\n");
    auto const read = read_job(words, made::words());
    REQUIRE(read.job);
    auto const& [house, sub] = std::pair{read.job->panels[0], read.job->panels[1]};
    CHECK_FALSE(house.listed);
    CHECK(house.spaces == 0);
    CHECK(sub.feeder == typed::FeederName{"House", "FD3"}); // the first mark that is free
    CHECK(sub.feeder_breaker == 60_A);
    CHECK(sub.feeder_cable == "6/3");
    CHECK_FALSE(sub.feeder_length);
    CHECK(sub.asked == std::vector<std::string>{"feeder_length"});
    CHECK(read.job->circuits[0].panel == "Suite"); // the one that is listed
    // What is found about the feeder is told where it is described.
    auto const at = [&](std::string const& key) { return read.places.find(Subject::circuit, "FD3", key).line; };
    CHECK((at("breaker") == 11 && at("cable") == 12 && at("length") == 13 && at("name") == 10));
    // Each sub-panel has a feeder of its own.
    auto const two =
        made::good(suite("feeder = \"House\"\n[[panel]]\nname = \"Shed\"\nspaces = 8\nfeeder = \"House\"\n"));
    CHECK((two.panels[1].feeder->mark == "FD" && two.panels[2].feeder->mark == "FD2"));
    // A slash in its name is part of it.
    auto slashed = suite("feeder = \"House/2\"\n");
    slashed.replace(slashed.find("\"House\""), 7, "\"House/2\"");
    CHECK(made::good(slashed).panels[1].feeder == typed::FeederName{"House/2", "FD"});
}

TEST_CASE("mistakes about panels that are not listed", "[job][unlisted][mistakes]") {
    says(suite("feeder = \"House/X\"\n"),
         {"10:10 panel \"Suite\": the panel \"House\" is not listed, so no circuit of it is~feeder = \"House\","});
    says(low("feeder = \"Main\"\n"),
         {"17:10 panel \"Low\": \"Main\" does not name a panel and a circuit~\"Main/MARK\""});
    says(low("feeder = \"Main/SP\"\nfeeder_breaker = \"60 A\"\n"),
         {"18:18 panel \"Low\": \"feeder_breaker\" is of a feeder from a panel that is not listed~[[circuit]]  SP"});
    says(low("supply = \"120/240\"\nfeeder_cable = \"6/3\"\nfeeder_length = \"4 m\"\n"),
         {"18:16 panel \"Low\": \"feeder_cable\" is of a feeder",
          "19:17 panel \"Low\": \"feeder_length\" is of a feeder"});
    says(suite("feeder = \"House\"\nfeeder_cable = \"6-3\"\n"), {"11:16 panel \"Suite\": there is no cable kind"});
    says(suite("feeder = \"House\"\nsupply = \"120/208\"\n"),
         {"11:10 panel \"Suite\": the panel \"House\" does not bring that to its feeder"});
    says(suite("feeder = \"House\"\nsupply = \"12 V DC\"\n"),
         {"10:10 panel \"Suite\": a power supply hangs on a circuit, and of this panel none is listed"});
    says(suite("feeder = \"House\"\n", "supply = \"120/240\"\nspaces = 24\nfeeder_length = \"2 m\""),
         {"7:10 panel \"House\": \"spaces\" is of a listed panel, and this one is not~listed = false",
          "8:17 panel \"House\": \"feeder_length\" is of a feeder"});
    says(suite("feeder = \"House\"\n", "main = \"200 A\""),
         {"3:1 panel \"House\": nothing says what feeds this panel"});
    says(suite("feeder = \"House\"\n[[circuit]]\nmark = \"K1\"\npanel = \"House\"\n"),
         {"13:9 circuit K1: the panel \"House\" is not listed, and nothing of it is~Suite"});
    says(suite("supply = \"120/240\"\n"), {"5:10 panel \"House\": it is not listed, and feeds no panel that is"});
    says(kHead + "[[panel]]\nname = \"House\"\nlisted = false\nsupply = \"120/240\"\n",
         {"5:10 panel \"House\": it is not listed, and feeds no panel that is"});
    says(suite("feeder = \"House\"\n[[situation]]\nname = \"N\"\nshare = { FD = 0.5 }\n"),
         {"13:11 situation \"N\": \"FD\" is neither a use nor the mark of a circuit"});
}
