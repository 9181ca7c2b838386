// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/fed_from.h"

#include <algorithm>
#include <array>
#include <string>

namespace legwork {

namespace {
// Plurals and compounds begin the same way.
constexpr std::array<std::string_view, 13> kBeginnings{
    "panel",   "subpanel",    "switchboard", "distribution", "breaker",     "feeder",     "disconnect",
    "panneau", "disjoncteur", "sectionneur", "tablero",      "interruptor", "alimentador"};

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }
} // namespace

bool names_a_panel_above(std::string_view fed_from) {
    std::string word;
    auto const tells = [&] {
        bool const yes = std::ranges::any_of(kBeginnings, [&](auto b) { return word.starts_with(b); });
        word.clear();
        return yes;
    };
    for (char const c : fed_from) {
        if (is_letter(lower(c)))
            word += lower(c);
        else if (tells())
            return true;
    }
    return tells();
}

} // namespace legwork
