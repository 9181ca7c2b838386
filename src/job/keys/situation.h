// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/key.h"

#include <array>

namespace legwork {

inline constexpr Key kShareOfOneLoad{
    .name = "", .takes = Takes::share, .example = "0.8", .help = "The share of a load"};
inline constexpr KeyTable kShareTable{"situation.share",
                                      "share of a situation",
                                      "The share of each load, by use or by mark; a mark beats a use",
                                      {},
                                      &kShareOfOneLoad};

inline constexpr std::array kSituationKeys = std::to_array<Key>({
    {.name = "name",
     .takes = Takes::name,
     .example = R"("Winter evening")",
     .help = "What the plan calls it; \"connected\", every load at once, is always there",
     .needed = true},
    {.name = "other",
     .takes = Takes::share,
     .example = "0.25",
     .help = "The share of every load that is not named",
     .otherwise = "1"},
    {.name = "share",
     .takes = Takes::shares_of_loads,
     .example = "{ heating = 1.0, K1 = 0.5 }",
     .help = "The share of each load, by use or by mark; a mark beats a use",
     .table = &kShareTable},
    {.name = "supply",
     .takes = Takes::supply,
     .example = R"("Generator")",
     .help = "The supply that feeds the building then"},
});
inline constexpr KeyTable kSituationTable{"situation", "a situation", "What runs together on, say, a winter evening",
                                          kSituationKeys};

} // namespace legwork
