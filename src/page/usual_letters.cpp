// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "page/usual_letters.h"

#include <algorithm>
#include <array>
#include <limits>

namespace legwork {

namespace {

constexpr double kNone = std::numeric_limits<double>::infinity();

// In x-heights: the bolder of the two, rounded up, with the tenth that kerning may add to a pair.
constexpr double kNarrow = 0.85, kSmall = 1.1, kMiddle = 1.3, kLarge = 1.95, kWidest = 2.15;

constexpr std::array<double, 0x80> ascii_widths() {
    std::array<double, 0x80> widths{};
    widths.fill(kNone);
    for (std::size_t c = 0x20; c < 0x7F; ++c) widths[c] = kLarge;
    auto const set = [&](std::string_view letters, double width) {
        for (char const c : letters) widths[static_cast<unsigned char>(c)] = width;
    };
    set("|,;.:Iij !l\"frt", kNarrow);
    set("()-J[s]=ca$*/?FLS\\_`ekvxy", kSmall);
    set("+CEKPTYZbdghnopqu{}0123456789<>ABDGRVX", kMiddle);
    return widths;
}
constexpr auto kAscii = ascii_widths();

constexpr bool is_usual(char32_t c) {
    constexpr std::u32string_view signs = U"–—‘’“”•…€";
    return (c >= 0xA0 && c < 0x180 && c != 0xAD) ||
           signs.find(c) != std::u32string_view::npos; // U+00AD shows at line ends only
}

constexpr double width_of(char32_t c) {
    if (c < 0x80) return kAscii[c];
    bool const small = c >= 0xDF && c <= 0xFF && c != 0xE6; // with accents, of French and Spanish
    return small ? kMiddle : is_usual(c) ? kWidest : kNone;
}

struct Letter {
    std::string_view bytes;
    char32_t code;
};

// The first letter. What is no UTF-8 of two or three bytes has the code 0, which is not usual.
Letter first_letter(std::string_view words) {
    auto const at = [&](std::size_t i) { return static_cast<unsigned char>(words[i]); };
    auto const follows = [&](std::size_t i) { return i < words.size() && (at(i) & 0xC0) == 0x80; };
    char32_t const lead = at(0);
    if (lead < 0x80) return {words.substr(0, 1), lead};
    if (lead >= 0xC2 && lead < 0xE0 && follows(1)) return {words.substr(0, 2), (lead & 0x1F) << 6 | (at(1) & 0x3FU)};
    if (lead >= 0xE1 && lead < 0xF0 && follows(1) && follows(2))
        return {words.substr(0, 3), (lead & 0x0F) << 12 | (at(1) & 0x3FU) << 6 | (at(2) & 0x3FU)};
    std::size_t n = 1;
    while (follows(n)) ++n;
    return {words.substr(0, n), 0};
}

} // namespace

Mm UsualLetters::width(std::string_view words, Mm x_height, Weight) const {
    double sum = 0;
    while (!words.empty()) {
        auto const letter = first_letter(words);
        sum += width_of(letter.code);
        words.remove_prefix(letter.bytes.size());
    }
    return sum * x_height;
}

std::vector<std::string> UsualLetters::missing(std::string_view words) const {
    std::vector<std::string> letters;
    while (!words.empty()) {
        auto const letter = first_letter(words);
        if (width_of(letter.code) == kNone && std::ranges::count(letters, letter.bytes) == 0)
            letters.emplace_back(letter.bytes);
        words.remove_prefix(letter.bytes.size());
    }
    return letters;
}

} // namespace legwork
