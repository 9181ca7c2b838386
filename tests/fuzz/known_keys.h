// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The keys of our files and values for them: mostly such as a person types, sometimes the outermost.
#pragma once

#include "fuzz/dice.h"

#include "toml/key.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fuzz {

// A row of the keys, and the table it stands in.
struct KnownKey {
    std::string_view table; // "circuit"; of a form's keys empty
    legwork::Key const* row;

    std::string_view key() const { return row->name; }
};

std::vector<KnownKey> const& job_keys();
std::vector<KnownKey> const& form_keys();

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
