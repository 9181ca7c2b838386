// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small dwellings for the need- rules.
#pragma once

#include "job/job.h"
#include "made_job.h"

namespace made {

// Circuits of a small house that has what either code asks for; without garage.
std::vector<typed::Circuit> home_circuits();
// The same without the circuits of these marks.
std::vector<typed::Circuit> home_without(std::vector<std::string> const& marks);
// With a [dwelling] table.
typed::Job dwelling(std::vector<typed::Circuit> circuits);
// The small house with this circuit in place of that of its mark, or after the others.
typed::Job home_with(typed::Circuit c);

} // namespace made
