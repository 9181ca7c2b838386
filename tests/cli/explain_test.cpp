// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "codebook/tables/tables.h"

#include "catch.h"
#include <nlohmann/json.hpp>

using nlohmann::json;

TEST_CASE("explain says how grave a rule is, who may accept it and where the codes say so", "[cli][explain]") {
    auto const uneven = call({"explain", "panel-spare-spaces"}).out;
    REQUIRE_THAT(uneven, Contains("NEC: silent. CE Code: an error"));
    REQUIRE_THAT(uneven, Contains("by an [[accept]]"));
    auto const legs = call({"explain", "mw-opposite-legs"}).out;
    REQUIRE_THAT(legs, Contains("  accepted  never, by anybody. ") && Contains("  gravity   an error\n"));
    auto const outlet = call({"explain", "wire-outlet"}).out;
    REQUIRE_THAT(outlet, Contains("by an [[accept]]") && Contains("cannot be accepted"));
    auto const backfeed = call({"explain", "panel-backfeed"}).out;
    REQUIRE_THAT(backfeed, Contains("NEC 2017: 705.12(B)(2)(3)(b); NEC 2020: 705.12(B)(3)(2); NEC 2023: 705.12(B)(2)"));
    REQUIRE_THAT(backfeed,
                 Contains("64-112(4) (section number from memory) *") && Contains("* what it says is from memory"));
    REQUIRE_THAT(call({"explain", "mw-pigtail"}).out, !Contains("*"));
    REQUIRE_THAT(call({"explain", "mw-disconnect"}).out, Contains("tied singles: NEC 2017, 2020, 2023: 240.15(B)(1)"));
    REQUIRE_THAT(call({"explain", "mw-unequal"}).out, Contains("common practice: no section speaks of it"));
}

TEST_CASE("explain says of how grave a rule is what check does", "[cli][explain]") {
    auto const gfci = call({"explain", "mw-one-pole-gfci"}).out;
    REQUIRE_THAT(gfci, Contains("  gravity   an error. At most a warning where it is an AFCI, "));
    auto const value = json::parse(call({"explain", "mw-one-pole-gfci", "--json"}).out);
    REQUIRE_THAT(value["doubt"].get<std::string>(), Catch::Matchers::StartsWith("it is an AFCI"));
    REQUIRE(json::parse(call({"explain", "mw-unequal", "--json"}).out)["doubt"].is_null());
    auto const neutral = call({"explain", "tape-as-neutral"}).out;
    REQUIRE_THAT(neutral, Contains("  gravity   an error; or a note; or a warning\n"));
    auto const hang = call({"explain", "panel-backfeed"}).out;
    REQUIRE_THAT(hang, Contains("NEC: ") && Contains(". CE Code: a warning"));
}

TEST_CASE("explain teaches rules that are not checked yet, and says that they are not", "[cli][explain]") {
    auto const told = call({"explain", "box-full"});
    REQUIRE(told.status == 0);
    REQUIRE_THAT(told.out, Catch::Matchers::StartsWith("box-full (not checked yet)\n") &&
                               Contains("that it finds nothing means nothing"));
    REQUIRE_THAT(told.out, Contains("NEC 2017: 314.16(B); NEC 2020, 2023: 314.16(B)(1)"));
    auto const value = json::parse(call({"explain", "box-full", "--json"}).out);
    REQUIRE(value["checked"] == false);
    REQUIRE(value["codes"][0]["sections"]["CE 2024"] == "12-3034");
    auto const pair = json::parse(call({"explain", "mw-disconnect", "--json"}).out);
    REQUIRE(pair["checked"] == true);
    REQUIRE(pair["accept"] == "yes");
    REQUIRE(pair["gravity"] == json::parse(R"({"nec":"E/W","ce":"E/W, W, N"})"));
    REQUIRE(pair["codes"].size() >= 3);
}

TEST_CASE("explain --table lists the tables, and prints each within the width of a terminal", "[cli][explain]") {
    auto const listed = call({"explain", "--table"});
    REQUIRE(listed.status == 0);
    auto const names = json::parse(call({"explain", "--table", "--json"}).out).at("tables");
    REQUIRE(names.size() == legwork::code_tables().size());
    for (auto const& entry : names) {
        auto const name = entry.at("table").get<std::string>();
        CAPTURE(name);
        REQUIRE_THAT(listed.out, Contains(name + " ") && Contains(entry.at("title").get<std::string>().substr(0, 40)));
        auto const told = call({"explain", "--table", name});
        REQUIRE(told.status == 0);
        REQUIRE_THAT(told.out, Catch::Matchers::StartsWith(entry.at("title").get<std::string>()));
        auto const value = json::parse(call({"explain", "--table", name, "--json"}).out);
        bool memory = false;
        for (auto const& part : value.at("parts"))
            for (auto const& row : part.at("rows")) {
                REQUIRE(row.at("cells").size() == part.at("heads").size());
                memory |= row.at("source") == "memory";
            }
        REQUIRE((told.out.find("from memory: look it up in your code") != std::string::npos) == memory);
    }
}

TEST_CASE("explain --table of a name that is none", "[cli][explain]") {
    auto const slip = call({"explain", "--table", "ampacities"});
    REQUIRE(slip.status == 2);
    REQUIRE_THAT(slip.err, Contains("did you mean \"ampacity\"?"));
    REQUIRE(call({"explain", "mw-pigtail", "--table", "ampacity"}).status == 2);
}
