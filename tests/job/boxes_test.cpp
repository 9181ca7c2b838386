// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [[box]], what a [[cable]] carries, and the supply of a [[situation]].
#include "made_text.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("boxes, and what a cable between them is for", "[job]") {
    auto const job = made::good(made::job_with(
        "[[box]]\nname = \"Counter box 1\"\nsize = \"2-gang 32 in³\"\ndevices = [\"receptacle\", \"switch\"]\nclamps = "
        "false\n[[box]]\nname = \"B2\"\nvolume = \"524 mL\"\n[[box]]\nname = \"B3\"\nvolume = \"?\"\n"
        "[[circuit]]\nmark = \"K1\"\n[[cable]]\nmark = \"K1a\"\ncarries = [\"K1\"]\nrole = \"on to\"\n"));
    CHECK(job.boxes[0].size == "2-gang 32 in³");
    CHECK(job.boxes[0].devices == std::vector<std::string>{"receptacle", "switch"});
    CHECK(job.boxes[0].clamps == false);
    CHECK(job.boxes[1].volume == Volume{524'000'000});
    CHECK(job.boxes[2].asked == std::vector<std::string>{"volume"});
    CHECK(job.cables[0].carries == std::vector<std::string>{"K1"});
    CHECK(job.cables[0].role == "on to");
}

TEST_CASE("mistakes about boxes and cables between them", "[job][mistakes]") {
    auto const told = [](std::string const& rest) { return made::complaints(made::job_with(rest)); };
    auto const one = [&](std::string const& rest, std::string const& start, std::string const& part) {
        auto const all = told(rest);
        CAPTURE(rest, all);
        REQUIRE(all.size() == 1);
        CHECK_THAT(all[0], Catch::Matchers::StartsWith(start) && Contains(part));
    };
    one("[[box]]\nsize = \"1-gang\"\n", "7:1 a box: \"name\" is missing", "Counter box 1");
    one("[[box]]\nname = \"B\"\n[[box]]\nname = \"B\"\n", "10:8 box \"B\": there is another of this name in line 8",
        "own");
    one("[[box]]\nname = \"B\"\nvolume = \"524\"\n", "9:10 box \"B\": volume = \"524\" is not a volume", "524 mL");
    one("[[box]]\nname = \"B\"\nvolume = \"5 m\"\n", "9:10 box \"B\": volume = \"5 m\" is not a volume", "mL or in³");
    one("[[box]]\nname = \"B\"\nvolume = \"9 mL\"\nsize = \"1-gang\"\n", "9:10 box \"B\": \"size\" and \"volume\"",
        "keep one");
    one("[[box]]\nname = \"B\"\ndevises = []\n", "9:1 box \"B\": there is no key \"devises\"", "devices");
    one("[[box]]\nname = \"B\"\nclamps = \"yes\"\n", "9:10 box \"B\": \"clamps\" takes true or false", "true");
    one("[[circuit]]\nmark = \"K1\"\n[[cable]]\nmark = \"W\"\ncarries = [\"K2\"]\n",
        "11:12 cable W: there is no circuit \"K2\"", "K1");
    one("[[circuit]]\nmark = \"K1\"\n[[cable]]\nmark = \"W\"\ncarries = [\"K1\", \"K1\"]\n",
        "11:18 cable W: the circuit K1 is named twice", "once");
    one("[[cable]]\nmark = \"W\"\nrole = \"onto\"\n", "9:8 cable W: \"role\" cannot be \"onto\"", "on to");
}

TEST_CASE("a situation may name the supply that it is on", "[job][mistakes]") {
    auto const head =
        std::string("[job]\ncode = \"CE 2024\"\n[[supply]]\nname = \"Grid\"\nkind = \"120/240\"\n[[panel]]\n"
                    "name = \"M\"\nspaces = 8\nsupplies = [\"Grid\"]\n[[situation]]\nname = \"S\"\n");
    CHECK(made::good(head + "supply = \"Grid\"\n").situations[0].supply == "Grid"); // every load, on it
    auto const told = made::complaints(head + "other = 0.5\nsupply = \"Gird\"\n");
    REQUIRE(told.size() == 1);
    CHECK(told[0] == "13:10 situation \"S\": there is no supply \"Gird\" | did you mean \"Grid\"?");
    CHECK(made::complaints(made::job_with("[[situation]]\nname = \"S\"\nsupply = \"Grid\"\n")).size() == 1);
}
