// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where every circuit stands, and how even that leaves the legs. The answer carries its proof.
#pragma once

#include "building/building.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace legwork {

struct Placement {
    std::string circuit;
    std::vector<Spot> slots; // one, or two for two poles, the named (lower-numbered) one first; empty: no room
    std::optional<Leg> leg;  // of a placed one-pole circuit; none on DC, where there is one bus
    std::vector<Spot> from;  // where the file has it; empty for a new circuit
};

struct SituationLoad {
    std::string name;
    // Of the circuits that have a space, whatever feeds the panel. imbalance: |A - B|. On DC all is in leg_a_va.
    std::int64_t leg_a_va = 0, leg_b_va = 0, imbalance_va = 0;
    // Of the panel's feeder or service, amperes; line-to-neutral loads only. Of several sources the one under which it
    // is largest (what is switched off on a source counts 0 there).
    double neutral_a = 0;
};

struct TradeoffStep {
    int moves = 0;
    std::int64_t imbalance_va = 0;
};

struct PanelPlan {
    std::string panel;
    std::vector<Placement> placements;     // in the file's order; every circuit of the panel
    std::vector<SituationLoad> situations; // "connected" first, then the file's
    // Null where there is nothing to balance (one phase, DC). imbalance_va also where a circuit found no space; the
    // other two also where no legal layout of all circuits was found. Unless `proven` least_imbalance_va is only the
    // least that was found, and nobody may be told that there is none less.
    std::optional<std::int64_t> imbalance_va, least_imbalance_va, lower_bound_va;
    // About least_imbalance_va: no layout is better, half-size breakers included. False when the search was cut short,
    // or when half-size breakers, which are never placed anew, might do better.
    bool proven = true;
    int moves = 0;                      // circuits of this plan that stand elsewhere than in the file
    std::vector<TradeoffStep> tradeoff; // where it drops; the last step is least_imbalance_va
    // Each step with at most so many moves is proven the least for its moves; -1: none is.
    int tradeoff_proven_to = -1;
    std::string why;                   // empty when every circuit has a space; else what is short and what to change
    std::optional<int> moves_for_room; // no room with nobody moved: the fewest moves that make room
    bool stopped_by_time = false;
};

struct Plan {
    std::vector<PanelPlan> panels; // in the file's order
};

PanelPlan const* plan_of(Plan const& plan, std::string_view panel);        // null when there is none
Placement const* placement_of(Plan const& plan, std::string_view circuit); // null when there is none

} // namespace legwork
