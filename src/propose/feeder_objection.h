// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the rules say of a feeder and of its panel, were its sizes in the job.
#pragma once

#include "rules/check.h"

#include <optional>
#include <string>

namespace legwork {

// `c` has the sizes in it. Notes do not count.
// The first that is said of the feeder's breaker and what the panel carries.
std::optional<Finding> load_objection(Case const& c, Panel const& fed);
// The same, else the first that is said of its wires; with the way out. Empty where no rule speaks.
std::string feeder_objection(Case const& c, Panel const& fed);
std::string with_way_out(std::string const& message, std::string const& fix); // as sentences

} // namespace legwork
