// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a branch circuit of a size may feed.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

// A smaller wire that leaves a circuit for one cooking appliance. Amperes; nothing where the code says no size.
struct CookingTap {
    std::optional<Figure> least;   // ampacity of the tap
    std::optional<Figure> breaker; // of the circuit, at most
    bool exactly = false;          // the wording knows a circuit of that size only
};

// Amperes of the breaker; nothing: the code sets no such limit.
struct BranchLimits {
    std::optional<Figure> lights;           // most with luminaires of a dwelling
    std::optional<Figure> receptacles;      // most with the receptacles of a dwelling's rooms
    std::optional<Figure> heavy_duty_above; // elsewhere, lampholders above it are of the heavy-duty kind
    std::optional<Figure> small;            // up to here it feeds lights and little else, never receptacles
    CookingTap tap;
};

inline BranchLimits const& branch_limits(CodeBook const& book) { return book.branch_limits; }

} // namespace legwork
