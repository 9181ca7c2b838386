// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the circuits of a random panel stand today.
#pragma once

#include "balance/oracle/random.h"
#include "job/job.h"

namespace legwork::oracle {

// Gives spaces to some of the panel's circuits from number `first` of the job on, and fixes some: as a careful person
// would, or anyhow.
void stand_today(Dice& dice, typed::Job& job, typed::Panel const& panel, std::size_t first, bool halves,
                 bool half_two_poles);

} // namespace legwork::oracle
