// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Lines on terminals of every width.

#include "calls.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"
#include "units/utf8.h"

#include "catch.h"
#include <fmt/format.h>

#include <algorithm>

namespace {

std::vector<std::string> lines_of(std::string const& text) {
    std::vector<std::string> lines;
    for (std::size_t begin = 0; begin < text.size();) {
        auto const end = std::min(text.find('\n', begin), text.size());
        lines.push_back(text.substr(begin, end - begin));
        if (lines.back().ends_with('\r')) lines.back().pop_back();
        begin = end + 1;
    }
    return lines;
}

std::size_t longest(std::string const& text) {
    std::size_t most = 0;
    for (auto const& line : lines_of(text)) most = std::max(most, legwork::character_count(line));
    return most;
}

// Two circuits whose names differ in what a short cut would leave out, and a mark as long as may be.
std::string long_marks() {
    return R"([job]
name = "Store"
code = "NEC 2023"
[[panel]]
name = "Main"
spaces = 8
supply = "120/240"
main = "60 A"
[[circuit]]
mark = "10-12"
name = "10-12 north"
breaker = "20 A"
load = "900 VA"
[[circuit]]
mark = "13-15"
name = "13-15 south"
breaker = "20 A"
load = "700 VA"
[[circuit]]
mark = "UPPER-FL"
name = "East, all the receptacles of the upper floor and the landing"
breaker = "20 A"
load = "200 VA"
)";
}

} // namespace

TEST_CASE("lines are as wide as the terminal, from 60 to 120 letters", "[cli][terminal]") {
    auto const job = in_sources("examples/bungalow.toml");
    auto const [columns, width] = GENERATE(
        table<unsigned short, std::size_t>({{20, 60}, {60, 60}, {80, 80}, {100, 100}, {120, 120}, {300, 120}}));
    CAPTURE(columns);
    for (auto const& words : std::vector<std::vector<std::string>>{{"load", job},
                                                                   {"check", job},
                                                                   {"balance", job},
                                                                   {"check", job, "--propose"},
                                                                   {"check", job, "--verdicts"},
                                                                   {"help", "check"},
                                                                   {"explain", "mw-opposite-legs"}}) {
        CAPTURE(words);
        auto const called = run_on_terminal(words, {"NO_COLOR=1", "COLUMNS=77"}, columns); // the terminal knows better
        auto const most = longest(called.out);
        // A command that may be pasted is not broken, and a path neither.
        auto const excess = std::ranges::count_if(lines_of(called.out), [&, w = width](auto const& line) {
            return legwork::character_count(line) > w && line.find("legwork ") == std::string::npos &&
                   line.find(job) == std::string::npos;
        });
        REQUIRE(excess == 0);
        REQUIRE(most + 25 > width);
    }
}

TEST_CASE("a terminal that does not say how wide it is has the columns of COLUMNS, else 80", "[cli][terminal]") {
    std::vector<std::string> const words{"help", "check"};
    REQUIRE(run_on_terminal(words, {"COLUMNS=64"}, 0).out == run_on_terminal(words, {"COLUMNS="}, 64).out);
    for (auto const* unknown : {"COLUMNS=", "COLUMNS=wide", "COLUMNS=-5"})
        REQUIRE(run_on_terminal(words, {unknown}, 0).out == run_on_terminal(words, {}, 80).out);
}

TEST_CASE("what goes to a file is the same on every terminal", "[cli][terminal]") {
    std::vector<std::string> const words{"help", "check"};
    REQUIRE(run_process(words, "", "", {"COLUMNS=64"}).out == call(words).out);
    REQUIRE(longest(call(words).out) > 90);
}

TEST_CASE("a terminal that says it is dumb gets no colour", "[cli][terminal]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "bad.toml", faulty_job());
    REQUIRE_THAT(run_on_terminal({"check", folder / "bad.toml"}, {"NO_COLOR=", "TERM=xterm"}).out, Contains("\x1b["));
    REQUIRE_THAT(run_on_terminal({"check", folder / "bad.toml"}, {"NO_COLOR=", "TERM=dumb"}).out, !Contains("\x1b"));
}

TEST_CASE("the table of spaces cuts names, and never a mark, a space or a rating", "[cli][terminal][balance]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", long_marks());
    auto const width = GENERATE(60U, 80U, 100U, 120U);
    CAPTURE(width);
    auto const told = call({"balance", folder / "job.toml"}, false, width).out;
    CAPTURE(told);
    auto const lines = lines_of(told);
    auto const row = [&](std::string const& mark) {
        auto const at = std::ranges::find_if(
            lines, [&](auto const& line) { return line.find("+ " + mark + ' ') != std::string::npos; });
        REQUIRE(at != lines.end());
        return *at;
    };
    REQUIRE_THAT(row("10-12"), Contains("10-12 north") && Contains("20 A"));
    REQUIRE_THAT(row("13-15"), Contains("13-15 south") && Contains("20 A"));
    REQUIRE_THAT(row("UPPER-FL"), Contains("East, all") && Contains("20 A"));
    for (int space = 1; space <= 8; ++space) // each stands there, whole
        REQUIRE(std::ranges::count_if(lines, [&](auto const& line) {
                    return line.find(fmt::format(" {} A ", space)) != std::string::npos ||
                           line.find(fmt::format(" {} B ", space)) != std::string::npos;
                }) == 1);
    REQUIRE(longest(told.substr(0, told.find("+ new"))) <= width);
}
