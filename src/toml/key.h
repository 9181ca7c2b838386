// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A key of one of our files, as a row: all that is said of it anywhere. The reader (table_reader.h), its messages, the
// lists of `explain --keys`, the schema and the manual page are made of the same rows.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// The kind of value that a key takes. Where it may be looked up, and where it is not known yet, "?" stands for a
// quantity, a count or a cable.
enum class Takes {
    text,            // one line of at most `most` letters
    name,            // of a new thing: a text that is not empty
    mark,            // of a new thing
    flag,            // true or false
    number,          // whole, from `least` to `most`
    count,           // the same, or "?"
    numbers,         // a list of them
    current,         // "20 A"
    load,            // "1500 VA", "12 A"
    length,          // "9.5 m"
    area,            // "64 m²"
    volume,          // "524 mL"
    millimetres,     // 12.5, "8.5 in", from `least` to `most`
    share,           // from 0 to 1
    date,            // 2026-05-02
    word,            // one of `words`
    word_or_flag,    // the same, or true or false
    word_or_words,   // the same, or a list of `listed`
    word_or_numbers, // the same, or a list of numbers
    space,           // 7, "7b"
    cable,           // a cable kind of the code book
    edition,         // of the code book, as the next three
    use,             //
    rule,            //
    receptacles,     // a list
    color,           // "red", "white with red stripe"
    colors,          // a list
    feeder,          // "Main/SP"
    circuit,         // the mark of a circuit of this file
    circuits,        // a list
    panel,           // the name of a panel of this file
    supply,          // the name of a supply of this file
    supplies,        // a list
    texts,           // a list
    groups_of_loads, // lists of uses and marks
    shares_of_loads, // a table: share by use or mark
    table,           // of the keys of `table`
    tables,          // a list of at most `most` of them
};

struct KeyTable;

struct Key {
    std::string_view name;
    Takes takes;
    std::string_view example; // as it is typed behind the =
    std::string_view help;    // one line; a sentence without its point
    int least = 0, most = 0;  // of numbers, of letters, of the length of a list; 0 and 0: the usual
    std::string_view words{}; // parted by |
    std::string_view listed{};
    std::string_view otherwise{}; // what holds where it is not said, where there is such a thing
    bool needed = false;          // in every table
    std::string_view header{};    // the column of a spreadsheet that holds it
    KeyTable const* table = nullptr;
};

struct KeyTable {
    std::string_view name; // "circuit"; of one within another "circuit.segments"; of the file itself empty
    std::string_view what; // in messages: "a circuit"
    std::string_view help; // one line
    std::span<Key const> keys;
    Key const* each = nullptr; // where the keys are marks and the like: the row of them all
};

// Null when the table has no such key.
Key const* find(KeyTable const& table, std::string_view key);
// "a|b" as a, b; none of nothing.
std::vector<std::string> words_of(std::string_view parted);
std::vector<std::string> names_of(KeyTable const& table);
// The table and those within it, in the order of their rows.
std::vector<KeyTable const*> with_inner(KeyTable const& table);

// What a key takes, in words that stand behind "takes": "a current with its unit", "one of: left, right".
std::string kind_in_words(Key const& key);
// Where the words that a key takes are listed, as a call: "legwork explain --table uses"; empty where the row has all.
std::string_view listed_by(Takes takes);
// May be typed as "?".
bool may_be_asked(Takes takes);

} // namespace legwork
