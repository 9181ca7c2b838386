// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The balance as integer programs in the LP format, for solvers that know nothing of panels.
#pragma once

#include "balance/oracle/exhaustive.h"
#include "balance/oracle/homes.h"

#include <optional>
#include <string>

namespace legwork::oracle {

// Full: x[piece, choice], every space at most once. For small panels.
std::string full_model(Board const& board, std::optional<int> max_moves = {});
// Compact: one yes or no a decision, the range of one-pole circuits on leg A, the moves. For large panels.
std::string compact_model(Legs const& legs, std::optional<int> max_moves = {});

struct Solved {
    enum class How { optimal, infeasible, stopped, failed } how = How::failed;
    std::int64_t imbalance = 0; // of optimal
    std::string output;         // what the solver said
};

// The Debian package to install when the solver is not there; empty when it is.
std::string missing_package(std::string const& solver);

// Runs in a temporary folder that is removed again; `seconds` at most.
Solved solve_with_glpsol(std::string const& model, int seconds);
Solved solve_with_cbc(std::string const& model, int seconds);

} // namespace legwork::oracle
