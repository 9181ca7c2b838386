// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit is for, and what that says about it. One table; a new use is one row.
#pragma once

#include "codebook/source.h"

#include <optional>
#include <span>
#include <string_view>

namespace legwork {

enum class Poles { one, two, either };

// Which line of a load calculation a use falls under.
enum class Demand { general, small_appliance, laundry, cooking, dryer, water_heating, tankless, space_heat, cooling,
                    heat_pump, backup_heat, vehicle, pool, appliance, source, none };

struct Use {
    std::string_view name; // as typed in the job
    Poles poles;
    bool continuous; // runs 3 h or more at its load, by use
    bool motor;      // mostly a motor: 125 % rules apply
    bool receptacle; // feeds receptacles that people plug things into
    bool lighting;
    bool heating;   // fixed space heating: its own breaker and wire rules
    bool cooking;   // range, oven, cooktop
    bool dedicated; // wants its own circuit
    bool keep_on;   // harm is done when somebody switches it off unknowing
    bool uses_neutral_at_240; // a two-pole one usually needs a neutral (range, dryer)
    bool source;    // feeds the panel: generator inlet, solar, battery, main
    bool fixed;     // fastened in place (not portable)
    Demand demand;
    std::string_view place; // "kitchen", "bathroom", "outdoor", "garage", "laundry", "" anywhere
    std::string_view words; // space-separated stems that a name must contain for a guess, best first; "" never guessed
};

std::span<Use const> uses();
Use const* use_named(std::string_view name); // null when there is none

} // namespace legwork
