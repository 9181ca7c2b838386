// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The pass of line_room.h along the lines of one case.
#pragma once

#include "balance/seats/line_room.h"

#include <cstdint>

namespace legwork {

// What a unit's fates cost: 1000 a move, 1 for the second conductor of a two-pole breaker.
struct FateCost {
    int home, keep_a, keep_b, lift;
    int of(Fate f) const;
};
constexpr int kNoWay = 1'000'000'000;
constexpr int kMoveCost = 1000;

// What one cell's singles may do, and what that costs.
struct CellOption {
    int cost = 0, on_a = 0;
    int stays = -1;                                 // the one that stays at home; -1: the cell is empty
    std::vector<std::pair<int, signed char>> signs; // of the others, when their legs are open; +1: leg A
};

class LinePass {
public:
    // `open_legs`: singles may land on either leg, and the pass counts how many are on leg A.
    // `traced`: keeps the way to each cost, for trace(); without it a pass is several times faster.
    LinePass(PanelModel const& model, LineRoom::LineCase const& c, std::vector<FateCost> const& costs, bool open_legs,
             bool traced);
    // (cell, state) pairs that a pass with closed legs may visit.
    static std::int64_t size(PanelModel const& model, LineRoom::LineCase const& c);
    std::int64_t visits() const { return visits_; } // that this one made

    // Least cost by singles on leg A (one entry when legs are not open); kNoWay where there is no room.
    std::vector<int> const& costs() const { return final_; }
    // What happens at that cost, of a traced pass; `signs` gets the legs of present singles when legs are open.
    Rooming trace(int on_a, Signs* signs) const;

private:
    enum class Step : signed char { none, wall, empty, home, block, tile };
    struct From {
        int state = -1;
        short cell = -1, choice = 0, second = 0;
        Step step = Step::none;
    };
    struct State {
        int odd, after_upper, pairs, on_a;
    };

    struct PairRange {
        int least, most;
    };
    static PairRange pair_range(PanelModel const& model, LineRoom::LineCase const& c);
    int index(State const& s) const;
    State state(int index) const;
    void run();
    void advance(int cell, int index);
    void lay_tiles(int cell, int index, State const& s, int cost); // every pair that may begin at this cell
    void reach(int from_cell, int from_index, int cell, State s, int cost, Step step, int choice, int second);
    std::vector<CellOption> options(int cell, bool open_legs) const;
    int payment(int cell, int& pairs) const;

    PanelModel const& model_;
    LineRoom::LineCase const& case_;
    std::vector<FateCost> const& unit_cost_;
    std::vector<std::vector<CellOption>> options_;
    int least_pairs_ = 0, most_pairs_ = 0, counts_ = 1;
    // Rows of one cell's states each. Untraced only the three rows that a cell reaches are kept.
    std::size_t row(int cell) const { return static_cast<std::size_t>(traced_ ? cell : cell % 3) * states_; }
    bool traced_;
    std::size_t states_ = 0;
    std::int64_t visits_ = 0;
    std::vector<int> best_;
    std::vector<From> from_;
    std::vector<int> final_;
};

} // namespace legwork
