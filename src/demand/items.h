// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The loads of a panel and of all below it, each with its figure and its line of the calculation.
#pragma once

#include "codebook/stock/uses.h"
#include "demand/load.h"

#include <functional>

namespace legwork {

struct LoadItem {
    Circuit const* circuit = nullptr;
    Use const* use = nullptr; // null when not known
    Demand demand = Demand::appliance;
    std::int64_t va = 0;
    bool known = false; // by its nameplate; what was only measured has a `va`, which is the least it can be
    Phrase label;       // "Water heater, under stair (WH)"
    Phrase how; // "24 A × 240 V = 5760 VA, of the nameplate's least circuit ampacity"; empty for a load as typed
    bool neutral = false; // its current returns over the neutral, at least in part
    bool motor = false, fixed = false, is_new = false;
    bool blower = false;           // moves the air of heating and of cooling, and heats nothing itself
    std::int64_t blower_va = 0;    // of `va`, what moves the air: all of a blower, at most so much of what heats, too
    bool with_motor_share = false; // by its least circuit ampacity, which holds 125 % of its motor already
    bool elsewhere = false;        // in an outbuilding: not within the floor area of the dwelling

    bool has_figure() const { return known || va > 0; }
    std::vector<std::string> marks() const { return {circuit->mark}; }
};
using LoadItems = std::vector<LoadItem>;

struct Loads {
    LoadItems items;           // what is listed by itself; without those that a device holds back
    LoadItems managed;         // those
    LoadItems other_buildings; // feeders whose load is typed: it was reckoned where they end
    Phrases notes;             // what was left out
};

Loads loads_of(LoadQuestion const& q);

// All that a device holds back, where it stays within the limit: it then counts as if there were no device.
LoadItems managed_in_full(LoadQuestion const& q, Loads const& loads);
// What a device holds back, each no larger than the limit: the largest motor may be among them.
LoadItems managed_within_limit(LoadQuestion const& q, Loads const& loads);

// The circuits of this panel and of those that it feeds, in the file's order; feeders of panels with circuits are left
// out.
std::vector<Circuit const*> circuits_under(Panel const& panel);
// The load of the one dwelling: of its service, or of a feeder that carries all of it, beside other buildings or not.
bool carries_dwelling(Building const& building, Panel const& panel);

LoadItems only(LoadItems const& items, std::function<bool(LoadItem const&)> const& wanted);
LoadItems with_demand(LoadItems const& items, std::initializer_list<Demand> some);
std::int64_t sum_va(LoadItems const& items);
std::vector<std::int64_t> figures(LoadItems const& items);
std::vector<std::string> marks_of(LoadItems const& items);
Phrase labels_of(LoadItems const& items); // "Lights (L1), Outlets (R1)"
// "the load of Range (R1)" of each whose figure is not known.
void add_unknown(Phrases& unknown, LoadItems const& items);

} // namespace legwork
