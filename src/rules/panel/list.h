// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a panel can take, and how its legs are loaded. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_PANEL_RULES(rule)                                                                                      \
    rule(panel_bus) rule(panel_240_on_120) rule(panel_dead_space) rule(panel_two_legs) rule(panel_no_tandem)           \
        rule(panel_circuits) rule(panel_no_room) rule(panel_main_overloaded) rule(panel_legs_uneven)                   \
            rule(panel_backfeed) rule(panel_spare_spaces) rule(panel_sign) rule(panel_hang) rule(panel_208_heat)       \
                rule(panel_neutral_terminals) rule(panel_feeder_wires) rule(panel_not_joined) rule(panel_sub_neutral)  \
                    rule(panel_outbuilding)

namespace legwork {
LEGWORK_PANEL_RULES(LEGWORK_DECLARE)
} // namespace legwork
