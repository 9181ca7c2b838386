// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/common_text.h"

#include "page/usual_letters.h"

#include <algorithm>

namespace legwork {

namespace {

// Two to four hundred letters at most are ever looked at: no line of a page holds more.
constexpr std::size_t kMostLetters = 400;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Where words may be parted: each piece carries the space, "-" or "/" that ends it.
std::vector<std::string_view> pieces(std::string_view words) {
    std::vector<std::string_view> found;
    std::size_t begin = 0;
    for (std::size_t i = 0; i < words.size(); ++i) {
        bool const in_word = i > begin && i + 1 < words.size() && words[i + 1] != ' ';
        bool const number = in_word && is_digit(words[i - 1]) && is_digit(words[i + 1]); // 2026-05-02, 4-024, 12/2
        bool const ends = words[i] == ' ' || ((words[i] == '-' || words[i] == '/') && in_word && !number);
        if (!ends) continue;
        found.push_back(words.substr(begin, i + 1 - begin));
        begin = i + 1;
    }
    if (begin < words.size()) found.push_back(words.substr(begin));
    return found;
}

std::string_view trimmed(std::string_view words) {
    while (!words.empty() && words.back() == ' ') words.remove_suffix(1);
    while (!words.empty() && words.front() == ' ') words.remove_prefix(1);
    return words;
}

struct Letter {
    std::size_t begin, end;
    char32_t code;
};

// Bytes that are no UTF-8 count as letters of one byte.
std::vector<Letter> letters(std::string_view words) {
    std::vector<Letter> found;
    for (std::size_t i = 0; i < words.size() && found.size() < kMostLetters;) {
        auto const first = static_cast<unsigned char>(words[i]);
        std::size_t const length = first < 0xC0 ? 1 : first < 0xE0 ? 2 : first < 0xF0 ? 3 : 4;
        std::size_t const end = std::min(words.size(), i + length);
        char32_t code = length == 1 ? first : first & (0xFFU >> (length + 1));
        for (std::size_t k = i + 1; k < end; ++k) code = code << 6 | (static_cast<unsigned char>(words[k]) & 0x3FU);
        found.push_back({i, end, code});
        i = end;
    }
    return found;
}

// Letters that belong to the one before: accents, variation selectors, joiners, skin tones.
bool leans_back(char32_t c) {
    return (c >= 0x300 && c <= 0x36F) || (c >= 0xFE00 && c <= 0xFE0F) || c == 0x200D ||
           (c >= 0x1F3FB && c <= 0x1F3FF) || (c >= 0x591 && c <= 0x5C7) || (c >= 0x64B && c <= 0x65F) ||
           (c >= 0x20D0 && c <= 0x20FF);
}
constexpr char32_t kJoiner = 0x200D;

// Bytes of the longest beginning that fits and ends with a whole letter; of one letter at least.
std::size_t fitting_bytes(TextWidth const& widths, std::string_view word, Weight weight, Mm x_height, Mm width) {
    auto const all = letters(word);
    std::size_t low = 1, high = all.size();
    while (low < high) {
        std::size_t const middle = (low + high + 1) / 2;
        if (widths.width(word.substr(0, all[middle - 1].end), x_height, weight) <= width)
            low = middle;
        else
            high = middle - 1;
    }
    auto const parts_letter = [&](std::size_t n) {
        return n < all.size() && (leans_back(all[n].code) || all[n - 1].code == kJoiner);
    };
    std::size_t whole = low;
    while (whole > 0 && parts_letter(whole)) --whole;
    return all[(whole > 0 ? whole : low) - 1].end;
}

} // namespace

std::optional<std::vector<std::string>> wrapped(TextWidth const& widths, std::string_view words, Weight weight,
                                                Mm x_height, Mm width, std::size_t most) {
    std::vector<std::string> lines;
    std::string line;
    auto const fits = [&](std::string_view text) { return widths.width(trimmed(text), x_height, weight) <= width; };
    if (fits(words) && most > 0) return std::vector{std::string(trimmed(words))};
    for (std::string_view const piece : pieces(words)) {
        std::string longer = line;
        longer += piece;
        if (fits(longer)) {
            line = std::move(longer);
            continue;
        }
        if (line.empty() || !fits(piece) || lines.size() + 1 >= most) return std::nullopt;
        lines.emplace_back(trimmed(line));
        line = piece;
    }
    lines.emplace_back(trimmed(line));
    if (lines.size() > most) return std::nullopt;
    return lines;
}

std::vector<std::string> wrapped_whole(TextWidth const& widths, std::string_view words, Weight weight, Mm x_height,
                                       Mm width) {
    auto const fits = [&](std::string_view text) { return widths.width(trimmed(text), x_height, weight) <= width; };
    if (fits(words)) return {std::string(trimmed(words))};
    std::vector<std::string> lines;
    std::string line;
    for (std::string_view piece : pieces(words)) {
        if (std::string longer = line + std::string(piece); fits(longer)) {
            line = std::move(longer);
            continue;
        }
        if (!trimmed(line).empty()) lines.emplace_back(trimmed(line));
        while (!fits(piece)) {
            auto const n = fitting_bytes(widths, piece, weight, x_height, width);
            if (n >= piece.size()) break; // one letter wider than the line
            lines.emplace_back(piece.substr(0, n));
            piece.remove_prefix(n);
        }
        line = piece;
    }
    if (!trimmed(line).empty()) lines.emplace_back(trimmed(line));
    return lines;
}

std::string shortened(TextWidth const& widths, std::string_view words, Weight weight, Mm x_height, Mm width) {
    words = trimmed(words);
    if (widths.width(words, x_height, weight) <= width) return std::string(words);
    auto const all = letters(words);
    std::string best = "…";
    // The width grows with the letters: halve towards the longest that fits, then step back to a whole letter.
    std::size_t low = 0, high = all.size();
    auto const cut = [&](std::size_t n) {
        return std::string(trimmed(words.substr(0, n == 0 ? 0 : all[n - 1].end))) + "…";
    };
    while (low < high) {
        std::size_t const middle = (low + high + 1) / 2;
        if (widths.width(cut(middle), x_height, weight) <= width)
            low = middle;
        else
            high = middle - 1;
    }
    while (low > 0 && low < all.size() && (leans_back(all[low].code) || all[low - 1].code == kJoiner)) --low;
    return low > 0 ? cut(low) : best;
}

Fitted fit_line(TextWidth const& widths, std::string_view words, Weight weight, Mm width, Mm largest, Mm smallest) {
    for (auto step = kScale.rbegin(); step != kScale.rend(); ++step)
        if (*step <= largest && *step >= smallest && widths.width(words, *step, weight) <= width)
            return {{std::string(words)}, *step, false};
    return {{shortened(widths, words, weight, smallest, width)}, smallest, true};
}

Fitted fit(TextWidth const& widths, std::string_view words, Weight weight, Mm width, Mm height, Mm largest,
           Mm smallest) {
    auto const lines_in = [&](Mm x) {
        std::size_t n = 1;
        while (n < 100 && block_height(n + 1, x) <= height) ++n;
        return n;
    };
    for (auto step = kScale.rbegin(); step != kScale.rend(); ++step) {
        if (*step > largest || *step < smallest || block_height(1, *step) > height) continue;
        if (auto lines = wrapped(widths, words, weight, *step, width, lines_in(*step)))
            return {std::move(*lines), *step, false};
    }
    // Whole lines as far as they go, the rest shortened on the last one.
    Fitted cut{{}, smallest, true};
    std::size_t const most = lines_in(smallest);
    std::string_view rest = trimmed(words);
    while (cut.lines.size() + 1 < most) {
        std::string line;
        std::size_t taken = 0;
        for (std::string_view const piece : pieces(rest)) {
            std::string const longer = line + std::string(piece);
            if (widths.width(trimmed(longer), smallest, weight) > width) break;
            line = longer;
            taken += piece.size();
        }
        if (taken == 0) break;
        cut.lines.emplace_back(trimmed(line));
        rest.remove_prefix(taken);
    }
    cut.lines.push_back(shortened(widths, rest, weight, smallest, width));
    return cut;
}

// A line and the next together are wider than the room, else the next had begun on it: so all together are wider than
// half of their number.
double most_lines(std::string_view words, Mm x_height, Mm width) {
    return 1 + 2 * UsualLetters().width(words, x_height, Weight::bold) / width;
}

std::string capital(std::string words) {
    if (!words.empty() && words[0] >= 'a' && words[0] <= 'z') words[0] = static_cast<char>(words[0] - 'a' + 'A');
    return words;
}

} // namespace legwork
