// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's name says, and whom it depends on.
#pragma once

#include "building/building.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// One word of a name. Apostrophes stay inside ("rosa's"), hyphens too ("sub-panel").
struct NameWord {
    std::string typed;    // as it stands
    std::string folded;   // lower case, without accents, the straight apostrophe
    bool capital = false; // its first letter is one
};
std::vector<NameWord> words_of(std::string_view name);

// "rosa's" gives "rosa", "millers'" "millers"; nothing for words that are no possessive. Of a folded word.
std::optional<std::string> possessor(std::string_view folded);
// "7", "20", "b": tells things apart and says nothing by itself. Of a folded word.
bool is_number_or_letter(std::string_view folded);

// Lower case, accents off, marks and spaces reduced to single spaces: what reads the same compares equal.
std::string reads_as(std::string_view text);

// What name and room together tell a stranger.
struct NameSays {
    bool thing = false, place = false;
};
NameSays says(std::string_view name, std::string_view room);

// Somebody in a name: sure of it, or only a guess. `words` is the part that says so ("Rosa's room").
struct PersonInName {
    bool sure = false;
    std::string words;
};
std::optional<PersonInName> person_in(std::string_view name);

// Harm is done when somebody switches it off unknowing: by its use, or by what it is called.
bool must_stay_on(Circuit const& c);

} // namespace legwork
