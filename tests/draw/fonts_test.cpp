// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/draw.h"
#include "picture.h"
#include "source_folder.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <filesystem>
#include <fstream>

using namespace legwork;

namespace {

Fonts const& fonts() {
    static Fonts const made(in_sources("fonts"));
    return made;
}

struct Inked {
    int width = 0, height = 0;
    std::vector<bool> dots; // row by row
    bool operator==(Inked const&) const = default;
};

// The darker half of the letters' ink, cropped to it.
Inked picture(std::string const& words, Weight weight, double dots_per_inch, Mm x_height) {
    Page page{60, 30, {Text{10, 20, x_height, words, weight}}};
    auto const seen = draw_test::read_png(draw_png(page, fonts(), dots_per_inch));
    int left = seen.width, top = seen.height, right = -1, bottom = -1;
    for (int y = 0; y < seen.height; ++y)
        for (int x = 0; x < seen.width; ++x)
            if (seen.at(x, y) < 128) {
                left = std::min(left, x), right = std::max(right, x);
                top = std::min(top, y), bottom = std::max(bottom, y);
            }
    Inked ink{right - left + 1, bottom - top + 1, {}};
    for (int y = top; y <= bottom; ++y)
        for (int x = left; x <= right; ++x) ink.dots.push_back(seen.at(x, y) < 128);
    return ink;
}

} // namespace

TEST_CASE("fonts: an x is as high as asked", "[draw][fonts]") {
    // Seen by the picture itself: 2.5 mm at 600 dots per inch are 59 dots. Optical overshoot of the face: 2 %.
    for (Mm const x_height : {1.6, 2.5, 4.9}) {
        CAPTURE(x_height);
        CHECK(picture("x", Weight::regular, 600, x_height).height == Approx(x_height / 25.4 * 600).epsilon(0.04));
    }
}

TEST_CASE("fonts: 0 and O, 1, l and I look different, in both weights", "[draw][fonts]") {
    for (Weight const weight : {Weight::regular, Weight::bold}) {
        auto const shape = [&](std::string const& letter) { return picture(letter, weight, 600, 2.5); };
        auto const zero = shape("0"), o = shape("O");
        CHECK(o.width > zero.width * 1.15); // O is round, 0 narrow
        auto const one = shape("1"), l = shape("l"), i = shape("I");
        CHECK_FALSE(one == l);
        CHECK_FALSE(l == i);
        CHECK_FALSE(one == i);
        // l has a tail, 1 a foot: both wider than the bare stem of I.
        CHECK(l.width > i.width * 1.5);
        CHECK(one.width > i.width * 1.5);
        CHECK_FALSE(shape("5") == shape("S"));
        CHECK_FALSE(shape("8") == shape("B"));
    }
}

TEST_CASE("fonts: all figures are as wide as one another, and bold is wider inked, not wider set", "[draw][fonts]") {
    for (Weight const weight : {Weight::regular, Weight::bold}) {
        Mm const zero = fonts().width("0", 2.5, weight);
        for (char const digit : {'1', '2', '3', '4', '5', '6', '7', '8', '9'})
            CHECK(fonts().width(std::string(1, digit), 2.5, weight) == Approx(zero));
    }
}

TEST_CASE("fonts: widths grow with the size and add up", "[draw][fonts]") {
    auto const width = [](std::string_view words, Mm x_height) { return fonts().width(words, x_height, Weight::bold); };
    CHECK(width("", 2.5) == 0);
    CHECK(width("Range", 5.0) == Approx(2 * width("Range", 2.5)));
    CHECK(width("Range", 2.5) > width("Rang", 2.5));
    CHECK(width("20 A", 2.5) ==
          Approx(width("20", 2.5) + width(" ", 2.5) + width("A", 2.5)).epsilon(0.02)); // but kerning
}

TEST_CASE("fonts: French, Spanish and the signs of the sheets are in the bundled face", "[draw][fonts]") {
    // A folder with the bundled face alone would find the rest on the machine; so the widths must not move either.
    std::string const letters = "àâäçéèêëîïôöùûüÿœæÀÂÄÇÉÈÊËÎÏÔÖÙÛÜŸŒÆñáíóúÑÁÍÓÚ¿¡«»’‘“”…–·→½°²×&<>'\"";
    CHECK(fonts().missing(letters).empty());
}

TEST_CASE("fonts: letters that no face has are told, each once", "[draw][fonts]") {
    // U+0378 and U+0379 are assigned to no letter (Unicode 15), so no typeface has them.
    CHECK(fonts().missing("Range \xcd\xb8 and \xcd\xb9 and \xcd\xb8") ==
          std::vector<std::string>{"\xcd\xb8", "\xcd\xb9"});
    CHECK(fonts().missing("Range").empty());
    CHECK(fonts().missing("").empty());
}

TEST_CASE("fonts: control characters and broken bytes take no letter away", "[draw][fonts]") {
    CHECK(fonts().width("a\nb", 2.5, Weight::regular) == Approx(fonts().width("a b", 2.5, Weight::regular)));
    CHECK(fonts().width(std::string("a\0b", 3), 2.5, Weight::regular) > fonts().width("ab", 2.5, Weight::regular));
    CHECK(fonts().width("\xff\xfe", 2.5, Weight::regular) > 0);
}

TEST_CASE("fonts: a folder without a typeface is a failure with a way out", "[draw][fonts]") {
    CHECK_THROWS_AS(Fonts(in_sources("src/page")), Failure);
    CHECK_THROWS_WITH(Fonts("/nowhere"), Contains("/nowhere") && Contains("install"));
}

TEST_CASE("fonts: each bundled face is there, or it is told which is not", "[draw][fonts]") {
    // Else the words of the missing weight would be set in another face.
    TemporaryFolder const folder;
    std::filesystem::copy_file(in_sources("fonts/B612-Regular.otf"), folder / "B612-Regular.otf");
    REQUIRE_NOTHROW(Fonts(folder.path()));
    std::ofstream(folder / "B612-Bold.otf") << "no typeface";
    REQUIRE_THROWS_WITH(Fonts(folder.path()), Contains("B612-Bold.otf: it is damaged"));
    std::filesystem::remove(folder / "B612-Bold.otf");
    std::filesystem::create_symlink("nowhere", folder / "B612-Bold.otf");
    REQUIRE_THROWS_WITH(Fonts(folder.path()), Contains("B612-Bold.otf: No such file or directory"));
    REQUIRE_THROWS_WITH(Fonts(folder / "none"), Contains("No such file or directory"));
}
