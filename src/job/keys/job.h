// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr std::array kJobKeys = std::to_array<Key>({
    {.name = "code",
     .takes = Takes::edition,
     .example = R"("NEC 2023")",
     .help = "The edition of the electrical code that the job is checked against",
     .needed = true},
    {.name = "name",
     .takes = Takes::text,
     .example = R"("Ferry Landing boathouse")",
     .help = "What the building is called; printed on every sheet"},
    {.name = "revision",
     .takes = Takes::text,
     .example = R"("B")",
     .help = "Printed on every sheet; change it with every print that goes on the wall"},
    {.name = "date", .takes = Takes::date, .example = "2026-05-02", .help = "Printed on every sheet"},
    {.name = "language",
     .takes = Takes::word,
     .example = R"("en+fr")",
     .help = "What the sheets speak: English, French, Spanish, or two of them",
     .words = "en|fr|es|en+fr|en+es|fr+en|fr+es|es+en|es+fr",
     .otherwise = R"("en")"},
    {.name = "units",
     .takes = Takes::word,
     .example = R"("inch")",
     .help = "What the sheets show lengths in",
     .words = "metric|inch",
     .otherwise = R"("metric")"},
    {.name = "tails", .takes = Takes::length, .example = R"("1.2 m")", .help = "Cable left hanging at the panel"},
    {.name = "loop", .takes = Takes::length, .example = R"("0.3 m")", .help = "Slack left at each box"},
});
inline constexpr KeyTable kJobTable{"job", "[job]", "The building, and the code it is checked against", kJobKeys};

} // namespace legwork
