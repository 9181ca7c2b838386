// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Phrases as a test reads them.
#pragma once

#include "words/catalogue.h"
#include "words/phrase.h"

#include <string>
#include <vector>

inline std::string in_english(legwork::Phrase const& phrase) { return legwork::english().words(phrase); }
inline std::vector<std::string> in_english(legwork::Phrases const& phrases) {
    std::vector<std::string> words;
    for (auto const& p : phrases) words.push_back(in_english(p));
    return words;
}
