// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The breakers and the neutral of multiwire pairs, and what hangs on them. Their place in the panel: pair_place.h.
#pragma once

#include "rules/rule.h"

#include <string_view>

namespace legwork {

Findings mw_disconnect(Case const&);
Findings mw_line_to_line(Case const&);
Findings mw_unequal(Case const&);
Findings mw_one_pole_gfci(Case const&);
Findings mw_keep_on(Case const&);

Findings mw_conductors(Case const&);
Findings mw_neutral_current(Case const&);
Findings mw_pigtail(Case const&);
Findings mw_grouping(Case const&);
Findings mw_open_neutral(Case const&);
Findings mw_unpaired(Case const&);

// What each of two loads in series sees when their shared neutral opens: V RB / (RA + RB) with R as 1 / VA. The
// lighter load sees the higher voltage. Both loads above 0.
struct OpenNeutral {
    double first, second; // volts
};
OpenNeutral open_neutral(double first_va, double second_va, double volts_between);

} // namespace legwork
