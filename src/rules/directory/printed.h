// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How the words of a job stand on its sheets, as far as rules ask. The sheets find it out, which lie beyond the rules.
#pragma once

#include "rules/finding.h"

#include <string>
#include <vector>

namespace legwork {

struct Printed {
    struct Name {
        std::string circuit; // its mark
        bool whole = true;   // else its line of the directory shows a part of it, even in the smallest print
    };
    std::vector<Name> names; // of each circuit that the directory names
    std::string form;        // what the directory was laid out on: its title

    struct Letters {
        Where of;            // the thing whose words are printed
        std::string missing; // letters that no face has, parted by blanks; empty: none
    };
    std::vector<Letters> letters;
};

} // namespace legwork
