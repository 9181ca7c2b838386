// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork explain --keys: the tables of the job file, and the keys of one.
#include "cli/json_values.h"
#include "cli/keys.h"
#include "cli/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {

constexpr std::size_t kWidth = 100;

Json word_list(std::string_view parted) { return parted.empty() ? Json(nullptr) : Json(words_of(parted)); }

Json key_json(Key const& key) {
    bool const ranged = key.most > 0;
    return {{"key", key.name},
            {"takes", kind_in_words(key)},
            {"words", word_list(key.words)},
            {"least", ranged ? Json(key.least) : Json(nullptr)},
            {"most", ranged ? Json(key.most) : Json(nullptr)},
            {"asked", may_be_asked(key.takes)},
            {"needed", key.needed},
            {"default", text_or_null(std::string(key.otherwise))},
            {"help", key.help},
            {"example", key.example},
            {"column", text_or_null(std::string(key.header))},
            {"table", key.table ? Json(key.table->name) : Json(nullptr)}};
}

} // namespace

void list_key_tables(Streams& streams) {
    for (KeyTable const* table : key_tables())
        streams.out << fmt::format("{:<28}{}\n", table->name, in_lines(std::string(table->help), kWidth, 28, 28));
    streams.out << "\nlegwork explain --keys TABLE tells the keys of one.\n";
}

void print_keys(KeyTable const& table, Streams& streams) {
    std::size_t wide = 0;
    for (Key const& key : table.keys) wide = std::max(wide, key.name.size());
    wide += 4;
    streams.out << fmt::format("{}: {}\n", table_header(table), table.help);
    auto const line = [&](std::string_view head, std::string const& text) {
        streams.out << fmt::format("  {:<{}}", head, wide) << in_lines(text, kWidth, wide + 2, wide + 2) << '\n';
    };
    for (Key const& key : table.keys) {
        streams.out << '\n';
        line(key.name, std::string(key.help));
        line("", "takes " + takes_in_words(key));
        if (key.table) line("", fmt::format("its keys: legwork explain --keys {}", key.table->name));
        line("", fmt::format("{} = {}", key.name, key.example));
    }
    if (table.each) line("", takes_in_words(*table.each));
}

void write_key_tables_json(Streams& streams) {
    auto const one = [](KeyTable const* table) {
        return Json{{"table", table->name}, {"header", table_header(*table)}, {"help", table->help}};
    };
    write({{"tables", list(key_tables(), one)}}, streams);
}

void write_keys_json(KeyTable const& table, Streams& streams) {
    write({{"table", table.name},
           {"header", table_header(table)},
           {"help", table.help},
           {"keys", list(table.keys, key_json)}},
          streams);
}

} // namespace legwork
