// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the words tell that a person gave a source, or wrote that a panel is fed from. English, French or Spanish;
// common usage, no source. Any bytes.
#pragma once

#include <string_view>

namespace legwork {

enum class NamedSource {
    unsaid,
    cord,       // a cord and an inlet ("Shore cord", "Power inlet")
    stand_alone // an inverter, a generator, a battery, and no grid beside it
};
NamedSource named_source(std::string_view words);

// A meter, a pole, the grid: a service, or a switch between it and something else. "Off grid" is none.
bool names_service(std::string_view words);

// A trailer, a park model or what else stands on wheels: "Park model on lot 7".
bool is_on_wheels(std::string_view words);

// These words name it, whole: "main" in "Main panel, space 7", and not in "Maintenance shed".
bool speaks_of(std::string_view words, std::string_view name);

} // namespace legwork
