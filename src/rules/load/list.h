// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load of the service. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_LOAD_RULES(rule) rule(load_service)

namespace legwork {
LEGWORK_LOAD_RULES(LEGWORK_DECLARE)
} // namespace legwork
