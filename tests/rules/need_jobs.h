// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small dwellings for the need- rules.
#pragma once

#include "made_job.h"

namespace made {

// Circuits of a small house that has what either code asks for; without garage.
std::vector<Circuit> home_circuits();
// The same without the circuits of these marks.
std::vector<Circuit> home_without(std::vector<std::string> const& marks);
// With a [dwelling] table.
Job dwelling(std::vector<Circuit> circuits);
// The small house with this circuit in place of that of its mark, or after the others.
Job home_with(Circuit c);

} // namespace made
