// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/solved.h"

#include <algorithm>

namespace legwork {

namespace {
std::size_t at(int i) { return static_cast<std::size_t>(i); }

Front front_of(PanelModel const& m, LegProblem const& p, Room const& room, bool to_read, Effort& effort) {
    if (!m.contradictions.empty()) return {};
    return front(m, p, room, to_read, effort);
}
} // namespace

Solved::Solved(typed::Job const& job, typed::Panel const& panel, Below const& below, ModelOptions const& options, Effort& effort,
               bool to_read)
    : model_(panel_model(job, panel, below, options)),
      problem_(leg_problem(model_)),
      room_(model_),
      front_(front_of(model_, problem_, room_, to_read, effort)) {}

bool Solved::reach_matters() const {
    return std::ranges::any_of(model_.units, [&](Unit const& u) {
        return !u.held && (!model_.reach[at(u.a)].empty() || (u.b >= 0 && !model_.reach[at(u.b)].empty()));
    });
}

std::optional<Slots> Solved::layout(std::size_t n, Effort& effort) const {
    auto const choice = assignment_of(problem_, front_.steps[n], effort);
    if (!choice) return {};
    return laid_out(model_, problem_, room_, *choice);
}

} // namespace legwork
