// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/balance.h"
#include "calls.h"
#include "cli/command.h"
#include "cli/files/save_edits.h"
#include "output/draft_name.h"
#include "output/files.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <filesystem>
#include <sstream>

using nlohmann::json;

namespace {

// The file's lines without those that set a space.
std::string without_spaces(std::string const& job) {
    std::istringstream lines(job);
    std::string kept;
    for (std::string line; std::getline(lines, line);)
        if (!line.starts_with("space ") && !line.starts_with("space=")) kept += line + '\n';
    return kept;
}

} // namespace

TEST_CASE("the JSON of balance has its stable keys, and adds up", "[cli][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    auto const called = call({"balance", folder / "job.toml", "--json"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    auto const value = json::parse(called.out);
    REQUIRE(value["job"] == "Ridge hut");
    auto const& panel = value["panels"][0];
    for (auto const* key : {"panel", "supply", "supplies", "proven", "imbalance_va", "least_imbalance_va",
                            "lower_bound_va", "situations", "moves", "tradeoff", "placements"})
        REQUIRE(panel.contains(key));
    REQUIRE(panel["supply"] == "120/240");
    REQUIRE(panel["proven"] == true);
    // 900 and 700 VA of a pair stand on opposite legs: with the 200 VA of the lights they even out exactly, whatever
    // the two-pole heater adds to both (arithmetic).
    REQUIRE(panel["imbalance_va"] == 0);
    REQUIRE(panel["situations"][0]["name"] == "connected");
    REQUIRE(panel["situations"][0]["leg_a_va"] == 2400);
    REQUIRE(panel["situations"][0]["leg_b_va"] == 2400);
    REQUIRE(panel["placements"].size() == 4);
    for (auto const& p : panel["placements"]) {
        REQUIRE(p["spaces"].size() == (p["circuit"] == "WH" ? 2 : 1));
        REQUIRE(p["leg"].is_null() == (p["circuit"] == "WH"));
        REQUIRE(p["from"].empty());
    }
}

TEST_CASE("the plan for people names spaces, legs, the proof and where to land", "[cli][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    auto const out = call({"balance", folder / "job.toml"}).out;
    CAPTURE(out);
    for (auto const* words : {"Main: 8 spaces, 120/240, main 60 A", "North wall", "2P 20 A", "connected: 0 VA apart",
                              "proven", "--write puts these spaces", "prove dead on both legs"})
        REQUIRE_THAT(out, Contains(words));
}

TEST_CASE("moves take off first, then land", "[cli][balance]") {
    TemporaryFolder const folder;
    // Two circuits on one leg (spaces 1 and 5 of an `across` panel stand in rows 1 and 3): one must move.
    legwork::write_file(folder / "job.toml", R"([job]
name = "Two lamps"
code = "NEC 2023"
[[panel]]
name = "Main"
spaces = 6
supply = "120/240"
main = "60 A"
[[circuit]]
mark = "A"
name = "Lamp, north hall"
use = "lighting"
breaker = "15 A"
load = "900 VA"
cable = "14/2"
length = "5 m"
space = 1
[[circuit]]
mark = "B"
name = "Lamp, south hall"
use = "lighting"
breaker = "15 A"
load = "900 VA"
cable = "14/2"
length = "5 m"
space = 5
)");
    auto const called = call({"balance", folder / "job.toml"});
    CAPTURE(called.out, called.err);
    auto const off = called.out.find("take off"), land = called.out.find("then land");
    REQUIRE(off != std::string::npos);
    REQUIRE(land != std::string::npos);
    REQUIRE(off < land);
    REQUIRE_THAT(called.out, Contains("1 move") && Contains("<- this plan"));
    auto const held = json::parse(call({"balance", folder / "job.toml", "--json", "--moves", "0"}).out);
    REQUIRE(held["panels"][0]["moves"] == 0);
    REQUIRE(held["panels"][0]["imbalance_va"] == 1800);
    REQUIRE(held["panels"][0]["least_imbalance_va"] == 0);
}

TEST_CASE("a breaker that grows from a half to a whole space is no move, and is told as what it is", "[cli][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", "[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"Main\"\nspaces = 4\n"
                                             "supply = \"120/240\"\n[[circuit]]\nmark = \"A\"\nspace = \"3a\"\n");
    auto const called = call({"balance", folder / "job.toml"});
    CAPTURE(called.out);
    REQUIRE(json::parse(call({"balance", folder / "job.toml", "--json"}).out)["panels"][0]["moves"] == 0);
    CHECK_THAT(called.out, !Contains("1 move") && !Contains("take off"));
    CHECK_THAT(called.out, Contains("3 B = A") && Contains("= another breaker on its space") &&
                               Contains("A on 3 (leg B), in place of 3a"));
}

// A mark says which cable is meant (README): a part of it says nothing.
TEST_CASE("no mark and no rating is cut in the plan's table", "[cli][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml",
                        "[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"Main\"\nspaces = 4\nsupply = \"120/240\"\n"
                        "[[circuit]]\nmark = \"KITCHEN1\"\nname = \"Counter outlets by the window, left of the sink\"\n"
                        "breaker = \"20 A\"\n[[circuit]]\nmark = \"KITCHEN2\"\npoles = 2\nbreaker = \"1000.25 A\"\n");
    auto const out = call({"balance", folder / "job.toml"}).out;
    CAPTURE(out);
    std::istringstream lines(out);
    std::size_t widest = 0;
    for (std::string line; std::getline(lines, line) && !line.starts_with("Legs");)
        widest = std::max(widest, line.size());
    CHECK(widest <= 100);
    CHECK_THAT(out, Contains("+ KITCHEN1 Counter") && Contains("KITCHEN2 |") && Contains("2P 1000.25 A"));
}

TEST_CASE("balance --write changes spaces and nothing else, and keeps the old file", "[cli][balance]") {
    TemporaryFolder const folder;
    auto const path = folder / "my job.toml";
    legwork::write_file(path, small_job());
    auto const plan = json::parse(call({"balance", path, "--json"}).out)["panels"][0]["placements"];
    REQUIRE(contents(path) == small_job()); // without --write nothing is touched
    auto const called = call({"balance", path, "--write", "--json"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    auto const written = contents(path);
    REQUIRE(without_spaces(written) == without_spaces(small_job()));
    REQUIRE(contents(folder / "my job.before.toml") == small_job());
    REQUIRE(json::parse(called.out)["written"]["before"].get<std::string>().ends_with("my job.before.toml"));
    // The file now says what the plan said, and asks for no move.
    auto const again = json::parse(call({"balance", path, "--json"}).out)["panels"][0];
    REQUIRE(again["moves"] == 0);
    for (std::size_t i = 0; i < plan.size(); ++i) {
        REQUIRE(again["placements"][i]["spaces"] == plan[i]["spaces"]);
        REQUIRE(again["placements"][i]["from"] == plan[i]["spaces"]);
    }
    auto const nothing = call({"balance", path, "--write"});
    REQUIRE(nothing.status == 0);
    REQUIRE_THAT(nothing.out, Contains("Nothing to write"));
    REQUIRE(contents(path) == written);
    REQUIRE(folder.names() == std::vector<std::string>{"my job.before.toml", "my job.toml"});
}

TEST_CASE("an impossible panel says why, writes nothing and exits 1", "[cli][balance]") {
    TemporaryFolder const folder;
    auto job = small_job();
    job.replace(job.find("spaces = 8"), 10, "spaces = 4");
    legwork::write_file(folder / "job.toml", job);
    auto const called = call({"balance", folder / "job.toml", "--write"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 1);
    REQUIRE_THAT(called.out, Contains("No plan: "));
    REQUIRE(contents(folder / "job.toml") == job);
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml"});
    auto const panel = json::parse(call({"balance", folder / "job.toml", "--json"}).out)["panels"][0];
    REQUIRE(panel["imbalance_va"].is_null());
    REQUIRE(panel["placements"].empty());
    REQUIRE_FALSE(panel["why"].get<std::string>().empty());
}

TEST_CASE("balance of a job with an error finding still writes, and exits 1", "[cli][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", faulty_job());
    REQUIRE(call({"balance", folder / "job.toml", "--write"}).status == 1);
    REQUIRE(std::filesystem::exists(folder / "job.before.toml"));
}

TEST_CASE("a job saved by somebody else since it was read is left as it is", "[cli][balance]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    auto const opened = legwork::open_job(path);
    REQUIRE(opened.session);
    auto const plan = legwork::balance(opened.session->building);
    auto const theirs = small_job() + "# one more remark\n";
    legwork::write_file(path, theirs);
    REQUIRE_THROWS_WITH(legwork::save_spaces(*opened.session, plan), Contains("changed by somebody else"));
    REQUIRE(contents(path) == theirs);
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml"});
}

TEST_CASE("two jobs whose names differ by their ending alone keep two old files", "[cli][balance]") {
    TemporaryFolder const folder;
    auto const other = small_job() + "# the other one\n";
    legwork::write_file(folder / "job", small_job());
    legwork::write_file(folder / "job.toml", other);
    for (auto const* name : {"job", "job.toml"}) REQUIRE(call({"balance", folder / name, "--write"}).status == 0);
    REQUIRE(folder.names() == std::vector<std::string>{"job", "job.before", "job.before.toml", "job.toml"});
    REQUIRE(contents(folder / "job.before") == small_job());
    REQUIRE(contents(folder / "job.before.toml") == other);
}

TEST_CASE("a run that has nothing to write clears up after one that was killed", "[cli][balance]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    REQUIRE(call({"balance", path, "--write"}).status == 0);
    // As it is right after the exchange: what came out stands under a draft's name, and its copy beside.
    std::filesystem::copy_file(folder / "job.before.toml", folder / legwork::draft_name(1, 0, "job.toml"));
    auto const called = call({"balance", path, "--write"});
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.out, Contains("Nothing to write"));
    REQUIRE(folder.names() == std::vector<std::string>{"job.before.toml", "job.toml"});
}

TEST_CASE("a file that may not be written stays as it is", "[cli][balance]") {
    REQUIRE(run_process({"balance", "-", "--write"}, small_job()).status == 2);
    TemporaryFolder const folder;
    REQUIRE(call({"balance", folder / "none.toml", "--write"}).status == 2);
}
