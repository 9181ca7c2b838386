// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The keys of our files and values for them: mostly such as a person types, sometimes the outermost.
#pragma once

#include "fuzz/dice.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

enum class Kind {
    words, // a text
    mark,  // of a new thing
    group, // a letter or two
    amps,
    load,
    length,
    area,
    count,  // a whole number
    space,  // 7, "7b"
    spaces, // a list of numbers
    share,  // from 0 to 1
    flag,
    date,
    choice, // one of `words`, parted by |
    edition,
    use,
    cable,
    receptacles,
    rule,
    colors,
    feeder,      // "Main/SP"
    circuit,     // the mark of a circuit that is there
    circuits,    // a list of them
    panel,       // the name of a panel that is there
    supplies,    // a list of names
    table,       // an inline one: `words` is its text
    millimetres, // 12.5, "8.5 in"
};

struct KnownKey {
    std::string_view table; // "circuit"; of a form's keys empty
    std::string_view key;
    Kind kind;
    std::string_view words = {};
};

std::span<KnownKey const> job_keys();
std::span<KnownKey const> form_keys();

// Marks and names that the text holds already.
struct NamesThere {
    std::vector<std::string> marks, panels, supplies;
};

// The TOML text of a value.
std::string made_value(KnownKey const& key, NamesThere const& there, Dice& dice);

// What stands at the edges: of quantities, numbers, texts and of TOML.
std::span<std::string_view const> extremes();

// Every word that means something in a file of ours: for the dictionary.
std::vector<std::string> all_words();

} // namespace fuzz
