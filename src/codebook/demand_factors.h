// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How much of what is connected counts for a service or feeder. A code that does not know a method has no table for it.
// Sections: load-service/ of topics.h. The table of cooking appliances: cooking_factors.h.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

// A slice of a load, from the end of the one before, and the percent of it that counts.
struct DemandBand {
    std::int64_t up_to_va; // 0: whatever is left
    std::int64_t percent;
    Source source;
};
using DemandBands = std::span<DemandBand const>;

// The minimum that a service of a dwelling is given, whatever its load.
struct ServiceFloor {
    Figure amps;
    std::optional<Figure> large_from_m2, large_amps; // from this floor area on, without the basement
    bool is_load;    // a load to be reckoned with; else the least rating of the disconnect alone
    bool of_feeders; // of a feeder that carries all of the dwelling too
};

// What the largest motor adds.
struct MotorLoads {
    Figure percent;                 // of its figure
    std::optional<Source> left_out; // one that is left out, since heat or another load never runs with it, counts too;
                                    // how the words are read is argued
};

// Percent of a number of dryers that counts: by rows from one on, then one less for each more.
struct DryerTable {
    std::span<Figure const> rows;
    int last; // it goes lower from here on, which no building of ours has
    Source beyond_rows;
};
Figure dryer_percent(DryerTable const& table, int dryers);
struct CookingTable; // cooking_factors.h

// How a floor is measured: inside, all storeys but the basement; or outside, without garage, open porches and what
// cannot be finished.
enum class FloorBy { inside, outside };

// A dwelling by its floor and its circuits, step by step (NEC Article 220, Part III).
struct FloorLoads {
    Figure va_per_ft2, va_per_m2;
    FloorBy area_by;
    Figure small_appliance_va, small_appliance_least; // of each circuit; so many are counted at least
    Figure laundry_va, laundry_least;
    DemandBands bands; // of these together
    Figure fixed_from, fixed_least_va,
        fixed_percent; // so many appliances fastened in place, each of at least so many VA
    Figure dryer_least_va;
    DryerTable const& dryers;
    CookingTable const& cooking;
    std::optional<Figure> vehicle_least_va;
    MotorLoads motor;
};

// The neutral of the same (NEC 220.61).
struct NeutralLoads {
    Figure appliance_percent;         // of cooking and dryers
    Figure above_amps, above_percent; // of what is above
};

// A new dwelling as a whole (NEC 220.82).
struct OptionalLoads {
    Figure least_amps; // of the service or feeder
    DemandBands bands;
    Figure heat_percent, many_heat_percent, many_from; // rooms controlled by themselves from which on the second holds
    Figure backup_percent;                             // of electric heat beside a heat pump
};

// Adding to an existing dwelling (NEC 220.83).
struct ExistingLoads {
    DemandBands bands;
};

// Adding to a service whose peak is known (NEC 220.87, CE 8-106(8)).
struct PeakLoads {
    Figure percent; // of the peak
    Figure year_days;
    std::optional<Figure> recorded_days; // that will do with a recorder where a year's peak is not known
};

// A dwelling by blocks of floor area (CE 8-200).
struct BlockLoads {
    Figure first_m2, first_w, block_m2, block_w;
    FloorBy area_by;
    Figure basement_percent;
    Figure range_w, range_up_to_w, range_excess_percent;
    Figure small_up_to_w; // a load up to this is within the blocks
    Figure others_with_range_percent;
    DemandBands others;        // without a range
    DemandBands separate_heat; // each room controlled by itself
};

// Any other building, and a panel that feeds a part of one: what is listed.
struct ListedLoads {
    Figure continuous_percent;       // of continuous loads
    std::optional<Figure> outlet_va; // of each outlet for whatever is plugged in, at least
    DemandBands outlets;
    MotorLoads motor;
};

struct DemandFactors {
    ServiceFloor floor;
    std::optional<FloorLoads> by_floor;
    std::optional<NeutralLoads> neutral;
    std::optional<OptionalLoads> optional;
    std::optional<ExistingLoads> existing;
    PeakLoads peak;
    std::optional<BlockLoads> by_blocks;
    ListedLoads listed;
    bool drops_half_amps;         // a fraction under half an ampere is left out
    bool managed_counts_at_limit; // loads that a device holds back count at its limit
};
inline DemandFactors const& demand_factors(CodeBook const& book) { return book.demand_factors.table(); }

} // namespace legwork
