// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the rows of keys (toml/key.h) tell people, programs, editors and the manual.
#pragma once

#include "cli/command.h"
#include "toml/key.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// The tables of the job file, those within them, and the form file: "job", "circuit", "circuit.segments", "form".
std::vector<KeyTable const*> key_tables();
KeyTable const* key_table(std::string_view name); // null when there is none
std::vector<std::string> key_table_names();
// How a table is begun in the file: "[[circuit]]", "segments = [{ ... }]".
std::string table_header(KeyTable const& table);
// What a key takes in one sentence without its point, with the call that lists the words and what holds when not said.
std::string takes_in_words(Key const& key);

void list_key_tables(Streams& streams);
void print_keys(KeyTable const& table, Streams& streams);
void write_key_tables_json(Streams& streams);
void write_keys_json(KeyTable const& table, Streams& streams);

// JSON Schema (draft 2020-12) of the job file, as an editor asks it of a TOML document: dates are texts there.
void write_job_schema(Streams& streams);
// The manual page legwork-job(5).
std::string job_page();

} // namespace legwork
