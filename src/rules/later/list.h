// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Rules that legwork explains and does not judge yet: their sheets are to come. A line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_BOX_RULES(rule) rule(box_full) rule(box_mixed)
#define LEGWORK_RUN_RULES(rule) rule(run_hole) rule(run_support) rule(run_bundle)

namespace legwork {
LEGWORK_BOX_RULES(LEGWORK_DECLARE)
LEGWORK_RUN_RULES(LEGWORK_DECLARE)
} // namespace legwork
