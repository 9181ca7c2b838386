// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The job file: taken for granted, not known, without effect. The rules in the order that explain lists them, a line
// each.
#pragma once

#include "rules/list.h"

#define LEGWORK_JOB_RULES(rule) rule(job_assumed) rule(job_unknown) rule(job_accept_unused) rule(job_no_effect)

namespace legwork {
LEGWORK_JOB_RULES(LEGWORK_DECLARE)
} // namespace legwork
