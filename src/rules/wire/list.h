// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wires, breakers and receptacles. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_WIRE_RULES(rule)                                                                                       \
    rule(wire_breaker_fits) rule(wire_load_fits) rule(wire_continuous) rule(wire_branch) rule(wire_place)              \
        rule(wire_outlet) rule(wire_conductors) rule(wire_breaker_size) rule(wire_drop) rule(wire_smaller_downstream)  \
            rule(wire_outlet_count)

namespace legwork {
LEGWORK_WIRE_RULES(LEGWORK_DECLARE)
} // namespace legwork
