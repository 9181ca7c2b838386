// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/toml_text.h"

#include <catch2/catch.hpp>

using namespace legwork;

TEST_CASE("a key and its value have places in characters", "[job][toml]") {
    std::string const bytes =
        "\xEF\xBB\xBF# remark\r\n\"\xC3\xBC\xC3\xBC\" = 1 # one\r\n\r\n[[circuit]] # first\r\nmark = \"K1\"\r\n";
    SourceText const source(bytes);
    Complaints out(source);
    auto const root = parse_toml(bytes, out);
    REQUIRE(root);
    auto const place = source.place((*root)[0].value.begin);
    REQUIRE(place.line == 2);
    REQUIRE(place.column == 8);
    auto const& circuit = std::get<TomlArray>(find(*root, "circuit")->is).at(0);
    REQUIRE(source.place(circuit.begin).line == 4);
    REQUIRE(bytes.substr(circuit.begin, circuit.end - circuit.begin) == "[[circuit]]");
}
