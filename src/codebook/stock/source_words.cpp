// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/source_words.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace legwork {

namespace {
// Plurals and compounds begin the same way.
constexpr std::array<std::string_view, 5> kCords{"cord", "inlet", "shore", "rallonge", "cordón"};
constexpr std::array<std::string_view, 14> kAlone{"inverter", "generator", "genset",   "batter",   "offgrid",
                                                  "onduleur", "génératr",  "électrog", "inversor", "generador",
                                                  "baterí",   "bateri",    "electrog", "generatr"};
constexpr std::array<std::string_view, 15> kGrid{"grid",      "utility", "meter",    "service", "transfer",
                                                 "transform", "pole",    "post",     "réseau",  "compteur",
                                                 "poteau",    "medidor", "servicio", "hydro",   "street"};
constexpr std::array<std::string_view, 8> kWheels{"trailer",  "camper",   "caravan",      "motorhome",
                                                  "roulotte", "remolque", "autocaravana", "rv"};
constexpr std::array<std::pair<std::string_view, std::string_view>, 4> kWheeledPairs{
    {{"park", "model"}, {"on", "wheels"}, {"motor", "home"}, {"fifth", "wheel"}}};

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }
bool is_part_of_word(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || static_cast<unsigned char>(c) >= 0x80;
}

std::vector<std::string> words_of(std::string_view text) {
    std::vector<std::string> words;
    bool open = false;
    for (char const typed : text) {
        char const c = lower(typed);
        if (!is_part_of_word(c)) {
            open = false;
            continue;
        }
        if (!open) words.emplace_back();
        open = true;
        words.back() += c;
    }
    return words;
}

bool any_begins(std::vector<std::string> const& words, auto const& list) {
    return std::ranges::any_of(words, [&](std::string const& w) {
        return std::ranges::any_of(list, [&](std::string_view b) { return w.starts_with(b); });
    });
}
} // namespace

bool names_service(std::string_view text) {
    auto const words = words_of(text);
    return std::ranges::find(words, "off") == words.end() && any_begins(words, kGrid);
}

NamedSource named_source(std::string_view text) {
    auto const words = words_of(text);
    if (names_service(text)) return NamedSource::unsaid;
    // A generator's inlet, and the cord of an inverter, are the source's. The grid is named here only where it is off.
    if (any_begins(words, kAlone) || any_begins(words, kGrid)) return NamedSource::stand_alone;
    return any_begins(words, kCords) ? NamedSource::cord : NamedSource::unsaid;
}

bool is_on_wheels(std::string_view text) {
    auto const words = words_of(text);
    for (std::size_t i = 0; i < words.size(); ++i) {
        for (auto const wheeled : kWheels)
            if (words[i] == wheeled) return true;
        for (auto const& [first, second] : kWheeledPairs)
            if (words[i] == first && i + 1 < words.size() && words[i + 1].starts_with(second)) return true;
    }
    return false;
}

bool speaks_of(std::string_view text, std::string_view name) {
    auto const words = words_of(text), named = words_of(name);
    return !named.empty() && std::search(words.begin(), words.end(), named.begin(), named.end()) != words.end();
}

} // namespace legwork
