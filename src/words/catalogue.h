// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Phrases into the words of one language. A catalogue is a value that is handed along; nothing asks the surroundings
// what language they speak.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

class Phrase;

class Catalogue {
public:
    // A pattern for each of kRows, with the same names between braces; where it is empty the English one stands in.
    Catalogue(std::string language, std::vector<std::string> patterns);

    std::string words(Phrase const& phrase) const;
    std::string const& language() const { return language_; } // "en", "fr"
    // Whether every row whose id begins so has words of this language.
    bool has_all(std::string_view beginning) const;

private:
    std::string filled(std::size_t row, std::vector<std::string> const& arguments) const;
    std::string figure(std::string_view digits) const;

    std::string language_;
    std::vector<std::string> patterns_;
};

Catalogue const& english();
// Of a language that has translations, or English; null for any other.
Catalogue const* catalogue(std::string_view language);

// The translations that are compiled in: the bytes of each file in po/.
struct Translation {
    std::string_view language, po;
};
std::vector<Translation> const& translations();

} // namespace legwork
