// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "rules/rule.h"

#include <span>
#include <string_view>

namespace legwork {

// What some rules are about, in plain words ("Multiwire pairs"), and those rules in the order that explain lists them.
struct Theme {
    std::string_view words;
    std::span<Rule const* const> rules;
};
std::span<Theme const> themes();
// The words of the theme that has this rule; "Other" when there is no such rule.
std::string_view theme_of(std::string_view rule);

} // namespace legwork
