// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the shells' scripts ask; completions_test.py types into the shells themselves.

#include "calls.h"
#include "cli/call/bash_line.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"

using Words = std::vector<std::string>;

namespace {

constexpr auto kBreaks = " \t\n\"'@><=;|&(:";

} // namespace

TEST_CASE("a question for completions never fails, whatever it is", "[cli][complete]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "broken.toml", "[[panel]\nname = ");
    legwork::write_file(folder / "bytes.toml", std::string("\xff\xfe\0\x01", 4));
    for (auto const& words : std::vector<Words>{
             {},
             {"bash"},
             {"bash", kBreaks},
             {"bash", kBreaks, ""},
             {"bash", kBreaks, "legwork"},
             {"bash", "", "legwork check \\"},
             {"bash", kBreaks, "legwork check '"},
             {"bash", kBreaks, "legwork no-such --x="},
             {"bash", kBreaks, "legwork load " + (folder / "broken.toml") + " --panel "},
             {"zsh"},
             {"zsh", ""},
             {"zsh", "load", folder / "broken.toml", "--panel", ""},
             {"zsh", "load", folder / "bytes.toml", "--panel", ""},
             {"fish", "load", folder.path(), "--panel", ""},
             {"fish", "check", "--by=", "--=", "=", "--rule", "--rule", "--"},
             {"fish", "explain", "--table", "--"},
             {"elvish", "check", ""},
         }) {
        CAPTURE(words);
        Words asked{"__complete"};
        asked.insert(asked.end(), words.begin(), words.end());
        auto const called = call(asked);
        REQUIRE(called.status == 0);
        REQUIRE(called.err.empty());
    }
}

TEST_CASE("the way in for the shells stands in no help", "[cli][complete]") {
    REQUIRE_THAT(call({"--help"}).out, !Contains("__complete"));
    REQUIRE_THAT(call({"__complet"}).err, !Contains("__complete"));
    REQUIRE_THAT(call({"__complete", "fish", "__"}).out, !Contains("__complete"));
}

TEST_CASE("a line of bash is taken apart as bash does", "[cli][complete]") {
    auto const [line, words, part, kept, quote] = GENERATE(table<std::string, Words, std::string, std::size_t, char>({
        {"legwork check --by=ci", {"legwork", "check"}, "--by=ci", 5, '\0'},
        {"legwork check ", {"legwork", "check"}, "", 0, '\0'},
        {"a\\ b 'c d' \"e\\\"f\" ", {"a b", "c d", "e\"f"}, "", 0, '\0'},
        {"x --panel \"Main p", {"x", "--panel"}, "Main p", 0, '"'},
        {"x --panel=\"Main p", {"x"}, "--panel=Main p", 8, '"'},
        {"x --panel=Main\\ p", {"x"}, "--panel=Main p", 8, '\0'},
        {"x 'it", {"x"}, "it", 0, '\''},
        {"x \"\" ", {"x", ""}, "", 0, '\0'},
        {"x A\\:b:c", {"x"}, "A:b:c", 4, '\0'},
    }));
    CAPTURE(line);
    auto const read = legwork::read_bash_line(kBreaks, line);
    REQUIRE(read.words == words);
    REQUIRE(read.part == part);
    REQUIRE(read.kept == kept);
    REQUIRE(read.quote == quote);
}

TEST_CASE("names are put on a line of bash so that they stand for themselves", "[cli][complete]") {
    std::string const name = "Büro's \"new\" $1 `x` \\";
    REQUIRE(legwork::bash_quoted(name, '\0') == "Büro\\'s\\ \\\"new\\\"\\ \\$1\\ \\`x\\`\\ \\\\");
    REQUIRE(legwork::bash_quoted(name, '"') == "Büro's \\\"new\\\" \\$1 \\`x\\` \\\\");
    REQUIRE(legwork::bash_quoted(name, '\'') == "Büro'\\''s \"new\" $1 `x` \\");
}
