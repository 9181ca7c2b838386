// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every key of a form file: a new key is a row here.
#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr int kLeastPage = 50, kGreatestPage = 1200; // mm

inline constexpr std::array kFormKeys = std::to_array<Key>({
    {.name = "sheet",
     .takes = Takes::word,
     .example = R"("directory")",
     .help = "The sheet that is printed on it",
     .words = "directory|labels|tape-notes|load",
     .needed = true},
    {.name = "title",
     .takes = Takes::name,
     .example = R"("A4, 210 x 297 mm")",
     .help = "What legwork forms says of it",
     .needed = true},
    {.name = "width",
     .takes = Takes::millimetres,
     .example = "210",
     .help = "Of the page",
     .least = kLeastPage,
     .most = kGreatestPage,
     .needed = true},
    {.name = "height",
     .takes = Takes::millimetres,
     .example = "297",
     .help = "Of the page",
     .least = kLeastPage,
     .most = kGreatestPage,
     .needed = true},
    {.name = "margin",
     .takes = Takes::millimetres,
     .example = "5",
     .help = "Along the paper's edges: what many printers do not reach",
     .most = 50,
     .otherwise = "10"},
    {.name = "columns",
     .takes = Takes::number,
     .example = "3",
     .help = "Labels across the page; needed for labels, as rows, label_width and label_height",
     .least = 1,
     .most = 50},
    {.name = "rows", .takes = Takes::number, .example = "8", .help = "Labels down the page", .least = 1, .most = 100},
    {.name = "label_width",
     .takes = Takes::millimetres,
     .example = "63.5",
     .help = "Of one label",
     .least = 5,
     .most = kGreatestPage},
    {.name = "label_height",
     .takes = Takes::millimetres,
     .example = "33.9",
     .help = "Of one label",
     .least = 5,
     .most = kGreatestPage},
    {.name = "left",
     .takes = Takes::millimetres,
     .example = "7.2",
     .help = "From the paper's left edge to the first label",
     .most = kGreatestPage,
     .otherwise = "0"},
    {.name = "top",
     .takes = Takes::millimetres,
     .example = "12.9",
     .help = "From the paper's top edge to the first label",
     .most = kGreatestPage,
     .otherwise = "0"},
    {.name = "pitch_x",
     .takes = Takes::millimetres,
     .example = "66.05",
     .help = "From one label's left edge to the next one's",
     .most = kGreatestPage,
     .otherwise = "label_width"},
    {.name = "pitch_y",
     .takes = Takes::millimetres,
     .example = "33.9",
     .help = "From one label's top edge to the next one's",
     .most = kGreatestPage,
     .otherwise = "label_height"},
});
inline constexpr KeyTable kFormTable{"form", "the form", "A form file: the page that a sheet is printed on", kFormKeys};

} // namespace legwork
