// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Panels and runs as the NEC has them from 2017 to 2023.
#pragma once

#include "codebook/backfeed.h"
#include "codebook/demands.h"
#include "codebook/drop_limits.h"
#include "codebook/outbuilding.h"

namespace legwork::nec {

using namespace how_read;

// 2017 705.12(B)(2)(3), 2020 705.12(B)(3), 2023 705.12(B): read on trade pages; the sum of all breakers in a text of
// 2017 ((c) there), of the others on one page each.
constexpr BackfeedTable backfeed_by(Source all_breakers) {
    return {.bus_percent = {120, seen},
            .dwelling_bus_percent = {120, seen},
            .output_percent = Figure{125, seen},
            .all_breakers = all_breakers};
}

inline constexpr DropLimits kDropLimits{
    .part_percent = {3, seen},
    .total_percent = {5, seen},
    .unknown_percent = {80, practice},
    .demanded = false,
    .dwelling_lengths = {},
};

inline constexpr Demands kDemands{
    .every_pair_off_together = true, .tied_singles_count = true, .names_outlive_people = true, .up_is_on = true};

// `feeders` of one panel whose disconnects stand together may supply one building.
constexpr OutbuildingSupplies outbuilding(Figure feeders) {
    return {.one_only = true, .feeders_from_one_panel = feeders, .other_volts = {2, seen}};
}

} // namespace legwork::nec
