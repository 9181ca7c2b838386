// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/key.h"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>

namespace legwork {

namespace {

std::string quoted_words(std::string_view parted) {
    std::vector<std::string> all;
    for (auto const& word : words_of(parted)) all.push_back('"' + word + '"');
    return fmt::format("{}", fmt::join(all, ", "));
}

std::string range(Key const& key) { return fmt::format("from {} to {}", key.least, key.most); }

} // namespace

Key const* find(KeyTable const& table, std::string_view key) {
    if (table.each) return table.each;
    auto const found = std::ranges::find(table.keys, key, &Key::name);
    return found == table.keys.end() ? nullptr : &*found;
}

std::vector<std::string> words_of(std::string_view parted) {
    std::vector<std::string> words;
    while (!parted.empty()) {
        auto const bar = std::min(parted.find('|'), parted.size());
        words.emplace_back(parted.substr(0, bar));
        parted.remove_prefix(std::min(bar + 1, parted.size()));
    }
    return words;
}

std::vector<std::string> names_of(KeyTable const& table) {
    std::vector<std::string> names;
    for (Key const& key : table.keys) names.emplace_back(key.name);
    return names;
}

std::vector<KeyTable const*> with_inner(KeyTable const& table) {
    std::vector<KeyTable const*> all{&table};
    for (Key const& key : table.keys)
        if (key.table)
            for (KeyTable const* inner : with_inner(*key.table)) all.push_back(inner);
    return all;
}

std::string kind_in_words(Key const& key) {
    switch (key.takes) {
    case Takes::text: return "text in quotes";
    case Takes::name: return "a name, text in quotes";
    case Takes::mark: return "a mark, text in quotes";
    case Takes::flag: return "true or false, without quotes";
    case Takes::number:
    case Takes::count: return fmt::format("a whole number {}, without quotes", range(key));
    case Takes::numbers: return fmt::format("a list of whole numbers {}", range(key));
    case Takes::current: return "a current with its unit";
    case Takes::load: return "a load with its unit";
    case Takes::length: return "a length with its unit";
    case Takes::area: return "an area with its unit";
    case Takes::volume: return "a volume with its unit";
    case Takes::millimetres: return fmt::format("millimetres {}, or a length with its unit", range(key));
    case Takes::share: return "a share from 0 to 1";
    case Takes::date: return "a date";
    case Takes::word: return fmt::format("one of {}", quoted_words(key.words));
    case Takes::word_or_flag: return fmt::format("true, false, or one of {}", quoted_words(key.words));
    case Takes::word_or_words:
        return fmt::format("one of {}, or a list of {}", quoted_words(key.words), quoted_words(key.listed));
    case Takes::word_or_numbers:
        return fmt::format("one of {}, or a list of whole numbers {}", quoted_words(key.words), range(key));
    case Takes::space: return fmt::format("a space {}, or in quotes a half of one", range(key));
    case Takes::cable: return "a cable kind, text in quotes";
    case Takes::edition: return "an edition, text in quotes";
    case Takes::use: return "a use, text in quotes";
    case Takes::rule: return "a rule, text in quotes";
    case Takes::receptacles: return "a list of receptacle types";
    case Takes::color: return "a colour, text in quotes";
    case Takes::colors: return "a list of colours";
    case Takes::feeder: return "a panel and a mark, \"PANEL/MARK\"";
    case Takes::circuit: return "the mark of a circuit, text in quotes";
    case Takes::circuits: return "a list of marks of circuits";
    case Takes::panel: return "the name of a panel, text in quotes";
    case Takes::supply: return "the name of a supply, text in quotes";
    case Takes::supplies: return "a list of names of supplies";
    case Takes::texts: return "a list of texts";
    case Takes::groups_of_loads: return "a list of groups of uses or marks";
    case Takes::shares_of_loads: return "a table of shares from 0 to 1";
    case Takes::table: return "a table";
    case Takes::tables: return "a list of tables";
    }
    return {};
}

std::string_view listed_by(Takes takes) {
    switch (takes) {
    case Takes::cable: return "legwork explain --table cables";
    case Takes::use:
    case Takes::groups_of_loads: return "legwork explain --table uses";
    case Takes::receptacles: return "legwork explain --table receptacles";
    case Takes::edition: return "legwork explain --table citations";
    case Takes::rule: return "legwork explain";
    default: return {};
    }
}

bool may_be_asked(Takes takes) {
    switch (takes) {
    case Takes::count:
    case Takes::current:
    case Takes::load:
    case Takes::length:
    case Takes::area:
    case Takes::volume:
    case Takes::cable: return true;
    default: return false;
    }
}

} // namespace legwork
