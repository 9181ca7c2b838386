// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The list to take to the panel.
#include "calls.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

using nlohmann::json;

namespace {
// L1 on space 2 has neither load nor length, the water heater's load is "?".
std::string half_known() {
    auto job = small_job();
    auto const swap = [&](std::string const& old, std::string const& now) {
        job.replace(job.find(old), old.size(), now);
    };
    swap("load    = \"3 kW\"", "load    = \"?\"");
    swap("load    = \"200 VA\"\n", "space   = 2\n");
    swap("length  = \"5 m\"\n", "");
    return job;
}
} // namespace

TEST_CASE("check --measure is a list to tick and fill in", "[cli][measure]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, half_known());
    auto const called = call({"check", "--measure", path});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.out, Catch::Matchers::StartsWith("Go and measure: Ridge hut, NEC 2023\n"));
    REQUIRE_THAT(called.out, Contains("prove dead on both legs"));
    auto const at = [&](std::string const& words) {
        auto const found = called.out.find(words);
        CAPTURE(words);
        REQUIRE(found != std::string::npos);
        return found;
    };
    auto const panel = at("Panel \"Main\"\n===="), here = at("At the panel\n----"), way = at("Along the cable\n----"),
               thing = at("At the appliance or source\n----");
    REQUIRE(panel < here);
    REQUIRE(here < way);
    REQUIRE(way < thing);
    auto const lights = at("[ ] L1, space 2: Lights, bunk room and porch\n");
    REQUIRE(here < lights);
    REQUIRE(lights < way);
    REQUIRE(thing < at("[ ] WH, space ____: Water heater, porch closet\n"));
    at("load = \"________ VA\"");
    at("length = \"________ m\"");
    at("COVER OFF AND LIVE");
    at("3 figures to find.");
    for (std::size_t begin = 0; begin < called.out.size();) { // for paper
        auto const end = called.out.find('\n', begin);
        REQUIRE(end - begin <= 80);
        begin = end + 1;
    }
}

TEST_CASE("check --measure --json has its stable keys", "[cli][measure]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, half_known());
    auto const value = json::parse(call({"check", path, "--measure", "--json"}).out);
    REQUIRE(value.size() == 4);
    REQUIRE(value["job"] == "Ridge hut");
    REQUIRE(value["code"] == "NEC 2023");
    REQUIRE(value["measure"].size() == 3);
    for (auto const& m : value["measure"])
        for (auto const* key : {"panel", "at", "thing", "id", "spaces", "name", "room", "key", "what", "how", "with",
                                "cover", "decides", "rules", "line", "column"}) {
            CAPTURE(m.dump(), key);
            REQUIRE(m.contains(key));
            REQUIRE(m.size() == 16);
        }
    auto const& first = value["measure"][0];
    REQUIRE(first["panel"] == "Main");
    REQUIRE(first["at"] == "panel");
    REQUIRE(first["thing"] == "circuit");
    REQUIRE(first["id"] == "L1");
    REQUIRE(first["spaces"] == json::array({"2"}));
    REQUIRE(first["room"].is_null());
    REQUIRE(first["key"] == "load");
    REQUIRE(first["cover"] == "off and live");
    REQUIRE(first["rules"].size() >= 2);
    auto const& heater = value["measure"][2];
    REQUIRE(heater["id"] == "WH");
    REQUIRE(heater["spaces"].empty());
    REQUIRE(heater["line"] == 38); // where the "?" stands
}

TEST_CASE("check --measure of a job that says all, and of one with an error", "[cli][measure]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "good.toml", small_job());
    auto const good = call({"check", "--measure", folder / "good.toml"});
    REQUIRE(good.status == 0);
    REQUIRE_THAT(good.out, Contains("Nothing to measure"));
    legwork::write_file(folder / "bad.toml", faulty_job());
    REQUIRE(call({"check", "--measure", folder / "bad.toml"}).status == 1); // as check itself
    REQUIRE(json::parse(call({"check", "--measure", folder / "good.toml", "--json"}).out)["measure"].empty());
    for (auto const* other : {"--by=theme", "--rule=mw-pigtail", "--min=error"})
        REQUIRE(call({"check", "--measure", folder / "good.toml", other}).status == 2);
}
