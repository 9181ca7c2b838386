// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Asks the optimizer everything it can be asked about a small job and compares with the exhaustive answer.
#pragma once

#include "balance/oracle/recount.h"
#include "job/job.h"

namespace legwork::oracle {

// One sentence for each way in which the optimizer is wrong; empty when it is right. Every panel needs to be small
// enough for `exhaustive`.
std::vector<std::string> judge(typed::Job const& job);

// The same job with circuits, spaces and situations taken away while the optimizer stays wrong about it.
typed::Job smallest_wrong(typed::Job job);

} // namespace legwork::oracle
