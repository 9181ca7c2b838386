// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/legs/front.h"

#include "balance/legs/bounds.h"
#include "balance/legs/descent.h"
#include "balance/legs/join.h"
#include "balance/legs/sum_table.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr int kStarts = 12;
// Where nothing can be proven in the time a person waits, more search is worth little.
constexpr std::int64_t kImproveSteps = 1'000'000'000;

// Every assignment joined. False when it could not be finished.
bool join_all(LegProblem const& p, Least& least, Effort& effort) {
    auto const both = halves(groups(p, true, false));
    auto const left_size = size_of(both.left), right_size = size_of(both.right);
    auto const bytes = HalfList::bytes_of(left_size, p.situations()) + HalfList::bytes_of(right_size, p.situations());
    if (!fits_join(p) || bytes > effort.bytes()) return false;
    if (static_cast<std::int64_t>(left_size + right_size) > effort.left() / HalfList::kStepsAPoint / 2) return false;
    HalfList const left(both.left, p.constant, kAnyMoves, effort);
    HalfList const right(both.right, std::vector<std::int64_t>(p.situations(), 0), kAnyMoves, effort);
    if (effort.is_over()) return false;
    Assignment choice(p.decisions.size());
    Limits limits{{least.worst}, -1};
    return join({left, right, p.least_on_a, p.most_on_a, effort}, limits,
                [&](std::int64_t worst, int, HalfList::Point i, HalfList::Point j) {
                    left.write(i, choice);
                    right.write(j, choice);
                    least.choice = choice;
                    limits.worst[0] = least.worst = worst;
                });
}

} // namespace

bool fits_join(LegProblem const& p) {
    for (std::size_t k = 0; k < p.situations(); ++k) {
        auto sum = std::abs(p.constant[k]);
        for (Decision const& d : p.decisions) sum += std::abs(d.d[k]);
        if (sum >= std::int64_t{1} << 30) return false;
    }
    return true;
}

Least quick_least(LegProblem const& p, Effort& effort) {
    Least least;
    least.lower_bound = quick_lower_bound(p);
    least.choice = descend(p, kStarts, least.lower_bound, effort);
    if (least.choice) least.worst = worst_difference(p, *least.choice);
    return least;
}

Least least_worst(LegProblem const& problem, Effort& effort) {
    auto const p = without_idle_situations(problem);
    if (p.situations() == 1) {
        if (auto const worst = SumTable(p, 0).least(effort)) return {*worst, *worst, {}};
    }
    auto least = quick_least(p, effort);
    if (!least.choice || least.is_proven()) return least;
    if (join_all(p, least, effort)) {
        least.lower_bound = least.worst;
        return least;
    }
    // Not all can be joined. But the worst of several situations is never less than the least of each alone, which its
    // table tells: a better bound than the quick one.
    for (std::size_t k = 0; k < p.situations() && p.situations() > 1; ++k) {
        auto part = effort.part(effort.left() / 4);
        if (auto const worst = SumTable(p, k).least(part)) least.lower_bound = std::max(least.lower_bound, *worst);
        effort.charge(part);
    }
    if (!fits_join(p)) return least;
    auto part = effort.part(std::min(effort.left() / 2, kImproveSteps));
    least.choice = improve(p, *least.choice, least.lower_bound, part);
    effort.charge(part);
    least.worst = worst_difference(p, *least.choice);
    return least;
}

} // namespace legwork
