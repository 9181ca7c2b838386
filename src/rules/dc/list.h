// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Direct current up to 60 V: fuses, what is lost on the way, sources, colours. The rules in the order that explain
// lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_DC_RULES(rule) rule(dc_fuse) rule(dc_drop) rule(dc_source) rule(tape_dc)

namespace legwork {
LEGWORK_DC_RULES(LEGWORK_DECLARE)
} // namespace legwork
