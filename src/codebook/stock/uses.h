// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit is for, and what that says about it. One table; a new use is one row.
#pragma once

#include "codebook/source.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class Poles { one, two, either }; // one: 120 V; two: 240 V (or 208 V)

// Which line of a load calculation a use falls under.
enum class Demand {
    general,
    small_appliance,
    laundry,
    cooking,
    dryer,
    water_heating,
    tankless,
    space_heat,
    cooling,
    heat_pump,
    backup_heat,
    vehicle,
    pool,
    appliance,
    source,
    none
};

// Part of the wiring itself and no load.
enum class PanelPart { none, main, feeder, spare, surge_protector, generator_inlet };

// Where in a home it stands by its nature.
enum class UsePlace { anywhere, kitchen, bathroom, outdoor, garage, laundry, attic };
std::string_view name(UsePlace place); // "anywhere", "kitchen"

struct Use {
    std::string_view name; // as typed in the job
    Poles poles = Poles::either;
    Demand demand = Demand::general;
    UsePlace place = UsePlace::anywhere;
    std::string_view usual_receptacle{}; // of 240 V, where nearly all are of one type (NEMA name)
    bool unspecific = false;             // stands for whatever no other use names
    bool all_over = false;               // in every part of a home
    bool shop = false;                   // in a workshop, where nothing says where
    bool continuous = false;             // runs 3 h or more at its load, by use (lighting: the book decides)
    bool intermittent = false;           // known not to: cooking, dryers, tools, what is plugged into receptacles
    bool motor = false;                  // mostly a motor: 125 % rules apply
    bool duty_cycle = false;             // a welder: its breaker may be larger than its wire
    bool receptacle = false;             // feeds receptacles that people plug things into
    bool lighting = false;
    bool heating = false;       // fixed resistance space heating: its own breaker and wire rules
    bool moves_air = false;     // a small one is the blower of a fuel furnace or of coils: it runs with cooling too
    bool room_by_room = false;  // heats the room it stands in, by a thermostat there
    bool branch_demand = false; // a whole range: its circuit is reckoned at a demand below the nameplate
    bool cooking = false;       // range, oven, cooktop
    bool dedicated = false;     // wants its own circuit
    bool keep_on = false;       // harm is done when somebody switches it off unknowing
    bool uses_neutral_at_240 = false; // a two-pole one needs a neutral unless its outlet says otherwise (range, dryer)
    bool may_use_neutral_at_240 = false; // some makes do (hot tub, cooktop): a white that is there is theirs
    bool source = false;                 // feeds the panel: generator inlet, solar, battery, main
    bool interactive = false;            // of those, one that runs beside the grid (solar, battery)
    bool fixed = false;                  // fastened in place (not portable)
    PanelPart part = PanelPart::none;
};

std::span<Use const> uses();
Use const* use_named(std::string_view name); // null when there is none
std::vector<std::string> use_names();

// The use that a circuit's name proposes, helped by its room; empty when none, or when every one that the words
// propose contradicts the number of poles or the receptacle types (NEMA names, unknown ones are ignored).
std::string guess_use(std::string_view name, std::string_view room, int poles, std::vector<std::string> const& outlets);

// The name says receptacles, whatever else: "Lights and plugs".
bool names_receptacles(std::string_view name);

} // namespace legwork
