// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/guess_baths.h"

#include "codebook/stock/plain_words.h"

#include <algorithm>
#include <iterator>
#include <string>
#include <vector>

namespace legwork {

namespace {
constexpr std::string_view kPlurals[] = {"baths",      "bathrooms", "washrooms", "restrooms",
                                         "lavatories", "ensuites",  "both",      "banos"};
constexpr std::string_view kBaths[] = {"bath", "bathroom", "washroom", "restroom", "lavatory", "bain", "bano"};
// Bathrooms by themselves; before "bath" they tell which.
constexpr std::string_view kOfTheirOwn[] = {"ensuite", "powder", "half"};
constexpr std::string_view kWhich[] = {"hall",   "master",   "main",   "primary", "guest", "upstairs", "downstairs",
                                       "upper",  "lower",    "first",  "second",  "third", "basement", "family",
                                       "kids",   "children", "north",  "south",   "east",  "west",     "front",
                                       "back",   "rear",     "left",   "right",   "big",   "small",    "large",
                                       "little", "other",    "garage", "attic",   "loft"};

bool is_in(auto const& list, std::string_view word) { return std::ranges::find(list, word) != std::end(list); }

// One bathroom as it is mentioned: "hall bath" is hall, "bath 2" 2, "bathroom" nothing.
struct BathMention {
    std::string which;
    std::size_t at;
};

std::vector<BathMention> baths_in(std::vector<std::string> const& words) {
    std::vector<BathMention> all;
    for (std::size_t i = 0; i < words.size(); ++i) {
        bool const own = is_in(kOfTheirOwn, words[i]);
        if (!own && !is_in(kBaths, words[i])) continue;
        std::string_view const next = i + 1 < words.size() ? std::string_view(words[i + 1]) : "";
        if (own && is_in(kBaths, next)) continue; // told by the next word
        std::string which = own ? words[i] : "";
        if (i > 0 && (is_in(kWhich, words[i - 1]) || is_in(kOfTheirOwn, words[i - 1]))) which = words[i - 1];
        if (next.size() == 1 && next != ",") which += next;
        all.push_back({std::move(which), i});
    }
    return all;
}

// "Bathroom and powder room": joined, so the one that is told apart is another. "Bathroom, hall bath light" is one.
bool is_another(std::vector<std::string> const& words, BathMention const& a, BathMention const& b) {
    if (a.which == b.which) return false;
    if (!a.which.empty() && !b.which.empty()) return true;
    auto const from = words.begin() + static_cast<std::ptrdiff_t>(a.at),
               to = words.begin() + static_cast<std::ptrdiff_t>(b.at);
    return std::find(from, to, std::string{}) != to && std::find(from, to, ",") == to;
}

bool names_several(std::string_view text) {
    auto const words = plain_words(text);
    if (std::ranges::any_of(words, [](std::string const& w) { return is_in(kPlurals, w); })) return true;
    auto const baths = baths_in(words);
    for (std::size_t i = 1; i < baths.size(); ++i)
        for (std::size_t before = 0; before < i; ++before)
            if (is_another(words, baths[before], baths[i])) return true;
    return false;
}
} // namespace

bool serves_several_baths(std::string_view name, std::string_view room) {
    return names_several(name) || names_several(room);
}

} // namespace legwork
