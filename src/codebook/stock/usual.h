// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The breaker that a circuit of a use has where its load is not known: what a code asks of a dwelling, else custom.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct UsualCircuit {
    Amps breaker;
    std::string_view words; // "receptacles of a bathroom are on 20 A", without the amperes
    Source source;
    std::string_view topic; // of cite.h; empty: custom, no section
};

// What a code asks of one circuit of a dwelling's kitchen counter, laundry, bathroom or garage receptacles, whatever
// its load. `split`: it feeds one half of split receptacles. Nothing for other uses and where a code leaves it open.
std::optional<UsualCircuit> household_circuit(CodeBook const& book, std::string_view use, int poles, bool split);

// Custom, where the load is not known. Nothing for uses whose loads differ too much to say (heaters, motors).
std::optional<UsualCircuit> customary_circuit(CodeBook const& book, std::string_view use, int poles);

// The receptacle of an appliance that is sold with a cord, where the circuit names none: "14-30R". Empty for others.
// Common practice, no source.
std::string_view usual_receptacle(std::string_view use, int poles);

// The smallest breaker that is proposed, whatever the load. A 10 A breaker (NEC 2023) is for lighting and little else.
Amps least_proposed_breaker();

} // namespace legwork
