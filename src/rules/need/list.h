// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Circuits that a dwelling must have, and what they may share. The rules in the order that explain lists them, a line
// each.
#pragma once

#include "rules/list.h"

#define LEGWORK_NEED_RULES(rule)                                                                                       \
    rule(need_kitchen) rule(need_laundry) rule(need_bath) rule(need_garage) rule(need_outdoor)                         \
        rule(need_kitchen_share) rule(need_dedicated) rule(need_neutral_at_switch) rule(need_disconnect)

namespace legwork {
LEGWORK_NEED_RULES(LEGWORK_DECLARE)
} // namespace legwork
