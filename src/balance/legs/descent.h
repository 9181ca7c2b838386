// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Good assignments fast, with no proof: from a fixed sequence of starting points, change one decision or two at a time
// as long as the worst |D| falls (then the sum of |D|). The sequence is the same for every job and machine.
#pragma once

#include "balance/effort.h"
#include "balance/legs/legs.h"

#include <functional>
#include <optional>

namespace legwork {

// What has to be looked at when one of some decisions changes: not every choice of these can be laid out.
struct Footing {
    std::vector<bool> bound; // of each decision
    std::function<bool(Assignment const&, Effort&)> stands;
};

// The best of `starts` descents, the first of them even when nothing is left; none when the counts allow nothing. Stops
// early at `enough`.
std::optional<Assignment> descend(LegProblem const& problem, int starts, std::int64_t enough, Effort& effort);

// From `start` down, never with more than `most_moves` moves (without what making room adds), and only to what stands,
// as `start` does.
Assignment descend_within(LegProblem const& problem, Assignment start, int most_moves, Footing const* footing,
                          Effort& effort);

// For problems too large for one join: first kicks a few decisions at a time and descends again, then frees some 32
// decisions at a time, holds the rest, and joins; until the effort is spent or `enough` is reached.
Assignment improve(LegProblem const& problem, Assignment best, std::int64_t enough, Effort& effort);

} // namespace legwork
