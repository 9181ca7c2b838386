// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Names in the directory. The rules in the order that explain lists them, a line each.
#pragma once

#include "rules/list.h"

#define LEGWORK_DIRECTORY_RULES(rule)                                                                                  \
    rule(dir_unnamed) rule(dir_vague) rule(dir_duplicate) rule(dir_person) rule(dir_name_too_long) rule(dir_no_letter)

namespace legwork {
LEGWORK_DIRECTORY_RULES(LEGWORK_DECLARE)
} // namespace legwork
