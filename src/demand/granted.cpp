// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a calculation takes for granted, whatever its method.
#include "demand/methods.h"

#include <fmt/format.h>

namespace legwork {

void add_granted(LoadCalculation& load, LoadQuestion const& q) {
    auto const loads = loads_of(q);
    std::string guessed;
    for (LoadItems const* some : {&loads.items, &loads.managed})
        for (LoadItem const& i : *some)
            if (i.circuit->use_guessed)
                guessed += fmt::format("{}{} {}", guessed.empty() ? "" : ", ", i.circuit->mark, i.use->name);
    if (!guessed.empty()) load.notes.push_back("What they are was taken from their names: " + guessed + ".");
    if (!load.whole_dwelling) return;
    for (Panel const& p : q.building.panels)
        if (!p.feeder_said && p.number != q.panel.number && !q.panel.feeder_said && !p.is_dc() &&
            !circuits_under(p).empty())
            load.notes.push_back(
                fmt::format("Panel \"{}\" is fed by itself: what it feeds is not in this calculation.", p.name));
}

} // namespace legwork
