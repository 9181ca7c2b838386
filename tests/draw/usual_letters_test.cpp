// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The table of letters that are judged without a typeface, against the typefaces themselves.

#include "page/usual_letters.h"
#include "source_folder.h"

#include "draw/draw.h"

#include "catch.h"

#include <cmath>
#include <random>

using namespace legwork;

namespace {

Fonts const& fonts() {
    static Fonts const made(in_sources("fonts"));
    return made;
}

std::string utf8(unsigned c) {
    auto const byte = [](unsigned b) { return static_cast<char>(b); };
    if (c < 0x80) return {byte(c)};
    if (c < 0x800) return {byte(0xC0 | c >> 6), byte(0x80 | (c & 0x3F))};
    if (c < 0x10000) return {byte(0xE0 | c >> 12), byte(0x80 | (c >> 6 & 0x3F)), byte(0x80 | (c & 0x3F))};
    return {byte(0xF0 | c >> 18), byte(0x80 | (c >> 12 & 0x3F)), byte(0x80 | (c >> 6 & 0x3F)), byte(0x80 | (c & 0x3F))};
}

std::vector<std::string> usual() {
    std::vector<std::string> letters;
    for (unsigned c = 0; c < 0x30000; ++c) {
        if (c >= 0xD800 && c < 0xE000) continue;
        if (auto letter = utf8(c); UsualLetters().missing(letter).empty()) letters.push_back(std::move(letter));
    }
    return letters;
}

} // namespace

TEST_CASE("usual letters: the bundled faces have each, and none is wider than told", "[draw][usual-letters]") {
    UsualLetters const bound;
    auto const letters = usual();
    CHECK(letters.size() > 0x5F + 0xDF); // ASCII, and Latin up to U+017F
    for (auto const weight : {Weight::regular, Weight::bold})
        for (auto const& letter : letters) {
            CAPTURE(letter);
            CHECK(fonts().missing(letter).empty());
            CHECK(fonts().width(letter, 1, weight) <= bound.width(letter, 1, weight));
            CHECK(std::isfinite(bound.width(letter, 1, weight)));
        }
}

// Kerning is between two letters, so pairs are all there is to it.
TEST_CASE("usual letters: no pair of them is wider than its two", "[draw][usual-letters]") {
    UsualLetters const bound;
    auto const letters = usual();
    std::string wider;
    for (auto const weight : {Weight::regular, Weight::bold})
        for (auto const& first : letters)
            for (auto const& second : letters)
                if (auto const both = first + second; fonts().width(both, 1, weight) > bound.width(both, 1, weight))
                    wider += both + " ";
    CHECK(wider.empty());
}

TEST_CASE("usual letters: no random line of them is wider than told", "[draw][usual-letters]") {
    UsualLetters const bound;
    auto const letters = usual();
    std::mt19937 random(7);
    for (int n = 0; n < 3000; ++n) {
        std::string words;
        std::size_t const few = n % 2 == 0 ? 95 : letters.size(); // half of them of ASCII alone
        for (auto length = 1 + random() % 80; length > 0; --length) words += letters[random() % few];
        CAPTURE(words);
        auto const weight = random() % 2 == 0 ? Weight::regular : Weight::bold;
        Mm const x_height = 1.6 + 0.1 * static_cast<Mm>(random() % 20);
        REQUIRE(fonts().width(words, x_height, weight) <= bound.width(words, x_height, weight));
    }
}

TEST_CASE("usual letters: others are told, whole or broken", "[draw][usual-letters]") {
    UsualLetters const bound;
    CHECK(bound.missing("Cuisine, plancher chauffé – 2ᵉ étage") == std::vector<std::string>{"ᵉ"});
    CHECK(bound.missing("Ω α Ω") == std::vector<std::string>{"Ω", "α"});
    CHECK(bound.missing("\xf0\x9f\x92\xa1") == std::vector<std::string>{"\xf0\x9f\x92\xa1"});
    for (std::string const broken : {"\xff", "a\xc3", "\x80\x80", "\xe2\x80", "\n", "soft\xc2\xadhyphen"}) {
        CAPTURE(broken);
        CHECK_FALSE(bound.missing(broken).empty());
        CHECK(std::isinf(bound.width(broken, 2, Weight::regular)));
    }
    CHECK(bound.width("", 2, Weight::bold) == 0);
}
