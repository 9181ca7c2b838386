// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/need_rules.h"
#include "check/themes.h"

#include <array>

namespace legwork {

namespace {
constexpr std::array<Rule, 0> kRules{};
} // namespace

std::span<Rule const> need_rules() { return kRules; }

} // namespace legwork
