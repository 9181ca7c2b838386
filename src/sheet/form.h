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

struct Form {
    std::string name;  // "directory-letter"
    std::string sheet; // "directory", "labels", "tape-notes", "load"
    std::string title; // for `legwork forms`: "US letter, 215.9 x 279.4 mm"
    Mm width = 0, height = 0;
    Mm margin = 10;
    // Of label sheets only (die-cut): a grid of equal labels.
    int columns = 0, rows = 0;
    Mm label_width = 0, label_height = 0, left = 0, top = 0, pitch_x = 0, pitch_y = 0;
};

struct ReadForm {
    std::optional<Form> form;
    std::vector<Problem> problems;
};
ReadForm read_form(std::string_view bytes, std::string_view name);

} // namespace legwork
