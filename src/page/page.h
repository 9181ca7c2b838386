// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A printed page as plain marks in millimetres, from the top left corner, y downwards. What stands where can be asked
// without a PDF; only draw/ turns it into one. So sheets are composed and tested as lists of lines, boxes and texts,
// and all that they have to know of fonts is how wide a text is (text_width.h).
#pragma once

#include <string>
#include <variant>
#include <vector>

namespace legwork {

using Mm = double;

struct Rect {
    Mm x = 0, y = 0, width = 0, height = 0;
    friend bool operator==(Rect const&, Rect const&) = default;
};

enum class Weight { regular, bold };
enum class Align { left, centre, right };

// Ink: a grey from 0 (black) to 1 (white), or a colour of tape or insulation. Colour only repeats what a word says.
struct Ink {
    double red = 0, green = 0, blue = 0;
};
inline constexpr Ink kBlack{};
inline constexpr Ink kWhite{1, 1, 1};
constexpr Ink grey(double lightness) { return {lightness, lightness, lightness}; }

struct Text {
    Mm x = 0, baseline = 0; // x of the left end, the middle or the right end, by `align`
    Mm x_height = 2.5;      // what an eye needs is given, not the body size
    std::string words;
    Weight weight = Weight::regular;
    Align align = Align::left;
    Ink ink = kBlack;
    int turn = 0; // degrees clockwise about (x, baseline): 0, 90, 180, 270
};
struct Line {
    Mm x1 = 0, y1 = 0, x2 = 0, y2 = 0;
    Mm width = 0.15;
    Ink ink = kBlack;
    bool dashed = false;
};
struct Box {
    Mm x = 0, y = 0, width = 0, height = 0;
    Mm line = 0.15; // 0: no outline
    Ink ink = kBlack;
    bool filled = false;
    Ink fill = kWhite;
    Mm radius = 0;
    bool dashed = false;
};
using Mark = std::variant<Text, Line, Box>;

struct Page {
    Mm width = 0, height = 0;
    std::vector<Mark> marks;
};

// A printed document: what a sheet's file is made of.
struct Sheet {
    std::string name;  // "directory", "labels", "tape-notes", "load"
    std::string panel; // empty when it is of the whole job
    std::string title; // for the document's metadata
    std::vector<Page> pages;
    std::vector<std::string> cut{}; // what does not stand on it whole and no rule tells: words for who prints it
};

// One mark a line, in drawing order: what golden files hold.
std::string dump(Page const& page);

} // namespace legwork
