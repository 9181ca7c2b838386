// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One thing a check has to say.
#pragma once

#include "codebook/source.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class Severity { error, warning, note };
constexpr std::string_view name(Severity s) {
    return s == Severity::error ? "error" : s == Severity::warning ? "warning" : "note";
}

// Names things of the job, not lines of a file; it is turned into a line when it is printed.
struct Where {
    std::string panel;                 // empty when it is about no one panel
    std::vector<std::string> circuits; // those at fault only
    std::string key;                   // the key to point at; empty for the circuit or panel itself
    int accept = -1;                   // the number from 0 of the [[accept]] that it is about; -1: none
};

struct Finding {
    std::string rule;
    Severity severity = Severity::error;
    Where where;
    std::string message; // what is wrong, in numbers
    std::string fix;     // what to do next, imperative
    Reference reference;
    bool accepted = false; // by an [[accept]] of the job
    std::string accepted_by, accepted_why;
    bool never_accepted = false; // no [[accept]] covers this one, whatever its rule (a receptacle of the wrong volts)
    bool stops_cables = true;    // as its rule says
    bool accept_refused = false; // the job has an [[accept]] for it that does not hold
    bool lacks_sizes = false;    // of new work whose breaker or cable is still to be chosen: the sheets say so
};
using Findings = std::vector<Finding>;

} // namespace legwork
