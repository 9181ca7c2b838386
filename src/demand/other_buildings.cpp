// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/methods.h"
#include "words/say.h"

namespace legwork {

namespace {
void append(LoadSteps& steps, std::int64_t& sum, StepList const& more) {
    steps.insert(steps.end(), more.steps().begin(), more.steps().end());
    sum += more.total();
}
} // namespace

void add_other_buildings(LoadCalculation& load, LoadQuestion const& q) {
    StepList steps(q.book);
    // What stood there when a peak was read is within it.
    auto const counts = [&](LoadItem const& i) { return load.method != LoadMethod::measured || i.is_new; };
    for (LoadItem const& i : only(loads_of(q).other_buildings, counts))
        steps.counted(i.label, "listed", say("load/as-reckoned"), i.va, i.marks());
    append(load.steps, load.total_va, steps);
    if (load.other_season) load.other_season->total_va += steps.total();
    if (load.neutral_va) append(load.neutral, *load.neutral_va, steps);
}

} // namespace legwork
