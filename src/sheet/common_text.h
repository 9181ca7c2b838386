// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes of text and how words are made to fit: smaller first, then onto more lines, then shortened and said so.
// Never cut by an edge, never over one another.
#pragma once

#include "page/page.h"
#include "page/text_width.h"

#include <array>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// The typographic scale: x-heights in millimetres, each about 1.25 times the one below.
inline constexpr std::array<Mm, 11> kScale{1.6, 2.0, 2.5, 3.1, 3.9, 4.9, 6.1, 7.6, 9.5, 11.9, 14.9};
inline constexpr Mm kFloor = 1.6; // nothing is printed smaller
inline constexpr Mm kDetail = 2.0;
inline constexpr Mm kNames = 2.5;
inline constexpr Mm kTitle = 3.9;

inline constexpr Ink kLighter = grey(0.4); // for what is not a circuit; no text is lighter

// Of the bundled face, from its outlines, a little rounded up. Accented capitals reach 1.75 x-heights; the leading
// leaves them room below a line without descenders.
constexpr Mm cap_height(Mm x_height) { return 1.39 * x_height; }
constexpr Mm ascent(Mm x_height) { return 1.48 * x_height; }
constexpr Mm descent(Mm x_height) { return 0.47 * x_height; }
constexpr Mm leading(Mm x_height) { return 2.1 * x_height; } // baseline to baseline
// From the top of the first capital to the lowest descender.
constexpr Mm block_height(std::size_t lines, Mm x_height) {
    return lines == 0 ? 0 : cap_height(x_height) + static_cast<Mm>(lines - 1) * leading(x_height) + descent(x_height);
}

struct Fitted {
    std::vector<std::string> lines;
    Mm x_height = kFloor;
    bool shortened = false; // the last line ends with "…": say so in a finding
};

// Breaks at spaces, and after "-" and "/" inside a word but not between digits, into lines no wider than `width`;
// nothing when they would be more than `most`, or a piece alone is too wide.
std::optional<std::vector<std::string>> wrapped(TextWidth const& widths, std::string_view words, Weight weight,
                                                Mm x_height, Mm width, std::size_t most);

// As many lines as it takes: nothing is left out, and a word wider than a line goes on in the next.
std::vector<std::string> wrapped_whole(TextWidth const& widths, std::string_view words, Weight weight, Mm x_height,
                                       Mm width);

// The words, or as many of them as fit with an ellipsis behind.
std::string shortened(TextWidth const& widths, std::string_view words, Weight weight, Mm x_height, Mm width);

// The largest step of the scale from `largest` down to `smallest` at which the words fit into width x height
// (block_height), in as few lines as that size needs. Where none does they are shortened at `smallest`.
Fitted fit(TextWidth const& widths, std::string_view words, Weight weight, Mm width, Mm height, Mm largest,
           Mm smallest = kFloor);

// The same on one line: only the width counts.
Fitted fit_line(TextWidth const& widths, std::string_view words, Weight weight, Mm width, Mm largest,
                Mm smallest = kFloor);

// fit() and wrapped() take no more lines than that, whatever the face; infinite with letters that are not usual ones.
double most_lines(std::string_view words, Mm x_height, Mm width);

// As the line that it is alone: with a capital.
std::string capital(std::string words);

} // namespace legwork
