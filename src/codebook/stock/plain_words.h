// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The words of a name as they are compared with the lists of places and uses.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Lower case, without accents (UTF-8's Latin-1 part), short forms and usual misspellings as the lists have them: "Kit
// recepticles" is kitchen, receptacles. "" stands where "and" joins two words, "," where a comma or the like parts
// them. Any bytes may be given.
std::vector<std::string> plain_words(std::string_view text);

// The word as the lists have it, several with blanks between ("livingroom": "living room"); itself when nothing else is
// known of it. `word`: lower case without accents. Common usage, no source.
std::string_view usual_spelling(std::string_view word);

// The slash at `at` stands within a short form, "A/C", and joins no two words.
bool is_short_form_slash(std::string_view text, std::size_t at);

} // namespace legwork
