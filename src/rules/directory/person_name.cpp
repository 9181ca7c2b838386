// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/uses.h"
#include "rules/directory/name_words.h"
#include "rules/directory/naming.h"

#include <algorithm>

namespace legwork {

namespace {
using Words = std::vector<NameWord>;

bool any_after(Words const& words, std::size_t i, WordList list) {
    return std::any_of(words.begin() + static_cast<std::ptrdiff_t>(i) + 1, words.end(),
                       [&](NameWord const& w) { return is_in(list, w.folded); });
}

bool is_acronym(NameWord const& w) { // "TV's", "GFCI's": a plural
    return w.typed.size() > 3 && w.typed[0] >= 'A' && w.typed[0] <= 'Z' && w.typed[1] >= 'A' && w.typed[1] <= 'Z';
}

// A word that is known to be no person: a role, a place, a thing.
bool is_nobody(std::string const& base) {
    for (auto const list :
         {WordList::role, WordList::place, WordList::thing, WordList::filler, WordList::not_a_name, WordList::landmark})
        if (is_in(list, base)) return true;
    return is_number_or_letter(base) || use_named(base) != nullptr;
}

std::string up_to(Words const& words, std::size_t i, std::size_t last) {
    std::string all;
    for (; i <= last && i < words.size(); ++i) all += (all.empty() ? "" : " ") + words[i].typed;
    return all;
}

std::optional<PersonInName> possessive_at(Words const& words, std::size_t i) {
    auto const base = possessor(words[i].folded);
    if (!base || is_nobody(*base) || is_acronym(words[i])) return std::nullopt;
    if (i > 0 && is_in(WordList::saint, words[i - 1].folded)) return std::nullopt;
    if (any_after(words, i, WordList::landmark)) return std::nullopt;
    PersonInName found{false, up_to(words, i, i + 1)};
    if (is_in(WordList::child, *base)) {
        if (any_after(words, i, WordList::shared)) return std::nullopt;
        return found;
    }
    found.sure = any_after(words, i, WordList::place) || any_after(words, i, WordList::owned);
    return found;
}

std::optional<PersonInName> bare_guess_at(Words const& words, std::size_t i) {
    std::string const& word = words[i].folded;
    bool const somebody = is_in(WordList::child, word) ? word != "baby"
                                                       : is_in(WordList::relative, word) && word != "son" &&
                                                             word != "brother" && word != "sister";
    bool const mine = i == 0 && words.size() > 1 && is_in(WordList::mine, word);
    if ((!somebody && !mine) || any_after(words, i, WordList::shared) || any_after(words, i, WordList::landmark))
        return std::nullopt;
    return PersonInName{false, up_to(words, i, i + 1)};
}

// "Chambre de Rosa": within a phrase French and Spanish write a capital for names only.
std::optional<PersonInName> room_of_at(Words const& words, std::size_t i) {
    if (!is_in(WordList::room_of, words[i].folded) || i + 1 >= words.size()) return std::nullopt;
    NameWord const& next = words[i + 1];
    std::string name;
    bool capital = false;
    if (next.folded.starts_with("d'") && !next.capital) {                             // "Bureau d'Anne"
        auto const rest = words_of(next.typed.substr(next.typed[1] == '\'' ? 2 : 4)); // straight or U+2019
        if (rest.empty()) return std::nullopt;
        name = rest.front().folded;
        capital = rest.front().capital;
    } else if (is_in(WordList::of, next.folded) && !next.capital && i + 2 < words.size()) {
        name = words[i + 2].folded;
        capital = words[i + 2].capital;
    }
    if (!capital || name.size() < 2 || is_nobody(name)) return std::nullopt;
    return PersonInName{false, up_to(words, i, i + 2)};
}
} // namespace

std::optional<PersonInName> person_in(std::string_view name) {
    Words const words = words_of(name);
    std::optional<PersonInName> guess;
    for (std::size_t i = 0; i < words.size(); ++i)
        for (auto const look : {possessive_at, bare_guess_at, room_of_at}) {
            auto found = look(words, i);
            if (found && found->sure) return found;
            if (found && !guess) guess = found;
        }
    return guess;
}

} // namespace legwork
