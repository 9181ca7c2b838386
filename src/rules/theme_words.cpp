// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/theme_words.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct Theme {
    std::string_view prefix, words;
};
constexpr std::array kThemes{
    Theme{"mw", "Multiwire pairs"},
    Theme{"wire", "Wires, breakers and receptacles"},
    Theme{"panel", "Panels"},
    Theme{"dir", "Names in the directory"},
    Theme{"tape", "Colours and tape"},
    Theme{"gfci", "Ground-fault protection"},
    Theme{"afci", "Arc-fault protection"},
    Theme{"need", "Circuits that must be there"},
    Theme{"load", "Load of the service"},
    Theme{"box", "Boxes"},
    Theme{"run", "Holes and supports of cables"},
    Theme{"dc", "Direct current"},
    Theme{"job", "The job file: taken for granted, not known"},
};
} // namespace

std::string_view theme_of(std::string_view rule) {
    auto const at = std::ranges::find(kThemes, rule.substr(0, rule.find('-')), &Theme::prefix);
    return at == kThemes.end() ? "Other" : at->words;
}

} // namespace legwork
