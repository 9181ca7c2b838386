// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The worked panels of tests/cases/balancing-instances.json, as jobs.
#pragma once

#include "balance/oracle/exhaustive.h"
#include "job/job.h"

namespace legwork::oracle {

struct Instance {
    std::string name;
    typed::Job job;
    std::vector<Step> tradeoff; // empty: the panel is impossible
};

// Throws std::exception on a file that is not there or not as described in itself.
std::vector<Instance> instances();

} // namespace legwork::oracle
