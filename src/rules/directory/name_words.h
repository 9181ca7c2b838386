// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words that circuit names are judged by: English, French and Spanish, lower case, without accents, one form each
// (a plural in -s or -es is found under its singular). All of it is common usage, no source. A new word is added here
// and nowhere else.
#pragma once

#include <string_view>

namespace legwork {

enum class WordList {
    filler,     // says nothing: articles, "misc", "circuit"
    thing,      // a kind of load that a building has many of: "lights", "receptacles", "heater"
    place,      // a room, a floor, a side
    role,       // whoever holds it, the name stays true: "men", "guest", "chef"
    child,      // somebody who grows up: "kid", "teen"
    relative,   // one person of the family: "mom", "uncle"
    mine,       // "my", "our": only the writer knows
    owned,      // what people call their own besides rooms: "desk", "computer"
    shared,     // after a child word or relative makes it a lasting place: "washroom", "flat"
    landmark,   // makes a name before it the name of a place: "creek", "diner"
    saint,      // before a name makes it a place: "St."
    not_a_name, // short forms in 's that are no possessives: "what's"
    room_of,    // French and Spanish rooms that are said to be "de" somebody
    of,         // what joins them
    keep_on,    // people or things that depend on it staying on: "oxygen", "alarm"
};

// `word` in lower case without accents; true for it and for its plural.
bool is_in(WordList list, std::string_view word);
// Words that say nothing apart and enough together: "heat pump", "A/C" ("a c"). `words`: single spaces between them.
bool has_telling_phrase(std::string_view words);

} // namespace legwork
