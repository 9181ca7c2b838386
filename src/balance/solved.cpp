// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/solved.h"

namespace legwork {

namespace {
Front front_of(PanelModel const& m, LegProblem const& p, Room const& room, bool to_read, Effort& effort) {
    if (!m.contradictions.empty()) return {};
    return front(m, p, room, to_read, effort);
}
} // namespace

Solved::Solved(Building const& building, Panel const& panel, Below const& below, ModelOptions const& options,
               Effort& effort, bool to_read)
    : model_(panel_model(building, panel, below, options)),
      room_(room_of(model_)),
      problem_(room_->narrowed(leg_problem(model_), effort)),
      front_(front_of(model_, problem_, *room_, to_read, effort)) {}

std::optional<Slots> Solved::layout(std::size_t n, Effort& effort) const {
    auto const choice = assignment_of(problem_, front_.steps[n], effort);
    if (!choice) return {};
    return laid_out(model_, problem_, *room_, *choice, effort);
}

} // namespace legwork
