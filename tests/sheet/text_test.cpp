// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "labels_fixture.h"
#include "sheet/common_text.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::sheet_test;

TEST_CASE("fitting: smaller, then more lines, then shortened and said so", "[sheet][text]") {
    EvenWidths const widths; // a bold letter is 1.15 x-heights wide
    auto const fitted = [&](std::string_view words, Mm width, Mm height) {
        return fit(widths, words, Weight::bold, width, height, kNames);
    };
    CHECK(fitted("Range", 50, 4.8).x_height == kNames);
    CHECK(fitted("Range", 5 * 1.15 * 2.0 + 0.1, 4.8).x_height == 2.0);
    auto const two = fitted("Counter, left of sink", 12 * 1.15 * 1.6 + 0.1, 6.4);
    CHECK(two.x_height == kFloor);
    CHECK(two.lines == std::vector<std::string>{"Counter,", "left of sink"});
    CHECK_FALSE(two.shortened);
    auto const cut = fitted("Counter, left of sink", 12 * 1.15 * 1.6 + 0.1, 4);
    CHECK(cut.shortened);
    CHECK(cut.lines == std::vector<std::string>{"Counter, le…"});
}

TEST_CASE("fitting: lines part at spaces, hyphens and slashes that are there", "[sheet][text]") {
    EvenWidths const widths;
    auto const parts = [&](std::string_view words, std::size_t most) {
        return wrapped(widths, words, Weight::regular, 2, 10 * 1.05 * 2 + 0.1, most);
    };
    CHECK(parts("fan-coil and/or pump", 4) == std::vector<std::string>{"fan-coil", "and/or", "pump"});
    CHECK(parts("north-western", 2) == std::vector<std::string>{"north-", "western"});
    CHECK_FALSE(parts("interconnected", 9)); // no machine hyphenates
    CHECK_FALSE(parts("one two three four", 1));
}

TEST_CASE("fitting: a letter is never cut in two", "[sheet][text]") {
    EvenWidths const widths;
    std::string const families =
        "\xf0\x9f\x91\xa9\xe2\x80\x8d\xf0\x9f\x91\xa7 e\xcc\x81 \xc3\xa9"; // joined emoji, e + accent, é
    for (Mm width = 0; width < 30; width += 0.5) {
        auto const words = shortened(widths, families, Weight::regular, 2, width);
        CAPTURE(width, words);
        CHECK(words.find("\xe2\x80\x8d…") == std::string::npos);     // not after the joiner
        CHECK(words.find("\xf0\x9f\x91\xa9…") == std::string::npos); // nor before it
        CHECK(words.find("e…") == std::string::npos);
        CHECK(words.find("\xc3…") == std::string::npos);
    }
}
