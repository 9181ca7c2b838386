// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What hangs together on one circuit, as far as names and counts tell.
#pragma once

#include "rules/need/home.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Counter receptacles hang on it, or any of a kitchen where those count.
bool is_counter_circuit(HomeCircuit const& h, CounterCircuit const& counter);
// What else hangs on such a circuit and may not; none on another.
std::vector<std::string> strangers_at_counter(HomeCircuit const& h, CounterCircuit const& counter);

bool is_among(std::span<std::string_view const> uses, std::string_view use);
void say_if_existing(Finding& f, Circuit const& c); // that it is asked of new work

} // namespace legwork
