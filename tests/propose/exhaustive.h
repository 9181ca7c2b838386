// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The slow twin: puts every standard breaker with every wire into the job, from the smallest up, and lets the rules
// speak. It shares no reckoning with what proposes.
#pragma once

#include "job/job.h"
#include "rules/check.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork::testing {

struct Sizes {
    Amps breaker;
    std::string cable; // of every piece that lacks one
    friend bool operator==(Sizes const&, Sizes const&) = default;
};

// What the wire rules, and those that a pair's cable and breakers answer to, say of these circuits; "" for nothing.
std::string objections(typed::Job const& job, std::vector<std::string> const& marks, std::string_view edition);

// The smallest breaker, and on it the smallest wire with the fewest conductors, that no rule speaks of and that keeps
// what is asked besides. The circuits of `marks` share a cable where they are two, and
// have loads that are known.
std::optional<Sizes> smallest(typed::Job const& job, std::vector<std::string> const& marks, std::string_view edition);

// Puts sizes into what the circuits lack.
typed::Job filled(typed::Job job, std::vector<std::string> const& marks, Amps breaker, Gauge gauge, int insulated);

} // namespace legwork::testing
