// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What check says on the screen of an old panel that gets some circuits. Source: common practice, no source: who adds
// four circuits reads a screen or two, not ten; nothing of it is lost to programs.
#include "calls.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <algorithm>
#include <set>

using nlohmann::json;

namespace {
std::string old_house() { return in_sources("tests/cases/old-house-four-additions.toml"); }

std::ptrdiff_t lines(std::string const& text) { return std::ranges::count(text, '\n'); }

bool is_old(std::string const& mark) { return mark.front() != 'N'; }

std::size_t times(std::string const& text, std::string const& words) {
    std::size_t n = 0;
    for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++n;
    return n;
}
} // namespace

TEST_CASE("check tells an old panel with four additions within sixty lines", "[cli][check][additions]") {
    TemporaryFolder const folder; // lines hang on how long the file's name is
    legwork::write_file(folder / "job.toml", contents(old_house()));
    auto const told = call({"check", folder / "job.toml"}).out;
    CAPTURE(told);
    CHECK(lines(told) <= 60);
    CHECK(lines(call({"check", old_house(), "--by", "circuit"}).out) > 200); // in full
}

TEST_CASE("untouched work has one line a kind, with all its circuits, behind the new ones", "[cli][check][additions]") {
    auto const told = call({"check", old_house()}).out;
    CAPTURE(told);
    auto const short_part = told.find("Was there before, and this job leaves it alone\n----");
    REQUIRE(short_part != std::string::npos);
    auto const all = json::parse(call({"check", old_house(), "--json"}).out);
    std::set<std::string> kinds;
    for (auto const& f : all["findings"]) {
        auto const& marks = f["circuits"];
        bool const old = !marks.empty() && std::ranges::all_of(marks, [](json const& m) { return is_old(m); });
        if (!old || f["severity"] == "error") continue;
        kinds.insert(f["rule"]);
        auto const behind = told.substr(short_part);
        auto const line = behind.substr(0, behind.find("[" + f["rule"].get<std::string>() + "]"));
        auto const before = line.rfind("]\n");
        auto const own = line.substr(before == std::string::npos ? 0 : before);
        for (auto const& m : marks) CHECK_THAT(own, Contains(m.get<std::string>()));
    }
    REQUIRE(kinds.size() >= 4);
    for (auto const& rule : kinds) CHECK(times(told.substr(short_part), "[" + rule + "]") == 1);
    for (auto const* mark : {"N1 draws", "N2: ", "Of N4", "Of N3"}) {
        CAPTURE(mark);
        CHECK(told.find(mark) < short_part);
    }
    // The counts, and what programs read, are of every finding.
    CHECK_THAT(told, Contains(std::to_string(all["warnings"].get<int>()) + " warnings"));
    CHECK(all["findings"].size() ==
          all["errors"].get<std::size_t>() + all["warnings"].get<std::size_t>() + all["notes"].get<std::size_t>());
    CHECK(all["findings"].size() > 40);
    // What somebody asks for by its rule is told in full.
    CHECK(times(call({"check", old_house(), "--rule", "gfci-needed"}).out, "    Do: ") > 3);
}

TEST_CASE("an error of untouched work is told in full, before what is milder", "[cli][check][additions]") {
    TemporaryFolder const folder;
    auto job = contents(old_house());
    auto const at = job.find("breaker  = \"15 A\"");
    job.replace(at, 17, "breaker  = \"30 A\"\ncable    = \"14/2\""); // B1
    legwork::write_file(folder / "job.toml", job);
    auto const told = call({"check", folder / "job.toml"}).out;
    CAPTURE(told);
    auto const error = told.find("[wire-breaker-fits]");
    REQUIRE(error != std::string::npos);
    CHECK(error < told.find(": warning: "));
    CHECK(told.find("N1 draws") < error); // behind the errors of new work
}

TEST_CASE("check --new tells what concerns new circuits", "[cli][check][additions]") {
    auto const all = json::parse(call({"check", old_house(), "--json"}).out);
    auto const fresh = json::parse(call({"check", old_house(), "--json", "--new"}).out);
    CHECK(fresh["filter"] == json::parse(R"({"rules":[],"min":"note","new":true})"));
    for (auto const* key : {"errors", "warnings", "notes"}) CHECK(fresh[key] == all[key]); // of the whole job
    std::size_t expected = 0;
    for (auto const& f : all["findings"]) {
        auto const& marks = f["circuits"];
        if (marks.empty() || std::ranges::any_of(marks, [](json const& m) { return !is_old(m); })) ++expected;
    }
    CHECK(fresh["findings"].size() == expected);
    CHECK(expected < all["findings"].size() / 2);
    auto const told = call({"check", old_house(), "--new"}).out;
    CHECK_THAT(told, Contains(" shown; the counts") && !Contains("Was there before"));
    for (auto const* other : {"--measure", "--verdicts", "--propose"})
        CHECK(call({"check", old_house(), "--new", other}).status == 2);
}

TEST_CASE("what reads the same of several circuits is told once", "[cli][check][additions]") {
    TemporaryFolder const folder;
    auto job = small_job();
    for (auto const* mark : {"X1", "X2", "X3"})
        job += std::string("\n[[circuit]]\nmark = \"") + mark + "\"\nname = \"Receptacles, wall " + mark +
               "\"\nload = \"100 VA\"\nlength = \"5 m\"\n";
    legwork::write_file(folder / "job.toml", job);
    auto const told = call({"check", folder / "job.toml", "--rule", "job-unknown"}).out;
    CAPTURE(told);
    CHECK(times(told, "Of X") == 1);
    CHECK_THAT(told, Contains("Of X1, new work") && Contains("The same of X2 and X3.\n"));
    auto const value = json::parse(call({"check", folder / "job.toml", "--json", "--rule", "job-unknown"}).out);
    CHECK(value["findings"].size() == 3);
    // Under headings each stands where it belongs.
    CHECK(times(call({"check", folder / "job.toml", "--rule", "job-unknown", "--by", "circuit"}).out, "Of X") == 3);
}

TEST_CASE("sheets of new work without sizes say so, with exit status 0", "[cli][print][additions]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml", out = folder / "out";
    legwork::write_file(path, small_job() + "\n[[circuit]]\nmark = \"X1\"\nname = \"Receptacles, wall\"\nload = \"100 "
                                            "VA\"\nlength = \"5 m\"\n");
    auto const called = call({"print", path, "--out", out, "--format", "svg"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    CHECK_THAT(called.out, Contains("DRAFT: sizes missing") && Contains("--propose"));
    // The sizes written, the band is gone.
    REQUIRE(call({"check", path, "--propose", "--write"}).status == 0);
    auto const again = call({"print", path, "--out", out, "--format", "svg"});
    REQUIRE(again.status == 0);
    CHECK_THAT(again.out, !Contains("DRAFT"));
}
