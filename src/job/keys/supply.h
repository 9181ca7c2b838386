// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr std::string_view kSupplyWords =
    "120/240|120/208|120 on both legs|120 on one leg|12 V DC|24 V DC|48 V DC";

inline constexpr std::array kSupplyKeys = std::to_array<Key>({
    {.name = "name",
     .takes = Takes::name,
     .example = R"("Grid")",
     .help = "What a panel's list of supplies calls it",
     .needed = true},
    {.name = "kind",
     .takes = Takes::word,
     .example = R"("120/240")",
     .help = "What it brings",
     .words = kSupplyWords,
     .needed = true},
    {.name = "leg",
     .takes = Takes::word,
     .example = R"("A")",
     .help = "The leg that a supply of 120 V on one leg is on",
     .words = "A|B",
     .otherwise = R"("A")"},
    {.name = "amps", .takes = Takes::current, .example = R"("60 A")", .help = "What it can give"},
    {.name = "off",
     .takes = Takes::circuits,
     .example = R"(["WH"])",
     .help = "Circuits switched off by hand on this source"},
});
inline constexpr KeyTable kSupplyTable{"supply", "a supply", "A source, where a building has several, one at a time",
                                       kSupplyKeys};

} // namespace legwork
