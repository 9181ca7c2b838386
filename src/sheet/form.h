// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The geometry a sheet is printed on: a TOML file in templates/, or the user's own.
#pragma once

#include "page/page.h"
#include "toml/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

inline constexpr Mm kDieClear = 1.5; // from text to the die cut, or to a line that scissors follow

struct Form {
    std::string name;         // "directory-letter"
    std::string sheet;        // "directory", "labels", "tape-notes", "load"
    std::string title;        // for `legwork forms`: "US letter, 215.9 x 279.4 mm"
    Mm width = 0, height = 0; // of the page; no height: a roll, whose page is as long as what stands on it
    Mm margin = 10;           // along the paper's edges; of a roll along its sides
    // Of label sheets only: a grid of equal labels, which cells.h turns into places. Of a roll, the most rows on a
    // page.
    int columns = 0, rows = 0;
    Mm label_width = 0, label_height = 0, left = 0, top = 0, pitch_x = 0, pitch_y = 0;
    int turn = 0;             // degrees clockwise that labels are read: 0, 90, 180, 270
    std::optional<Mm> fold{}; // of a flag, from the left edge as it is read: both parts carry the face
    Mm tail = 0;              // clear film below the print, as it is read
    Mm inset = kDieClear;     // from text to the die cut and to the fold
    std::vector<int> skip{};  // labels that are not printed on, counted from 1 as read across the page
    std::string file{};       // a person's own; empty for one that comes with the program

    bool is_roll() const { return height == 0; }
};

struct ReadForm {
    std::optional<Form> form;
    std::vector<Problem> problems;
};
ReadForm read_form(std::string_view bytes, std::string_view name);

} // namespace legwork
