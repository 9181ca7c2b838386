// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "words/catalogue.h"

#include "words/po.h"
#include "words/say.h"

#include <algorithm>
#include <cassert>
#include <map>

namespace legwork {

namespace {

constexpr std::size_t kGroup = 3; // digits of a group

// Capitals or not.
bool has_words(std::string_view name, std::string_view words) {
    auto const lower = [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; };
    while (words.ends_with(' ')) words.remove_suffix(1);
    while (words.starts_with(' ')) words.remove_prefix(1);
    auto const same = [&](char a, char b) { return lower(a) == lower(b); };
    return std::search(name.begin(), name.end(), words.begin(), words.end(), same) != name.end();
}

std::map<std::string, Catalogue, std::less<>> translated() {
    std::map<std::string, Catalogue, std::less<>> all;
    for (auto const& [language, bytes] : translations()) {
        std::vector<std::string> patterns(kRows.size());
        for (PoEntry const& e : read_po(bytes).entries) {
            auto const row = row_number(e.context);
            // Words of an English that has changed since are no translation of what is meant now.
            if (row < kRows.size() && kRows[row].english == e.english) patterns[row] = e.translation;
        }
        all.emplace(language, Catalogue(std::string(language), std::move(patterns)));
    }
    return all;
}

} // namespace

Catalogue::Catalogue(std::string language, std::vector<std::string> patterns)
    : language_(std::move(language)), patterns_(std::move(patterns)) {
    assert(patterns_.size() == kRows.size());
}

std::string Catalogue::words(Phrase const& phrase) const {
    switch (phrase.kind()) {
    case Phrase::Kind::as_it_stands: return phrase.text();
    case Phrase::Kind::figure: return figure(phrase.text());
    case Phrase::Kind::row: break;
    }
    std::vector<std::string> arguments;
    for (Phrase const& a : phrase.arguments()) arguments.push_back(words(a));
    if (phrase.unless_said() && has_words(arguments.front(), filled(phrase.row(), {""}))) return arguments.front();
    return filled(phrase.row(), arguments);
}

bool Catalogue::has_all(std::string_view beginning) const {
    for (std::size_t i = 0; i < kRows.size(); ++i)
        if (kRows[i].id.starts_with(beginning) && patterns_[i].empty()) return false;
    return true;
}

// One pass, so that braces in what a person typed stay what they are.
std::string Catalogue::filled(std::size_t row, std::vector<std::string> const& arguments) const {
    std::string_view const english = kRows[row].english;
    std::string_view const pattern = patterns_[row].empty() ? english : std::string_view(patterns_[row]);
    std::string all;
    std::size_t done = 0;
    for (auto at = blank_in(pattern, 0); at.begin != std::string_view::npos; at = blank_in(pattern, at.end)) {
        all += pattern.substr(done, at.begin - done);
        auto const number = argument_number(english, at.name);
        assert(number < arguments.size());
        all += arguments.at(number);
        done = at.end;
    }
    return all += pattern.substr(done);
}

std::string Catalogue::figure(std::string_view digits) const {
    static constexpr RowFor<2> kDecimal("figure/decimal"), kThousands("figure/thousands");
    auto const point = digits.find('.');
    std::string_view const whole = digits.substr(0, point);
    std::size_t const first = whole.size() > kGroup ? (whole.size() - 1) % kGroup + 1 : whole.size();
    std::string grouped(whole.substr(0, first));
    for (std::size_t i = first; i < whole.size(); i += kGroup)
        grouped = filled(kThousands.number, {grouped, std::string(whole.substr(i, kGroup))});
    if (point == std::string_view::npos) return grouped;
    return filled(kDecimal.number, {grouped, std::string(digits.substr(point + 1))});
}

Catalogue const& english() {
    static Catalogue const words("en", [] {
        std::vector<std::string> patterns;
        for (Row const& r : kRows) patterns.emplace_back(r.english);
        return patterns;
    }());
    return words;
}

Catalogue const* catalogue(std::string_view language) {
    static auto const all = translated();
    if (language == english().language()) return &english();
    auto const at = all.find(language);
    return at == all.end() ? nullptr : &at->second;
}

} // namespace legwork
