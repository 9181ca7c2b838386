// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a part of a dwelling must have. Those that serve it are counted; one finding a part says who they
// are, why one does not count, and what the code asks. Silent where the job does not tell: part of a house, an old
// house where nothing of the kind is new, a circuit of no name.
#pragma once

#include "rules/need/home.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct WantedPart {
    Rule const& rule;
    Household part;
    std::string_view where;      // its receptacles stand
    std::string_view use;        // to write on a circuit that is there under another name
    std::string_view bound;      // of a circuit that may serve the whole room
    std::string_view topic = {}; // of cite.h; empty: the rule's
};

// A circuit that serves the part.
struct ServingCircuit {
    HomeCircuit const* home;
    std::string fault; // why it does not count; empty: it does
};
std::vector<ServingCircuit> serving(Home const& home, Household part, HouseholdCircuits const& need);
// What to do about its fault.
std::string mend(ServingCircuit const& s, HouseholdCircuits const& need);

void judge_part(Case const& c, Home const& home, WantedPart const& wanted, std::vector<ServingCircuit> const& servers,
                Inspection& seen);
Verdict judge_part(Case const& c, WantedPart const& wanted); // with all circuits that serve it

} // namespace legwork
