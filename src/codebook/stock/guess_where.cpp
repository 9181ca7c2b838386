// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/guess_where.h"

#include <algorithm>
#include <array>
#include <string>
#include <vector>

namespace legwork {

namespace {
using Words = std::vector<std::string>;

Words words_of(std::string_view text) {
    Words all;
    std::string word;
    for (char const c : text) {
        bool const letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || static_cast<unsigned char>(c) >= 0x80;
        if (letter) word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        if (letter || word.empty()) continue;
        all.push_back(std::move(word));
        word.clear();
    }
    if (!word.empty()) all.push_back(std::move(word));
    return all;
}

constexpr auto kOpen = std::to_array<std::string_view>(
    {"dock",    "docks",      "jetty",    "pier",        "wharf",     "post",   "posts",  "pole",
     "poles",   "yard",       "backyard", "lamppost",    "lampposts", "quai",   "ponton", "poteau",
     "poteaux", "lampadaire", "muelle",   "embarcadero", "poste",     "postes", "farola", "farolas"});
// "Yard door", "dock shed", "pole barn", "post office": a thing, and the wall that has it.
constexpr auto kOfAWall = std::to_array<std::string_view>(
    {"door", "side", "wall", "window", "gable", "end", "entrance", "shed", "barn", "house", "office", "room", "level"});
// "Loading dock", "goal post", "curtain pole", "bed post", "lumber yard".
constexpr auto kNotOpen =
    std::to_array<std::string_view>({"loading", "docking", "goal", "curtain", "bed", "newel", "flag", "lumber", "wood",
                                     "by", "near", "facing", "two", "one", "single", "double", "parcel", "bank"});

template <class List>
bool is_in(List const& list, std::string_view word) {
    return std::ranges::find(list, word) != list.end();
}
} // namespace

bool stands_in_the_open(std::string_view words) {
    auto const all = words_of(words);
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (!is_in(kOpen, all[i])) continue;
        bool const article = i > 0 && (all[i - 1] == "the" || all[i - 1] == "a");
        auto const before = i > (article ? 1u : 0u) ? all[i - (article ? 2 : 1)] : std::string();
        auto const after = i + 1 < all.size() ? all[i + 1] : std::string();
        if (!is_in(kNotOpen, before) && !is_in(kOfAWall, after)) return true;
    }
    return false;
}

bool stands_in_the_open(std::string_view name, std::string_view room, RoomPlaces places) {
    bool const roofed = !room.empty() && !places.any_of({RoomPlace::outdoor, RoomPlace::dock});
    return stands_in_the_open(room) || (!roofed && stands_in_the_open(name));
}

} // namespace legwork
