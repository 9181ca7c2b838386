// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a feeder is asked by the load calculation of its panel, where the code takes demand factors for it.
#pragma once

#include "propose/wanted.h"

namespace legwork {

// Nothing where the calculation is not complete, or adds up all that is listed as if it ran at once: then what the
// legs draw with everything on is what counts.
std::optional<Wanted> wanted_by_calculation(Case const& c, typed::Panel const& fed);

// "its load calculation is not complete (the floor area of the dwelling): no demand factor is taken"; empty where it
// is, or is none that takes any.
std::string lacking_in_calculation(Case const& c, typed::Panel const& fed);

// `w`, wanted in another way, as large as it takes for no rule of the panel's load to speak: a calculation that is not
// complete may come to more already.
Wanted unopposed(Case const& c, typed::Panel const& fed, Wanted w);

} // namespace legwork
