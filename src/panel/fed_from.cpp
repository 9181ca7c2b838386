// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/fed_from.h"

#include <algorithm>
#include <array>
#include <string>

namespace legwork {

namespace {
// Plurals and compounds begin the same way.
constexpr std::array<std::string_view, 14> kBeginnings{
    "panel",   "subpanel", "switchboard", "distribution", "breaker", "feeder",      "disconnect",
    "panneau", "tableau",  "disjoncteur", "sectionneur",  "tablero", "interruptor", "alimentador"};

// A building feeds another; "Meter, house wall" says that the meter does.
constexpr std::array<std::string_view, 9> kBuildings{"house",  "cottage", "barn",     "building", "shop",
                                                     "garage", "maison",  "bâtiment", "casa"};
constexpr std::array<std::string_view, 12> kServices{"meter",    "pole",   "post",    "utility", "transform", "service",
                                                     "compteur", "poteau", "medidor", "poste",   "servicio",  "grid"};

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_letter(char c) { return (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80; }
} // namespace

Above named_above(std::string_view fed_from) {
    bool panel = false, building = false, service = false;
    std::string word;
    auto const end = [&] {
        auto const begins = [&](auto const& list) {
            return std::ranges::any_of(list, [&](std::string_view b) { return word.starts_with(b); });
        };
        panel = panel || begins(kBeginnings);
        building = building || begins(kBuildings);
        service = service || begins(kServices);
        word.clear();
    };
    for (char const c : fed_from) {
        if (is_letter(lower(c)))
            word += lower(c);
        else
            end();
    }
    end();
    if (panel) return service ? Above::unclear : Above::panel;
    return building && !service ? Above::panel : Above::service;
}

} // namespace legwork
