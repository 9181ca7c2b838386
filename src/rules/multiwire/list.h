// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Multiwire pairs: two hots, one neutral. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_MULTIWIRE_RULES(rule)                                                                                  \
    rule(mw_one_panel) rule(mw_same_space) rule(mw_in_phase_supply) rule(mw_opposite_legs) rule(mw_not_adjacent)       \
        rule(mw_disconnect) rule(mw_line_to_line) rule(mw_unequal) rule(mw_conductors) rule(mw_neutral_current)        \
            rule(mw_one_pole_gfci) rule(mw_pigtail) rule(mw_grouping) rule(mw_open_neutral) rule(mw_unpaired)          \
                rule(mw_keep_on)

namespace legwork {
LEGWORK_MULTIWIRE_RULES(LEGWORK_DECLARE)
} // namespace legwork
