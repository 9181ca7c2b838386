// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How the words of a job stand on its sheets, as far as rules ask. The sheets find it out, which lie beyond the rules.
#pragma once

#include "rules/finding.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct Printed {
    struct Name {
        Where of;          // the thing whose name it is, or whose place's
        bool whole = true; // else a part of it is shown, even in the smallest print
        std::string what = std::string(kName);
        static constexpr std::string_view kName = "the name"; // of a circuit; else "the name of an end"
    };
    // A sheet on the form that it is laid out on.
    struct OnForm {
        std::string form;        // its title
        std::string_view room;   // what a name must fit: "its line of the directory"
        std::string_view if_cut; // what is shown instead: "the line is shortened, ..."
        std::vector<Name> names; // all that are asked, each thing's once
    };
    std::vector<OnForm> sheets;

    struct Letters {
        Where of;            // the thing whose words are printed
        std::string missing; // letters that no face has, parted by blanks; empty: none
    };
    std::vector<Letters> letters;
};

} // namespace legwork
