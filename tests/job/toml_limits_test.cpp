// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Shapes on which a TOML library, or a careless reader, takes the time squared, the stack, or all memory.
#include "job/made_text.h"

#include "catch.h"
#include <algorithm>
#include <ctime>
#include <fmt/format.h>
#include <functional>

using namespace legwork;

namespace {

constexpr std::size_t kFull = 1u << 20;
// Under a second when optimised; instrumented and unoptimised builds take ten to forty times as long.
constexpr double kMostSeconds = 15.0;

std::string filled(std::string text, std::string_view piece, std::string_view end = "") {
    while (text.size() + piece.size() + end.size() <= kFull) text += piece;
    return text += end;
}

std::string numbered(std::function<std::string(int)> const& piece, int most = 1'000'000) {
    std::string text;
    for (int i = 0; i < most; ++i) {
        auto const next = piece(i);
        if (text.size() + next.size() > kFull) break;
        text += next;
    }
    return text;
}

std::string times(std::size_t count, std::string_view piece) {
    std::string text;
    for (std::size_t i = 0; i < count; ++i) text += piece;
    return text;
}

struct Shape {
    char const* name;
    std::string bytes;
    char const* message; // in one of the problems
};

std::vector<Shape> shapes() {
    auto const x15k = std::string(15'000, 'x');
    return {
        {"nested lists", filled("a=", "["), "deep"},
        {"nested tables", filled("a=", "{a="), "deep"},
        {"nested both", filled("a=", "[{a="), "deep"},
        {"a dotted key", filled("a", ".a", "=1"), "deep"},
        {"a dotted header", filled("[a", ".a", "]"), "deep"},
        {"one list on one line", filled("a=[", "1,", "]"), "too many values"},
        {"tables on one line", filled("circuit=[", "{a=1},", "]"), "too many values"},
        {"one list, a line each", filled("a=[\n", "1,\n", "]"), "more than 12000 values"},
        {"a binary number", "a=0b" + std::string(63, '0'), "more than 62 binary digits"},
        {"the longest binary number", "a=0b" + std::string(62, '1'), "no key \"a\""},
        {"keys", numbered([](int i) { return fmt::format("k{}=1\n", i); }), "more than 12000 values"},
        {"keys, as many as may be", numbered([](int i) { return fmt::format("k{}=1\n", i); }, 11'900),
         "there is no key"},
        {"quoted keys", numbered([](int i) { return fmt::format("\"k{} {}\"=1\n", i, std::string(30, 'x')); }, 5'900),
         "there is no key"},
        {"headers", numbered([](int i) { return fmt::format("[k{}]\n", i); }, 11'900), "there is no key"},
        {"circuits", times(11'900, "[[circuit]]\n"), "\"mark\" is missing"},
        {"a key given twice at the end", numbered([](int i) { return fmt::format("k{}=1\n", i); }, 11'900) + "k1=1\n",
         "second time"},
        {"a long text", filled("a=\"", "x", "\""), "no key \"a\""},
        {"a long text of several lines", filled("a=\"\"\"", "x\n", "\"\"\""), "no key \"a\""},
        {"a long name", filled("[job]\nname=\"", "x", "\""), "letters, 200 at most"},
        {"a long key", filled("", "x", "=1"), "there is no key"},
        {"a long key in quotes", filled("\"", "x", "\"=1"), "there is no key"},
        {"a long decimal", filled("a=1.", "1"), "no key \"a\""},
        {"a long text, not closed", filled("a=\"", "x"), "not closed"},
        {"a long text of several lines, not closed", filled("a=\"\"\"", "x\n"), "not closed"},
        {"a long comment", filled("#", "x"), "[job] is missing"},
        {"comments", filled("", "#\n"), "[job] is missing"},
        {"empty lines", filled("", "\r\n"), "[job] is missing"},
        {"blanks", filled("", " "), "[job] is missing"},
        {"a long number", filled("a=", "1"), "too large"},
        {"long texts", numbered([&](int i) { return fmt::format("k{}=\"{}\"\n", i, x15k); }, 34), "there is no key"},
        {"long escapes", numbered([](int i) { return fmt::format("k{}=\"{}\"\n", i, times(5'000, "\\u00e9")); }, 17),
         "there is no key"},
        {"line ends swallowed", filled("a=\"\"\"", "\\\n", "\"\"\""), "more than 12000 values"},
        {"long keys", numbered([&](int i) { return fmt::format("k{}{}=1\n", i, x15k); }), "there is no key"},
        {"a deep list of many", "a=" + std::string(30, '[') + "\n" + times(11'000, "1,\n") + std::string(30, ']'),
         "there is no key"},
        {"equals signs", filled("", "="), "a key is expected"},
        {"zeros", std::string(kFull, '\0'), "control character"},
        {"one byte too many", std::string(kFull + 1, '\n'), "1048576 at most"},
        {"unknown keys in one circuit",
         "[job]\ncode=\"NEC 2023\"\n[[circuit]]\n" +
             numbered([](int i) { return fmt::format("lenght{}=1\n", i); }, 11'000),
         "there is no panel"},
        {"uses nobody knows",
         "[job]\ncode=\"NEC 2023\"\n" + times(400, "[[circuit]]\nmark=\"A\"\nuse=\"kitchn conter\"\n"),
         "there is no panel"},
        {"members of one group",
         "[job]\ncode=\"NEC 2023\"\n" + times(400, "[[circuit]]\nmark=\"A\"\nmultiwire=\"A\"\nspace=1\n"),
         "there is no panel"},
    };
}

} // namespace

TEST_CASE("no shape of a megabyte crashes the reader or holds it up", "[job][limits]") {
    for (auto const& shape : shapes()) {
        INFO(shape.name);
        auto const begin = std::clock(); // of this process: other work on the machine does not count
        auto const read = read_job(shape.bytes, made::words());
        CHECK(static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC < kMostSeconds);
        REQUIRE_FALSE(read.job);
        REQUIRE(read.problems.size() <= 201);
        CHECK(std::ranges::any_of(
            read.problems, [&](Problem const& p) { return p.message.find(shape.message) != std::string::npos; }));
        CHECK(read.problems.front().fix != "");
    }
}

TEST_CASE("nesting of 32 is read, 33 is not", "[job][limits]") {
    auto const nested = [](std::size_t depth) {
        return "a = " + std::string(depth, '[') + std::string(depth, ']') + "\n";
    };
    auto const told = [&](std::size_t depth) { return made::complaints(nested(depth)).front(); };
    REQUIRE_THAT(told(31), !Contains("deep")); // the key is one level
    REQUIRE_THAT(told(32), Contains("more than 32 deep"));
}

TEST_CASE("a job of 400 circuits on one line each is read", "[job][limits]") {
    auto const text =
        "circuit = [\n" +
        numbered(
            [](int i) {
                return fmt::format("{{ mark = \"C{}\", panel = \"P{}\", name = \"Outlets {}\", breaker = \"15 A\", "
                                   "load = \"100 VA\" }},\n",
                                   i, i % 20, i);
            },
            400) +
        "]\n[job]\ncode = \"NEC 2023\"\n" +
        numbered([](int i) { return fmt::format("[[panel]]\nname = \"P{}\"\nspaces = 84\nsupply = \"120/240\"\n", i); },
                 20);
    auto const job = made::good(text);
    REQUIRE(job.circuits.size() == 400);
    REQUIRE(job.panels.size() == 20);
    REQUIRE_THAT(made::complaints(text + "[[panel]]\n").front(), Contains("there are 21 tables [[panel]], 20 at most"));
}
