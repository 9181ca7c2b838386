// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/directory/naming.h"

#include "codebook/stock/plain_words.h"
#include "rules/directory/name_words.h"

#include <algorithm>

namespace legwork {

namespace {
// The letter without its accent for U+00C0 to U+00FF; a space for the two signs among them.
constexpr std::string_view kLatin1 = "aaaaaaaceeeeiiiidnooooo ouuuuytsaaaaaaaceeeeiiiidnooooo ouuuuyty";
static_assert(kLatin1.size() == 64);

bool is_letter(unsigned char b) {
    return (b >= 'a' && b <= 'z') || (b >= 'A' && b <= 'Z') || (b >= '0' && b <= '9') || b >= 0x80;
}

struct Letter {
    std::string folded; // "" at the end, " " for what separates words
    std::size_t bytes = 1;
    bool capital = false;
};

Letter letter_at(std::string_view text, std::size_t at) {
    auto const byte = [&](std::size_t i) {
        return at + i < text.size() ? static_cast<unsigned char>(text[at + i]) : static_cast<unsigned char>(0);
    };
    unsigned char const b = byte(0);
    if (b < 0x80) {
        if (b >= 'A' && b <= 'Z') return {std::string(1, static_cast<char>(b - 'A' + 'a')), 1, true};
        bool const word = is_letter(b) || b == '\'' || b == '-';
        return {std::string(1, word ? static_cast<char>(b) : ' '), 1, false};
    }
    if (b == 0xC2) return {" ", 2, false}; // signs: no-break space, guillemets, degree
    if (b == 0xC3 && (byte(1) & 0xC0) == 0x80) return {std::string(1, kLatin1[byte(1) - 0x80U]), 2, byte(1) < 0x9F};
    if (b == 0xC5 && (byte(1) | 1) == 0x93) return {"oe", 2, byte(1) == 0x92};
    if (b == 0xE2 && byte(1) == 0x80) return {byte(2) == 0x99 ? "'" : " ", 3, false}; // ’ and other marks
    if (b >= 0xF0) return {" ", 4, false};                                            // pictures
    std::size_t n = 1;
    while ((byte(n) & 0xC0) == 0x80) ++n;
    return {std::string(text.substr(at, n)), n, false}; // a letter of another script
}

// Without "l'", "d'" in front and "'s" behind.
std::string bare(std::string_view folded) {
    if (auto const base = possessor(folded)) return *base;
    if (folded.size() > 2 && folded[1] == '\'') folded.remove_prefix(2);
    return std::string(folded);
}

void add_word(NameSays& says, bool& telling, std::string const& word) {
    if (word.empty() || is_number_or_letter(word) || is_in(WordList::filler, word)) return;
    if (is_in(WordList::thing, word))
        says.thing = true;
    else if (is_in(WordList::place, word))
        says.place = true;
    else if (auto const hyphen = word.find('-'); hyphen != std::string::npos) {
        std::string joined = word;
        std::erase(joined, '-');
        if (is_in(WordList::thing, joined) || is_in(WordList::place, joined)) return add_word(says, telling, joined);
        add_word(says, telling, word.substr(0, hyphen));
        add_word(says, telling, word.substr(hyphen + 1));
    } else
        telling = true; // a word that is in no list names something of its own
}

// Short forms and misspellings as the words they stand for: "Lites" say no more than "Lights".
void add_spelled(NameSays& says, bool& telling, std::string const& word) {
    for (auto rest = usual_spelling(word); !rest.empty();) {
        auto const blank = std::min(rest.find(' '), rest.size());
        add_word(says, telling, std::string(rest.substr(0, blank)));
        rest.remove_prefix(std::min(blank + 1, rest.size()));
    }
}
} // namespace

bool is_number_or_letter(std::string_view folded) {
    return folded.size() <= 1 || (folded[0] >= '0' && folded[0] <= '9');
}

std::optional<std::string> possessor(std::string_view folded) {
    if (folded.size() > 2 && folded.ends_with("'s")) return std::string(folded.substr(0, folded.size() - 2));
    if (folded.size() > 3 && folded.ends_with("s'")) return std::string(folded.substr(0, folded.size() - 1));
    return std::nullopt;
}

std::vector<NameWord> words_of(std::string_view name) {
    std::vector<NameWord> found;
    NameWord word;
    bool quoted = false; // 'kitchen lights': marks around words are no apostrophes
    auto const end = [&] {
        while (!word.folded.empty() && (word.folded.back() == '-' || (quoted && word.folded.back() == '\''))) {
            if (word.folded.back() == '\'') quoted = false;
            word.folded.pop_back();
        }
        if (std::ranges::any_of(word.folded, [](char c) { return is_letter(static_cast<unsigned char>(c)); }))
            found.push_back(word);
        word = {};
    };
    for (std::size_t at = 0; at < name.size();) {
        Letter const l = letter_at(name, at);
        if (l.folded == " ")
            end();
        else if (word.folded.empty() && (l.folded == "'" || l.folded == "-"))
            quoted = quoted || l.folded == "'";
        else {
            if (word.folded.empty()) word.capital = l.capital;
            word.folded += l.folded;
            word.typed += name.substr(at, l.bytes);
        }
        at += l.bytes;
    }
    end();
    return found;
}

std::string reads_as(std::string_view text) {
    std::string all;
    for (NameWord const& w : words_of(text)) all += (all.empty() ? "" : " ") + w.folded;
    return all;
}

NameSays says(std::string_view name, std::string_view room) {
    NameSays found;
    bool telling = false;
    if (has_telling_phrase(reads_as(name))) return {true, true};
    for (NameWord const& w : words_of(name)) add_spelled(found, telling, bare(w.folded));
    if (telling) return {true, true};
    found.place = found.place || !words_of(room).empty();
    return found;
}

bool must_stay_on(Circuit const& c) {
    if (c.use && c.use->keep_on) return true;
    return std::ranges::any_of(words_of(c.name), [](NameWord const& w) { return is_in(WordList::keep_on, w.folded); });
}

} // namespace legwork
