// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a calculation says it took for granted. Rules of this program.
#include "in_english.h"
#include "job/job.h"
#include "load_job.h"

#include "catch.h"

#include <algorithm>

using namespace made;

namespace {
std::string notes(typed::Job const& job) {
    std::string all;
    auto const p = service_load(job);
    for (auto const& n : p.load->notes) all += in_english(n) + "\n";
    return all;
}
constexpr auto kRange =
    "[dwelling]\narea = \"90 m²\"\n[[circuit]]\nmark = \"RG\"\nname = \"Range\"\npanel = \"Main\"\npoles = 2\n"
    "load = \"8 kW\"\n";
} // namespace

TEST_CASE("a use that was taken from a name is said, one that was typed is not", "[demand]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2024", "NEC 2023");
    REQUIRE_THAT(notes(home(code, kRange)), Contains("taken from their names: RG range."));
    REQUIRE_THAT(notes(home(code, std::string(kRange) + "use = \"range\"\n")), !Contains("their names"));
}

TEST_CASE("a panel of a dwelling that is fed by itself is said to be left out, one on DC is not", "[demand]") {
    auto const code = GENERATE(as<std::string>{}, "CE 2024", "NEC 2023");
    auto const with = [&](std::string const& supply) {
        return notes(home(code, kRange + ("[[panel]]\nname = \"Other\"\nspaces = 4\nsupply = \"" + supply +
                                          "\"\n[[circuit]]\nmark = \"L1\"\nname = \"Lights\"\npanel = \"Other\"\n"
                                          "load = \"60 W\"\n")));
    };
    REQUIRE_THAT(with("120/240"), Contains("Panel \"Other\" is fed by itself"));
    REQUIRE_THAT(with("12 V DC"), !Contains("fed by itself"));
}
