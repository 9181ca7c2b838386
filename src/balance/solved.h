// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One panel solved: model, front, and layouts of its steps.
#pragma once

#include "balance/panel_plan.h"

#include <map>

namespace legwork {

using Below = std::map<std::string, LegLoads>; // finished sub-panels by name

class Solved {
public:
    Solved(Building const& building, Panel const& panel, Below const& below, ModelOptions const& options,
           Effort& effort,
           bool to_read = true);    // layouts will be asked for
    Solved(Solved const&) = delete; // room and front look at the model
    Solved& operator=(Solved const&) = delete;
    ~Solved() = default;

    PanelModel const& model() const { return model_; }
    LegProblem const& problem() const { return problem_; }
    Room const& room() const { return *room_; }
    Front const& front() const { return front_; }
    bool has_layout() const { return front_.fewest_moves.has_value(); }
    // Of step number `n`; none when the effort does not suffice.
    std::optional<Slots> layout(std::size_t n, Effort& effort) const;

private:
    PanelModel model_;
    std::unique_ptr<Room> room_;
    LegProblem problem_;
    Front front_;
};

} // namespace legwork
