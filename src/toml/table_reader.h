// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Reads one table of a file key by key. Asking for a key makes it known; `finish` complains about all others. A value
// of the wrong kind is a complaint with its place and counts as missing, so that reading goes on to the next mistake.
//
//     TableReader form(*root, 0, "a form", complaints);
//     f.name  = form.required_text("name");
//     f.width = form.length("width");
//     form.finish();
#pragma once

#include "toml/near.h"
#include "toml/text.h"
#include "units/date.h"
#include "units/length.h"
#include "units/quantity.h"

#include <array>
#include <functional>
#include <utility>
#include <variant>

namespace legwork {

// One text of a list, and where it stands.
struct PlacedText {
    std::string text;
    std::size_t at = 0;
};
std::vector<std::string> plain(std::vector<PlacedText> const& list);

template <class T>
using Choices = std::initializer_list<std::pair<std::string_view, T>>;

class TableReader {
public:
    static constexpr std::size_t kMostLetters = 200; // of a name

    // `what` names the table in messages: "a circuit". `at`: where the table begins, for what is missing in it.
    TableReader(TomlTable const& table, std::size_t at, std::string what, Complaints& out)
        : table_(&table), at_(at), what_(std::move(what)), out_(&out) {}

    void call_it(std::string what) { what_ = std::move(what); }
    std::string const& what() const { return what_; }
    std::size_t at() const { return at_; }
    Complaints& complaints() const { return *out_; }

    // A quantity may then be typed as "?": it counts as missing, and its key is added to `asked`.
    void allow_questions(std::vector<std::string>& asked) { asked_ = &asked; }

    // All return nothing (an empty text or list) when the key is missing or wrong.
    bool has(std::string_view key);
    bool is_question(std::string_view key);       // "?" where that is allowed; notes it
    TomlEntry const* entry(std::string_view key); // for a key of several kinds; null when missing
    // One line without control characters; of blanks alone it is empty.
    std::string text(std::string_view key, std::size_t most_letters = kMostLetters);
    std::optional<bool> flag(std::string_view key);
    std::optional<int> number(std::string_view key, int least, int most);
    std::optional<int> count(std::string_view key, int least, int most); // a number that may be "?"
    std::vector<int> numbers(std::string_view key, int least, int most);
    std::vector<PlacedText> texts(std::string_view key);
    std::optional<Date> date(std::string_view key);               // 2026-05-02 with or without quotes
    std::optional<std::int64_t> millionths(std::string_view key); // a share from 0 to 1
    std::optional<Amps> amps(std::string_view key);
    // "1500 VA", or the current that it draws: "12 A".
    std::optional<std::variant<VoltAmperes, Amps>> load(std::string_view key);
    std::optional<Length> length(std::string_view key);
    std::optional<Area> area(std::string_view key);
    std::optional<Volume> volume(std::string_view key);
    std::optional<TableReader> table(std::string_view key, std::string what);
    std::vector<TableReader> tables(std::string_view key, std::string const& what);

    // One of a few words.
    template <class T>
    std::optional<T> choice(std::string_view key, Choices<T> words) {
        if (!has(key)) return std::nullopt;
        auto const said = text(key);
        std::vector<std::string> known;
        for (auto const& [word, meaning] : words) {
            if (word == said) return meaning;
            known.emplace_back(word);
        }
        if (!said.empty()) unknown_word(value_at(key), key, said, known);
        return std::nullopt;
    }

    std::string required_text(std::string_view key, std::string_view example);
    std::optional<int> required_number(std::string_view key, int least, int most, std::string_view example);

    // Complaints with a place: the key's value, else the table.
    void complain(std::string_view key, std::string message, std::string fix);
    void unknown_word(std::size_t at, std::string_view key, std::string_view said, std::span<std::string const> known);
    std::size_t value_at(std::string_view key) const;

    // After all keys were asked for.
    void finish();

    TomlTable const& entries() const { return *table_; }

private:
    template <class T>
    T const* as(std::string_view key, std::string_view kind, std::string_view example);
    template <class T, class Parse>
    std::optional<T> quantity(std::string_view key, std::string_view kind, Parse parse);
    bool good_text(std::string_view key, std::string const& said, std::size_t at, std::size_t most_letters);
    bool within(std::string_view key, std::int64_t number, int least, int most, std::size_t at);
    TomlEntry const* known_entry(std::string_view key) const;

    TomlTable const* table_;
    std::size_t at_;
    std::string what_;
    Complaints* out_;
    std::vector<std::string>* asked_ = nullptr;
    std::vector<std::string> known_;
};

} // namespace legwork
