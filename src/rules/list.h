// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a theme's list of rules is made of: the list names each once, and its declaration and its place come of that.
#pragma once

#include "rules/rule.h"

#define LEGWORK_DECLARE(rule) extern Rule const rule;
#define LEGWORK_ADDRESS(rule) &rule,
