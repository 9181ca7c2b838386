// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/near.h"
#include "toml/problem.h"
#include "units/utf8.h"

#include "catch.h"
#include <rapidcheck.h>

using namespace legwork;

TEST_CASE("a problem prints its place, its line with a caret, and the way out", "[job][problem]") {
    std::string const bytes = "[job]\r\n\tname = \"\xC3\xA9t\xC3\xA9\" x\r\n";
    SourceText const source(bytes);
    auto const p = source.problem(bytes.find('x'), "something stands there", "take it away");
    REQUIRE(p.place.line == 2);
    REQUIRE(p.place.column == 15); // of characters; the byte is the 17th
    REQUIRE(render(p, "job.toml") == "job.toml:2:15: something stands there\n"
                                     "     name = \"\xC3\xA9t\xC3\xA9\" x\n"
                                     "                  ^\n"
                                     "    take it away");
}

TEST_CASE("a long line is shown around its place", "[job][problem]") {
    std::string const bytes = std::string(1000, 'a') + "X" + std::string(1000, 'b');
    SourceText const source(bytes);
    auto const p = source.problem(1000, "m", "");
    REQUIRE(p.place.column == 1001);
    REQUIRE(p.line == "..." + std::string(70, 'a') + "X" + std::string(39, 'b') + "...");
    REQUIRE(p.line[static_cast<std::size_t>(p.caret - 1)] == 'X');
}

TEST_CASE("what cannot be printed is replaced", "[job][problem]") {
    // Source: RFC 3629, section 3: no surrogates, nothing past U+10FFFF, the shortest form only.
    for (std::string const bad : {"\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80", "\xF4\x90\x80\x80", "\xFF", "\xC3"}) {
        REQUIRE(utf8_front(bad).length == 0);
        REQUIRE(first_bad_utf8("ok" + bad) == 2);
        REQUIRE(fit_to_print(bad).starts_with("\xEF\xBF\xBD"));
    }
    REQUIRE(utf8_front("\xF4\x8F\xBF\xBF").code == 0x10FFFF);
    REQUIRE(fit_to_print("a\x1B[31m\tb\x7F") == "a\xEF\xBF\xBD[31m b\xEF\xBF\xBD");
    REQUIRE(fit_to_print("\xE2\x80\xAEgnp") == "\xEF\xBF\xBDgnp"); // a right-to-left override
    REQUIRE(fit_to_print("\xD7\x90\xD7\x91") == "\xD7\x90\xD7\x91");
    REQUIRE(quoted(std::string(50, 'a')) == "\"" + std::string(40, 'a') + "...\"");
}

TEST_CASE("any bytes and any place give a problem that is fit to print", "[job][problem]") {
    REQUIRE(rc::check([](std::string const& bytes, std::size_t at) {
        SourceText const source(bytes);
        auto const p = source.problem(at % (bytes.size() + 2), "m", "f");
        RC_ASSERT(!first_bad_utf8(render(p, "file")));
        RC_ASSERT(p.place.line >= 1);
        RC_ASSERT(p.place.column >= 1);
        RC_ASSERT(p.caret >= 1);
        RC_ASSERT(static_cast<std::size_t>(p.caret) <= character_count(p.line) + 1);
    }));
}

TEST_CASE("after 200 mistakes one line says how many more there are", "[job][problem]") {
    std::string const bytes(5000, '\n');
    SourceText const source(bytes);
    Complaints out(source);
    for (std::size_t i = 0; i < 5000; ++i) out.add(4999 - i, "m", "f");
    auto const problems = out.in_file_order();
    REQUIRE(problems.size() == 201);
    REQUIRE(problems[0].place.line < problems[1].place.line);
    REQUIRE(problems.back().message == "4800 more mistakes in this file");
}

TEST_CASE("the nearest word is a slip of the fingers away", "[job][near]") {
    std::vector<std::string> const keys{"length", "load", "name", "note", "breaker", "poles"};
    REQUIRE(nearest("lenght", keys) == "length");  // swapped
    REQUIRE(nearest("braker", keys) == "breaker"); // missing
    REQUIRE(nearest("Poles", keys) == "poles");
    REQUIRE(nearest("pole", keys) == "poles");
    REQUIRE(nearest("colour", keys).empty());
    REQUIRE(nearest("", keys).empty());
    REQUIRE(nearest(std::string(5000, 'x'), keys).empty());
    REQUIRE(did_you_mean("lenght", keys, "") == "did you mean \"length\"?");
    REQUIRE(did_you_mean("zzz", keys, "") == "write one of: length, load, name, note, breaker, poles");
}
