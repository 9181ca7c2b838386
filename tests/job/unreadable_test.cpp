// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/made_text.h"

#include "catch.h"
#include <algorithm>
#include <map>
#include <sstream>

using namespace legwork;

namespace {

// What the file itself announces, by line: the text behind each "wrong:" of its remarks.
std::multimap<int, std::string> announced(std::string const& bytes) {
    std::multimap<int, std::string> by_line;
    std::istringstream lines(bytes);
    std::string line;
    for (int number = 1; std::getline(lines, line); ++number) {
        constexpr std::string_view sign = "wrong: ";
        if (line.starts_with("# ")) continue;
        for (auto at = line.find(sign); at != std::string::npos; at = line.find(sign, at)) {
            at += sign.size();
            by_line.emplace(number,
                            line.substr(at, std::min(line.find("; " + std::string(sign), at), line.size()) - at));
        }
    }
    return by_line;
}

} // namespace

TEST_CASE("all mistakes of the unreadable job are told in one run, each on its line", "[job][mistakes]") {
    auto const bytes = made::file("examples/unreadable.toml");
    auto expected = announced(bytes);
    REQUIRE(expected.size() > 90);
    auto const read = read_job(bytes, made::words());
    REQUIRE_FALSE(read.job);
    for (auto const& p : read.problems) {
        auto const [first, last] = expected.equal_range(p.place.line);
        auto const found =
            std::find_if(first, last, [&](auto const& e) { return p.message.find(e.second) != std::string::npos; });
        INFO(render(p, "unreadable.toml"));
        REQUIRE(found != last);
        CHECK(p.fix != "");
        expected.erase(found);
    }
    for (auto const& [line, words] : expected) FAIL("nobody told of line " << line << ": " << words);
}
