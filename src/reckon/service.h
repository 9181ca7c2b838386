// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load calculation of a panel of a job: what feeds it, what it is rated for, what it is asked to carry.
#pragma once

#include "balance/plan.h"
#include "demand/results.h"

namespace legwork {

// What feeds the panel in the usual case: its largest source of two hots, else its first. Nothing on DC.
// Legs as planned.
// Every source of this panel stands alone, as far as their names and `fed_from` tell.
bool stands_alone(Panel const& panel);

std::optional<ServiceFacts> service_facts(Plan const& plan, Panel const& panel);
// The panel whose load is meant when none is named: the first that no other panel feeds, on AC. Null on DC only.
Panel const* service_panel(Building const& building);

struct PanelLoad {
    Panel const* panel = nullptr;
    ServiceFacts facts;
    std::optional<LoadCalculation> load;
    ServiceSize size; // these three when there is a load
    LoadResults results;
    Phrase verdict;
    std::string why, fix; // when there is none, in English
};
PanelLoad panel_load(Building const& building, Plan const& plan, CodeBook const& book, Panel const& panel,
                     std::optional<LoadMethod> asked = std::nullopt);

// The same; but where the load by the usual method is above the rating and another method that the code allows for the
// building keeps it within, by that one: the code asks that one of them does.
PanelLoad permitted_load(Building const& building, Plan const& plan, CodeBook const& book, Panel const& panel);

} // namespace legwork
