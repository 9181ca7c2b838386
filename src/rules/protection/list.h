// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Ground-fault and arc-fault protection. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_GROUND_FAULT_RULES(rule) rule(gfci_needed)

#define LEGWORK_ARC_FAULT_RULES(rule) rule(afci_needed)

namespace legwork {
LEGWORK_GROUND_FAULT_RULES(LEGWORK_DECLARE)
LEGWORK_ARC_FAULT_RULES(LEGWORK_DECLARE)
} // namespace legwork
