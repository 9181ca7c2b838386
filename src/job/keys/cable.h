// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr std::string_view kWirePlaceWords = "dry|damp|wet|outdoors|buried"; // as WirePlace behind `unsaid`

inline constexpr std::array kCableKeys = std::to_array<Key>({
    {.name = "mark",
     .takes = Takes::mark,
     .example = R"("S1")",
     .help = "The short name on its labels, for good: 1 to 8 of A-Z, a-z, 0-9 and -",
     .needed = true},
    {.name = "name", .takes = Takes::text, .example = R"("Dock camera")", .help = "What it is for"},
    {.name = "kind", .takes = Takes::cable, .example = R"("cat6")", .help = "What it is"},
    {.name = "from", .takes = Takes::text, .example = R"("Network shelf")", .help = "The box or place it begins at"},
    {.name = "to", .takes = Takes::text, .example = R"("Camera, dock")", .help = "The box or place it ends at"},
    {.name = "length", .takes = Takes::length, .example = R"("11 m")", .help = "How long it is"},
    {.name = "carries",
     .takes = Takes::circuits,
     .example = R"(["K1"])",
     .help = "The circuits of this piece, by their marks"},
    {.name = "role",
     .takes = Takes::word,
     .example = R"("on to")",
     .help = "What this piece of a circuit's wiring does",
     .words = "feed|on to|switch leg|travellers|line|load"},
    {.name = "where",
     .takes = Takes::word,
     .example = R"("wet")",
     .help = "Where it runs",
     .words = kWirePlaceWords,
     .otherwise = R"("dry")"},
});
inline constexpr KeyTable kCableTable{"cable", "a cable", "A cable that is no circuit's home run", kCableKeys};

} // namespace legwork
