// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Receptacle types by their NEMA WD 6 names. Configuration facts common to every supplier's chart.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct Receptacle {
    std::string_view name; // "5-20R"
    int volts;             // as the type is marked: 120, 125, 250; 250 for 125/250
    int amps;
    int hots; // 1: a 120 V type; 2: a 240 V type
    bool neutral, ground;
    bool locking;
    bool single;         // one on a yoke; the others are usually duplex
    bool never_two_pole; // trailers: never on two poles, not even beside a neutral
};

std::span<Receptacle const> receptacles();
Receptacle const* receptacle_named(std::string_view name); // null when there is none
// Those of these names that there are.
std::vector<Receptacle const*> receptacles_named(std::vector<std::string> const& names);
std::vector<std::string> receptacle_names();

} // namespace legwork
