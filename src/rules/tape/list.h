// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours and tape. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_TAPE_RULES(rule) rule(tape_white_as_hot) rule(tape_as_neutral) rule(tape_green)

namespace legwork {
LEGWORK_TAPE_RULES(LEGWORK_DECLARE)
} // namespace legwork
