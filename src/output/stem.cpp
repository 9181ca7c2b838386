// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/files.h"

#include <array>

namespace legwork {

namespace {

// U+00C0 to U+00FF, the accented letters of western Europe, without their accents.
constexpr std::array<std::string_view, 64> kPlain{
    "A", "A", "A", "A", "A", "A", "AE", "C", "E",  "E",  "E", "E", "I", "I", "I", "I", "D",  "N", "O",  "O", "O", "O",
    "O", "",  "O", "U", "U", "U", "U",  "Y", "Th", "ss", "a", "a", "a", "a", "a", "a", "ae", "c", "e",  "e", "e", "e",
    "i", "i", "i", "i", "d", "n", "o",  "o", "o",  "o",  "o", "",  "o", "u", "u", "u", "u",  "y", "th", "y"};

bool is_plain(unsigned char c) { return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); }

} // namespace

std::string file_stem(std::string_view panel_name) {
    std::string stem;
    for (std::size_t i = 0; i < panel_name.size(); ++i) {
        auto const c = static_cast<unsigned char>(panel_name[i]);
        auto const next = i + 1 < panel_name.size() ? static_cast<unsigned char>(panel_name[i + 1]) : 0;
        std::string_view letters;
        if (c == 0xC3 && next >= 0x80 && next <= 0xBF) {
            letters = kPlain[static_cast<std::size_t>(next) - 0x80];
            ++i;
        } else if (is_plain(c)) {
            letters = panel_name.substr(i, 1);
        }
        if (!letters.empty())
            stem += letters;
        else if (!stem.empty() && stem.back() != '-')
            stem += '-';
    }
    if (!stem.empty() && stem.back() == '-') stem.pop_back();
    if (stem.size() > 100) stem.resize(100); // a file's name has 255 bytes at most, and more is put after it
    return stem.empty() ? "panel" : stem;
}

} // namespace legwork
