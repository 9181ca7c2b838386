// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One panel as the optimizer sees it: cells instead of spaces, units instead of circuits, what may stay and what it
// costs to move. Made once from the job; holds no search.
#pragma once

#include "balance/loads.h"
#include "panel/lines.h"

#include <limits>
#include <optional>
#include <string>
#include <vector>

namespace legwork {

// What is placed as one: a one-pole circuit, a two-pole breaker, or the two circuits of a multiwire pair. A pair whose
// other half is in another panel, and any pair on a panel with one live leg, is two singles.
struct Unit {
    enum class Kind { single, two_pole, pair };
    Kind kind = Kind::single;
    int a = -1, b = -1;                  // indices of circuits; b of a pair only, a first in the file
    bool a_here = false, b_here = false; // stands on the panel today (single, two-pole: a)
    // Stays where it is whatever happens: fixed, filed, or on half-size breakers.
    bool held = false;
    bool a_held = false, b_held = false; // one half of a pair is held, the other must come beside it
    // May stay where it is, as a whole; a pair's half may stay and the other come beside it.
    bool home_ok = false, keep_a = false, keep_b = false;
    bool is_block = false;        // home is two neighbouring cells of one line
    int cell_a = -1, cell_b = -1; // today: of a two-pole in line order; of a pair its halves; -1: none

    bool half_held() const { return !held && a_held != b_held; }
    bool is_new() const { return !a_here && !b_here; }
};

struct ModelOptions {
    bool hold_all = false;      // what has a space keeps it, legal or not
    std::vector<int> leave_out; // circuits that get no space
};

struct PanelModel {
    Building const* building = nullptr;
    Panel const* panel = nullptr;
    std::vector<Feed> sources;
    Legs legs = Legs::two;
    std::vector<Circuit const*> circuits;
    std::vector<CircuitLoad> loads;
    std::vector<std::vector<Spot>> today; // slots of each circuit; empty: new
    std::vector<bool> grows;              // typed in on a half; full-size where it stays
    std::vector<std::vector<bool>> reach; // of each circuit by space; empty: anywhere
    std::vector<int> space_of_cell, cell_of_space;
    std::vector<bool> line_end;         // the last cell of its line
    std::vector<bool> wall;             // blocked, dead or held: takes nothing
    std::vector<Leg> leg;               // of a cell
    std::vector<Unit> units;            // in the order of their first circuit
    std::vector<std::size_t> minimised; // situations that count
    // Half-size breakers could be moved or added and are not: what is best here may not be best of all.
    bool halves_left_alone = false;
    // What no layout can cure: fixed circuits that stand illegally. One sentence each.
    std::vector<std::string> contradictions;

    int cells() const { return static_cast<int>(space_of_cell.size()); }
    // Two cells that take a pair.
    bool joined(int upper, int lower) const { return lower == upper + 1 && !line_end[static_cast<std::size_t>(upper)]; }
    bool reaches(int circuit, int cell) const {
        auto const& r = reach[static_cast<std::size_t>(circuit)];
        return r.empty() || r[static_cast<std::size_t>(space_of_cell[static_cast<std::size_t>(cell)])];
    }
    std::string const& mark(int circuit) const { return circuits[static_cast<std::size_t>(circuit)]->mark; }
};

PanelModel panel_model(Building const& building, Panel const& panel, std::map<std::string, LegLoads> const& below,
                       ModelOptions const& options);

// The last step of panel_model() (today.cpp): says of each unit what of today's layout may stay, and puts up the walls
// of what is held.
void judge_today(PanelModel& model, ModelOptions const& options);

// +1: the single, or half a of the pair, is on leg A; -1: on leg B; 0: nothing to choose.
using Signs = std::vector<signed char>;

constexpr int kImpossible = std::numeric_limits<int>::max() / 4;

// Moves of a unit by what becomes of it; kImpossible where it cannot. With sign 0: the cheapest sign of each.
struct UnitMoves {
    int home = kImpossible, keep_a = kImpossible, keep_b = kImpossible, lift = kImpossible;
    int least() const;
};
UnitMoves unit_moves(PanelModel const& model, Unit const& unit, int sign);

} // namespace legwork
