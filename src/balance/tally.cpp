// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/tally.h"

#include <algorithm>
#include <cstdlib>

namespace legwork {

namespace {

void add(BySituation& to, BySituation const& what, Leg leg, bool on_one_leg) {
    for (std::size_t i = 0; i < to.size(); ++i) {
        if (!on_one_leg)
            to[i] += what[i];
        else
            (leg == Leg::a ? to[i].a : to[i].b) += what[i].a;
    }
}

std::vector<int> spaces_of(std::vector<Spot> const& slots) {
    std::vector<int> spaces;
    for (Spot const s : slots) spaces.push_back(s.space);
    return spaces;
}

} // namespace

LegLoads leg_loads(Building const& building, Panel const& panel, std::vector<CircuitLoad> const& loads,
                   std::vector<Placement> const& placements) {
    Layout const& layout = panel.layout;
    auto const& sources = panel.feeds;
    bool const dc = panel.is_dc();
    BySituation const zero(building.situations.size() + 1);
    LegLoads sum{zero, std::vector<BySituation>(sources.size(), zero)};
    for (std::size_t i = 0; i < placements.size() && i < loads.size(); ++i) {
        if (placements[i].slots.empty()) continue;
        int const space = placements[i].slots.front().space;
        // A plan as filed may name a space that the panel has not got: its load is counted all the same.
        Leg const leg = dc || !layout.has(space) ? Leg::a : layout.leg(space);
        auto const& load = loads[i];
        add(sum.va, load.loads.va, leg, load.on_one_leg);
        for (std::size_t f = 0; f < sources.size(); ++f)
            if (!load.on_one_leg || energizes(sources[f], leg))
                add(sum.to_neutral[f], load.loads.to_neutral[f], leg, load.on_one_leg);
    }
    return sum;
}

std::vector<SituationLoad> situation_loads(Building const& building, Panel const& panel, LegLoads const& legs) {
    auto const& sources = panel.feeds;
    auto const names = situation_names(building);
    std::vector<SituationLoad> lines;
    for (std::size_t i = 0; i < names.size(); ++i) {
        auto const [a, b] = legs.va[i];
        SituationLoad line{names[i], a, b, std::abs(a - b), 0};
        for (std::size_t f = 0; f < sources.size(); ++f) {
            auto const volts = value(volts_to_neutral(sources[f].kind));
            auto const [na, nb] = legs.to_neutral[f][i];
            line.neutral_a =
                std::max(line.neutral_a, neutral_amps(static_cast<double>(na) / volts, static_cast<double>(nb) / volts,
                                                      phase_degrees(sources[f].kind)));
        }
        lines.push_back(std::move(line));
    }
    return lines;
}

std::int64_t worst_imbalance(std::vector<SituationLoad> const& situations) {
    std::int64_t worst = 0;
    // The first is "connected", everything at once.
    for (std::size_t i = situations.size() > 1 ? 1 : 0; i < situations.size(); ++i)
        worst = std::max(worst, situations[i].imbalance_va);
    return worst;
}

int moves_of(std::vector<Placement> const& placements) {
    return static_cast<int>(std::ranges::count_if(placements, [](Placement const& p) {
        return !p.from.empty() && !p.slots.empty() && spaces_of(p.from) != spaces_of(p.slots);
    }));
}

} // namespace legwork
