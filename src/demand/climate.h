// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Heating and cooling: what counts of each, and the larger of the two where they never run together.
#pragma once

#include "demand/items.h"
#include "demand/steps.h"

namespace legwork {

struct ClimateShares {
    std::int64_t heat_percent = 100;   // of electric heat
    std::int64_t backup_percent = 100; // of electric heat beside a heat pump
    DemandBands separate{};            // of heat that is `separate`, instead of heat_percent: one band or two
    std::function<bool(LoadItem const&)> is_separate{};
    // Of load-service/ in topics.h: heat of which a share counts, whatever else heats, what cools.
    std::string_view topic = "heat", rest_topic = "central-heat", cooling_topic = "cooling";
    // What these add to the total above their figures, where that decides which side is the larger.
    std::function<std::int64_t(LoadItems const&)> more{};
    LoadStep::Kind kind = LoadStep::Kind::counted; // of the last step
};

struct Climate {
    std::int64_t va = 0, other_va = 0; // what counts; the side that does not
    LoadItems counted;                 // those on the side that counts, as listed
    LoadItems left_out;                // on no side, or on the other
    LoadItems heat, cool;
    bool heat_counts = true;
    bool guess_decides = false; // without what common practice gives, the other side would count

    LoadItems const& other_side() const { return heat_counts ? cool : heat; }
    // What each way to heat counts by itself (heat pump with its backup, heat room by room, other heat) where heating
    // is what counts.
    std::vector<std::int64_t> ways_to_heat;
    bool empty = true;
};

bool is_climate(LoadItem const& item);
// It moves air, and what heat it may give besides would count for less at this percent.
bool counts_as_blower(LoadItem const& item, std::int64_t heat_percent);
// Adds the steps. `together` of the dwelling names loads that run at the same time all the same. A blower stands on
// both sides, in full; that of electric heat is inside its figure, and runs with cooling, too.
Climate add_climate(StepList& steps, Building const& building, LoadItems const& items, ClimateShares const& shares);

} // namespace legwork
