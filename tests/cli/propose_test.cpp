// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "cli/save_edits.h"
#include "output/files.h"
#include "temporary_folder.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

using nlohmann::json;

namespace {
// The boiler lacks both sizes, the lamp asks for its cable, nobody knows what hangs on X1.
std::string unsized_job() {
    return R"([job]
name = "Ridge hut"
code = "NEC 2023"

[[panel]]
name   = "Main"
spaces = 8
supply = "120/240"
main   = "60 A"

[[circuit]]
mark   = "WH"
name   = "Water heater, closet"
use    = "water heater"
poles  = 2
load   = "4500 W" # nameplate
length = "9 ft"

[[circuit]]
mark    = "L1"
name    = "Lights, loft"
use     = "lighting"
breaker = "15 A"
load    = "240 VA"
cable   = "?" # not pulled yet
length  = "20 ft"

[[circuit]]
mark = "X1"
name = "Spare corner"
)";
}
} // namespace

TEST_CASE("the JSON of check --propose has its stable keys", "[cli][propose]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", unsized_job());
    auto const called = call({"check", folder / "job.toml", "--propose", "--json"});
    CAPTURE(called.out, called.err);
    auto const value = json::parse(called.out);
    REQUIRE(value["job"] == "Ridge hut");
    auto const& all = value["proposals"];
    REQUIRE(all.size() == 3);
    for (auto const& p : all)
        for (auto const* key : {"circuit", "breaker", "cable", "steps", "reference", "find_out"})
            REQUIRE(p.contains(key));
    // Source: NEC 422.13, 240.6(A), 240.4(D): 18.75 A x 125 % = 23.4 A.
    REQUIRE(all[0]["breaker"] == "25 A");
    REQUIRE(all[0]["cable"] == "10/2");
    REQUIRE(all[0]["reference"] == "NEC 2023 422.13");
    REQUIRE(all[0]["steps"][0]["says"] == "4500 VA at 240 V = 18.75 A");
    REQUIRE(all[0]["steps"][0]["reference"].is_null());
    REQUIRE(all[1]["breaker"].is_null());
    REQUIRE(all[1]["cable"] == "14/2");
    REQUIRE(all[2]["breaker"].is_null());
    REQUIRE_FALSE(all[2]["find_out"].get<std::string>().empty());
    REQUIRE(contents(folder / "job.toml") == unsized_job());
}

TEST_CASE("check --propose --write changes breakers and cables and nothing else", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, unsized_job());
    auto const called = call({"check", path, "--propose", "--write"});
    CAPTURE(called.out, called.err);
    auto wanted = unsized_job();
    wanted.replace(wanted.find("\"?\""), 3, "\"14/2\"");
    wanted.insert(wanted.find("\n[[circuit]]\nmark    = \"L1\""), "breaker = \"25 A\"\ncable = \"10/2\"\n");
    auto written = contents(path);
    // The keys put in may be filled up to stand in a column.
    for (auto const* key : {"cable   = \"10/2\"", "cable  = \"10/2\""})
        if (auto const at = written.find(key); at != std::string::npos)
            written.replace(at, std::string(key).size(), "cable = \"10/2\"");
    REQUIRE(written == wanted);
    REQUIRE(contents(folder / "job.before.toml") == unsized_job());
    auto const again = call({"check", path, "--propose", "--write"});
    REQUIRE_THAT(again.out, Catch::Contains("Nothing to write"));
    REQUIRE(folder.names() == std::vector<std::string>{"job.before.toml", "job.toml"});
}

TEST_CASE("a job saved meanwhile is not overwritten by sizes", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, unsized_job());
    auto const opened = legwork::open_job(path);
    REQUIRE(opened.session);
    auto const& s = *opened.session;
    auto const theirs = unsized_job() + "# one more remark\n";
    legwork::write_file(path, theirs);
    REQUIRE_THROWS_WITH(legwork::save_sizes(s, legwork::proposals(s.job, s.plan, *s.book)),
                        Catch::Contains("changed by somebody else"));
    REQUIRE(contents(path) == theirs);
}

TEST_CASE("check --write asks for --propose and for a file", "[cli][propose]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", unsized_job());
    REQUIRE(call({"check", folder / "job.toml", "--write"}).status == 2);
    REQUIRE(call({"check", folder / "job.toml", "--propose", "--measure"}).status == 2);
    REQUIRE(run_process({"check", "-", "--propose", "--write"}, unsized_job()).status == 2);
}
