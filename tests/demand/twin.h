// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A second reckoning of every load calculation, straight down the page as the rules tell it and without any of the
// program's own: its table of uses, its factors, its arithmetic. Nothing here is shared with src/demand or with the
// tables of src/codebook; where the two differ one of them is wrong.
#pragma once

#include "job/job.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace twin {

using namespace legwork;
using Va = std::int64_t;

enum class Kind { light, kitchen, laundry, appliance, full, cooking, dryer, heat, pump, backup, cool, vehicle };

// A load as the twin sees it.
struct Load {
    typed::Circuit const* circuit = nullptr;
    Kind kind = Kind::appliance;
    std::string use;
    Va va = 0;
    bool known = false;
    bool neutral = false, motor = false, fixed = false, is_new = false;
    bool has_quarter = false;             // a nameplate's least circuit ampacity: 125 % of the motor is in it
    bool lasts = false, presumed = false; // continuous: said or by use; by the CE Code's presumption
    bool elsewhere = false;               // in an outbuilding
    bool moves_air = false;               // a furnace or air handler
    bool blows = false;                   // a furnace too small to heat: its fan, in winter and summer alike
};
using Loads = std::vector<Load>;

// All that a reckoning starts from.
struct House {
    typed::Job const* job = nullptr;
    typed::Panel const* panel = nullptr;
    bool nec = true;
    int year = 2023;
    Va volts = 240;
    bool two_hots = true, wye = false;
    bool whole = false; // the panel carries all of one dwelling
    Loads loads, held;  // `held` by energy management
    Loads beyond;       // feeders whose load is typed: reckoned where they end, so in full
};

// A panel's own supply or that of the panel above it; one source only.
House house(typed::Job const& job, typed::Panel const& panel);

struct Answer {
    Va total = 0;
    std::optional<Va> neutral;
    bool unknown = false; // something is missing: the total is too small
};
Va beyond_va(House const& h, bool new_only);
Answer standard(House const& h);
Answer optional(House const& h);
Answer existing(House const& h);
Answer measured(House const& h);

// Shared by the rules.
Va part(Va va, Va percent); // half a VA and more is one
Va sum(Loads const& loads);
bool unknown(Loads const& loads);
template <class Test>
Loads those(Loads const& loads, Test test) {
    Loads some;
    for (Load const& l : loads)
        if (test(l)) some.push_back(l);
    return some;
}
Loads of(Loads const& loads, std::initializer_list<Kind> kinds);
Va held_va(House const& h); // what counts of what a device holds back
bool holds(House const& h); // the device takes something off

// Heating and cooling: what counts, and each side.
struct Season {
    Va va = 0, winter_va = 0;
    Loads counted, left_out, winter, summer;
};
struct HeatShares {
    Va rooms = 100, rest = 100, backup = 100; // percent
    bool (*is_room)(House const&, Load const&) = nullptr;
    bool bands = false; // CE: rooms at 100 % up to 10 kW, then 75 %
};
Season season(House const& h, Loads const& loads, HeatShares const& shares);
void take(Season& s, bool winter, Loads const& climate); // this side counts, whichever is larger

Va demand_of_cooking(std::vector<Va> const& nameplates);
Answer listed(House const& h);

} // namespace twin
