// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The problem of the legs alone: each decision is + or -, D = constant + sum of +-d per situation, and the worst |D| is
// to be least. Where breakers stand enters only as the number of singles that leg A can take (the counting lemma: a
// pair takes one space of each leg wherever it sits, so any singles may have the rest).
#pragma once

#include "balance/model/model.h"

#include <cstdint>
#include <vector>

namespace legwork {

struct Decision {
    int unit = -1;
    std::vector<std::int64_t> d; // per situation: what + adds to A - B
    bool is_single = false;      // + takes a space of leg A, - one of leg B
    int plus_moves = 0, minus_moves = 0;
};

struct LegProblem {
    std::vector<std::int64_t> constant;               // per situation
    std::vector<Decision> decisions;                  // in the order of the units
    int least_on_a = 0, most_on_a = 0;                // singles with +
    int fixed_moves = 0;                              // moves that no choice avoids
    std::vector<std::pair<int, signed char>> settled; // units whose choice is made, and how

    bool has_room() const { return least_on_a <= most_on_a; }
    // Decisions that hang on one of these units.
    std::vector<bool> of_units(std::vector<int> const& units) const;
    std::size_t situations() const { return constant.size(); }
};

// One entry a decision: true for +.
using Assignment = std::vector<bool>;

// A problem of which some decisions are made.
struct OpenLegs {
    LegProblem problem; // of those that are open
    std::vector<std::size_t> open;
    Assignment choice; // of the whole problem, as made
    Assignment with(Assignment const& rest) const;
};
// `made`: of each decision +1 or -1; 0: open.
OpenLegs open_legs(LegProblem const& problem, std::vector<signed char> const& made);

LegProblem leg_problem(PanelModel const& model);

// The same with nothing but the loads: every circuit that is not fixed is free, no count of spaces. Whatever half-size
// breakers could do, the legs cannot be more even than this.
LegProblem relaxed_leg_problem(PanelModel const& model);

Signs signs_of(PanelModel const& model, LegProblem const& problem, Assignment const& choice);

std::vector<std::int64_t> differences(LegProblem const& problem, Assignment const& choice);
std::int64_t worst_difference(LegProblem const& problem, Assignment const& choice);
int count_on_a(LegProblem const& problem, Assignment const& choice);
// Without what making room adds.
int moves_of(LegProblem const& problem, Assignment const& choice);

} // namespace legwork
