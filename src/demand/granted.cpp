// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a calculation takes for granted, whatever its method.
#include "demand/methods.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
bool is_dc(typed::Job const& job, typed::Panel const& panel) {
    constexpr std::array dc{SupplyKind::dc_12, SupplyKind::dc_24, SupplyKind::dc_48};
    typed::Supply const* supply = panel.supply             ? &*panel.supply
                           : panel.supplies.empty() ? nullptr
                                                    : supply_of(job, panel.supplies.front());
    return supply && std::ranges::count(dc, supply->kind) > 0;
}
} // namespace

void add_granted(LoadCalculation& load, LoadQuestion const& q) {
    auto const loads = loads_of(q);
    std::string guessed;
    for (LoadItems const* some : {&loads.items, &loads.managed})
        for (LoadItem const& i : *some)
            if (i.circuit->use_guessed)
                guessed += fmt::format("{}{} {}", guessed.empty() ? "" : ", ", i.circuit->mark, i.circuit->use);
    if (!guessed.empty()) load.notes.push_back("What they are was taken from their names: " + guessed + ".");
    if (!load.whole_dwelling) return;
    for (typed::Panel const& p : q.job.panels)
        if (!p.feeder && p.name != q.panel.name && !q.panel.feeder && !is_dc(q.job, p) &&
            !circuits_under(q.job, p).empty())
            load.notes.push_back(
                fmt::format("Panel \"{}\" is fed by itself: what it feeds is not in this calculation.", p.name));
}

} // namespace legwork
