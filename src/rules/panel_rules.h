// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a panel can take, and how its legs are loaded.
#pragma once

#include "rules/rule.h"

namespace legwork {

Findings panel_240_on_120(Case const&);
Findings panel_dead_space(Case const&);
Findings panel_two_legs(Case const&);
Findings panel_no_tandem(Case const&);
Findings panel_no_room(Case const&);

Findings panel_circuits(Case const&);
Findings panel_hang(Case const&);
Findings panel_sign(Case const&);
Findings panel_backfeed(Case const&);
Findings panel_spare_spaces(Case const&);

Findings panel_feeder_wires(Case const&);
Findings panel_sub_neutral(Case const&);
Findings panel_neutral_terminals(Case const&);
Findings panel_208_heat(Case const&);
Findings panel_outbuilding(Case const&);

Findings panel_legs_uneven(Case const&);
Findings panel_main_overloaded(Case const&);

} // namespace legwork
