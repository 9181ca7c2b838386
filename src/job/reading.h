// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A job while it is read. First all names are taken, then table by table the keys, then what holds between tables.
// Only the reader's own files include this.
#pragma once

#include "job/read.h"
#include "toml/table_reader.h"

namespace legwork {

// The tables of one kind, in step with their list in the Job.
using Tables = std::vector<TableReader>;

struct Reading {
    Vocabulary const& words;
    Complaints& out;
    typed::Job job{};
    Places places{};
    Tables supplies{}, panels{}, circuits{}, situations{}, cables{}, boxes{}, accepts{};
    // Whatever calls itself so, even where its own table is wrong: one mistake is told once.
    std::vector<std::string> marks{}, cable_marks{}, panel_names{}, supply_names{};

    typed::Circuit* circuit(std::string_view mark); // null when there is none
    // Complains when no circuit has this mark.
    bool is_circuit(TableReader& from, std::string_view mark, std::size_t at);
};

bool contains(std::vector<std::string> const& list, std::string_view word);

void take_names(Reading& r);                    // marks and names: form, missing ones, duplicates
void read_heads(Reading& r, TableReader& file); // [job], and [dwelling] by the next
void read_dwelling(Reading& r, TableReader t);
void read_supplies(Reading& r);
void read_panels(Reading& r);
void read_circuits(Reading& r);
void read_home_run(Reading& r, TableReader& t, typed::Circuit& c); // cable, length, segments
std::string read_cable_kind(Reading& r, TableReader& t, std::string_view key);
// Colours in small letters.
WirePlace read_where(TableReader& t); // under "where"
std::vector<std::string> read_colors(TableReader& t, std::string_view key);
std::string read_color(TableReader& t, std::string_view key);
void read_situations(Reading& r); // after the circuits: shares go by their uses and marks
void read_cables(Reading& r);
void read_boxes(Reading& r);
void read_accepts(Reading& r);

void resolve_panels(Reading& r); // a circuit's panel
void check_feeders(Reading& r);  // feeders, cycles, and what a panel's own supply may say
void match_pairs(Reading& r);    // groups of two; home-run keys copied from one member to the other
void check_spaces(Reading& r);   // who stands where

void record(Reading& r, Subject thing, std::string const& id, TableReader const& t); // the places of a table's keys

} // namespace legwork
