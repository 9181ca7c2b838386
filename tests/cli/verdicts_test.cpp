// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What each rule came to, as a list and as JSON.
#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "rules/check.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <regex>
#include <set>

using nlohmann::json;

namespace {
json verdicts(std::vector<std::string> arguments) {
    arguments.insert(arguments.begin(), "check");
    arguments.emplace_back("--json");
    return json::parse(call(arguments).out).at("verdicts");
}
json verdict_of(std::string const& rule, std::vector<std::string> arguments) {
    for (json const& v : verdicts(std::move(arguments)))
        if (v["rule"] == rule) return v;
    return nullptr;
}
} // namespace

TEST_CASE("check --json: a verdict of every rule that is checked, with its stable keys", "[cli][verdicts]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "bad.toml", faulty_job());
    auto const value = json::parse(call({"check", folder / "bad.toml", "--json"}).out);
    std::set<std::string> fired, found;
    for (auto const& f : value["findings"]) found.insert(f["rule"].get<std::string>());
    std::size_t i = 0;
    for (legwork::Rule const* rule : legwork::rules()) {
        if (!rule->is_checked()) continue;
        auto const& v = value["verdicts"].at(i++);
        CAPTURE(v.dump());
        REQUIRE(v["rule"] == std::string(rule->id)); // in the order of explain
        REQUIRE(v.size() == 4);
        std::string const kind = v["verdict"];
        REQUIRE((kind == "fired" || kind == "passed" || kind == "nothing" || kind == "unread"));
        REQUIRE(v["looked_at"].is_number_integer());
        REQUIRE((kind == "nothing") == (v["looked_at"] == 0));
        REQUIRE((v["nearest"].is_null() || (kind == "passed" && !v["nearest"].get<std::string>().empty())));
        if (kind == "fired") fired.insert(v["rule"].get<std::string>());
    }
    REQUIRE(i == value["verdicts"].size());
    REQUIRE(fired == found);
}

TEST_CASE("check: without lengths the drop of the wires was not looked at, and says so", "[cli][verdicts]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    auto const before = verdict_of("wire-drop", {path});
    CAPTURE(before.dump());
    REQUIRE(before["verdict"] == "passed");
    REQUIRE(before["looked_at"] > 0);
    REQUIRE_THAT(before["nearest"].get<std::string>(),
                 Catch::Matchers::StartsWith("drop ") && Contains(" % of 3 % on "));
    legwork::write_file(path, std::regex_replace(small_job(), std::regex("length *= *\"[^\"]*\""), ""));
    REQUIRE(verdict_of("wire-drop", {path}) ==
            json::parse(R"({"rule":"wire-drop","verdict":"nothing","looked_at":0,"nearest":null})"));
}

TEST_CASE("check --verdicts is a line for each rule", "[cli][verdicts]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    auto const called = call({"check", "--verdicts", path});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    std::size_t at = 0;
    for (legwork::Rule const* rule : legwork::rules()) {
        if (!rule->is_checked()) continue;
        auto const begin = called.out.find((at == 0 ? "" : "\n") + std::string(rule->id) + " ", at);
        REQUIRE(begin != std::string::npos);
        at = begin + 1;
    }
    REQUIRE_THAT(called.out, Contains("need-kitchen            nothing  to look at\n"));
    REQUIRE_THAT(called.out, Contains("wire-drop               passed   ") && Contains("; nearest: drop "));
    REQUIRE_THAT(called.out, Contains(" fired, ") && Contains(" had nothing to look at"));
    REQUIRE_THAT(called.out, Contains("Not checked yet, whatever the job: ") && Contains("box-full"));
    REQUIRE_THAT(called.out, Contains("prove dead on both legs"));
    REQUIRE_THAT(call({"check", "--verdicts", folder / "job.toml", "--rule", "wire-drop"}).out,
                 Catch::Matchers::StartsWith("wire-drop ") && !Contains("mw-pigtail "));
}

TEST_CASE("check --verdicts: the exit status is that of check, JSON the same, other lists are refused",
          "[cli][verdicts]") {
    TemporaryFolder const folder;
    auto const path = folder / "bad.toml";
    legwork::write_file(path, faulty_job());
    REQUIRE(call({"check", "--verdicts", path}).status == 1);
    REQUIRE(call({"check", "--verdicts", "--json", path}).out == call({"check", "--json", path}).out);
    REQUIRE(verdicts({path, "--rule", "mw-pigtail"}).size() == 1);
    for (auto const* other : {"--measure", "--propose"})
        REQUIRE(call({"check", "--verdicts", path, other}).status == 2);
    REQUIRE(call({"check", "--verdicts", path, "--by", "theme"}).status == 2);
    REQUIRE(call({"check", "--verdicts", path, "--min", "error"}).status == 2);
}
