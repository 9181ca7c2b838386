// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Reads one table of a file key by key. What a key takes (its kind, range, words) and what messages say of it stand in
// its row (key.h); to ask for a key that has no row is a bug, and such a key does not exist. Asking for a key makes it
// known; `finish` complains about all others. A value of the wrong kind is a complaint with its place and counts as
// missing, so that reading goes on to the next mistake.
//
//     TableReader form(*root, 0, kFormTable, complaints);
//     f.title = form.required_text("title");
//     f.width = form.millimetres("width");
//     form.finish();
#pragma once

#include "toml/key.h"
#include "toml/near.h"
#include "toml/text.h"
#include "units/date.h"
#include "units/length.h"
#include "units/quantity.h"

#include <algorithm>
#include <array>
#include <cassert>
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

class TableReader {
public:
    static constexpr std::size_t kMostLetters = 200; // of a text whose row says no more

    // `keys` names the table in messages: "a circuit". `at`: where the table begins, for what is missing in it.
    TableReader(TomlTable const& table, std::size_t at, KeyTable const& keys, Complaints& out)
        : table_(&table), at_(at), keys_(&keys), what_(keys.what), out_(&out) {}

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
    std::string text(std::string_view key);
    std::optional<bool> flag(std::string_view key);
    std::optional<int> number(std::string_view key);
    std::optional<int> count(std::string_view key); // a number that may be "?"
    // `most`: where it is less than what the row says.
    std::vector<int> numbers(std::string_view key, std::optional<int> most = std::nullopt);
    std::vector<PlacedText> texts(std::string_view key);
    std::optional<Date> date(std::string_view key);               // 2026-05-02 with or without quotes
    std::optional<std::int64_t> millionths(std::string_view key); // a share from 0 to 1
    std::optional<Amps> amps(std::string_view key);
    // "1500 VA", or the current that it draws: "12 A".
    std::optional<std::variant<VoltAmperes, Amps>> load(std::string_view key);
    std::optional<Length> length(std::string_view key);
    std::optional<Area> area(std::string_view key);
    std::optional<Volume> volume(std::string_view key);
    std::optional<double> millimetres(std::string_view key); // 12.5, "8.5 in"
    // `what`: when the row's table is called otherwise here. A table in double brackets, or a list of them that stands
    // in single ones, is a complaint and read all the same.
    std::optional<TableReader> table(std::string_view key, std::string what = {});
    std::vector<TableReader> tables(std::string_view key, std::string const& what = {});

    // One of the row's words; empty when missing or wrong.
    std::string word(std::string_view key);
    // The same by what each of the row's words means.
    template <class T>
    std::optional<T> choice(std::string_view key, std::initializer_list<T> meanings) {
        auto const known = words(key);
        assert(known.size() == meanings.size());
        auto const at = std::ranges::find(known, word(key));
        return at == known.end() ? std::nullopt : std::optional<T>(meanings.begin()[at - known.begin()]);
    }

    std::string required_text(std::string_view key);
    std::optional<int> required_number(std::string_view key);

    // Complaints with a place: the key's value, else the table.
    void complain(std::string_view key, std::string message, std::string fix);
    void unknown_word(std::size_t at, std::string_view key, std::string_view said, std::span<std::string const> known);
    // The way out where a key that is needed is missing: `add  spaces = 24`.
    void complain_missing(std::string_view key);
    std::size_t value_at(std::string_view key) const;

    // After all keys were asked for.
    void finish();

    TomlTable const& entries() const { return *table_; }

private:
    template <class T>
    T const* as(std::string_view key);
    template <class T, class Parse>
    std::optional<T> quantity(std::string_view key, std::string_view kind, Parse parse);
    bool good_text(std::string_view key, std::string const& said, std::size_t at);
    bool within(std::string_view key, std::int64_t number, int least, int most, std::size_t at);
    Key const& row(std::string_view key) const;
    bool is_a(std::string_view key, std::initializer_list<Takes> kinds) const; // for asserts
    std::vector<std::string> words(std::string_view key) const;
    std::string example(std::string_view key) const; // "spaces = 24"
    TomlEntry const* known_entry(std::string_view key) const;

    TomlTable const* table_;
    std::size_t at_;
    KeyTable const* keys_;
    std::string what_;
    Complaints* out_;
    std::vector<std::string>* asked_ = nullptr;
    std::vector<std::string> known_;
};

} // namespace legwork
