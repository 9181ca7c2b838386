// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The recheck's own geometry, sources and sums; nothing of panel/ or of the search.
#pragma once

#include "balance/plan.h"

#include <array>
#include <cstdint>
#include <vector>

namespace legwork::recount {

// Where a space is and which leg it is on.
struct Bus {
    Panel const& panel;
    int rows() const;
    int row(int space) const;
    bool is_first_column(int space) const;
    int leg(int space) const;              // 0 leg A, 1 leg B
    bool side_by_side(int s, int t) const; // next to each other in one column
    bool facing(int s, int t) const;
};

// The sources of a panel, looked up to the top.
std::vector<Supply> sources(Panel const& panel);
bool has_two_legs(Panel const& panel);
bool is_direct(SupplyKind kind);
bool is_live(Panel const& panel, int space);

// VA on leg A and leg B per situation, "connected" first.
using Sums = std::vector<std::array<std::int64_t, 2>>;

// Of what has a space in the plan, sub-panels included.
Sums leg_sums(Building const& building, Plan const& plan, Panel const& panel, PanelPlan const& planned);
// Amperes in the neutral per situation: the largest over the sources.
std::vector<double> neutral_amperes(Building const& building, Plan const& plan, Panel const& panel,
                                    PanelPlan const& planned);

} // namespace legwork::recount
