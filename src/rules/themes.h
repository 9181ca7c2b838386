// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rules theme by theme; check.cpp puts them together.
#pragma once

#include "rules/rule.h"

#include <span>

namespace legwork {

std::span<Rule const> directory_rules(); // dir-*
std::span<Rule const> job_rules();       // job-*
std::span<Rule const> later_rules();     // explained, not checked yet

} // namespace legwork
