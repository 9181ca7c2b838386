// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tables of the code book as text, to be read by people and programs. A new table is one row in tables.cpp.
#pragma once

#include "codebook/code_book.h"

#include <functional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct TableRow {
    std::vector<std::string> cells; // one for each head
    std::optional<Source> source;   // nothing: not out of a document, a word of ours
};

// What holds for these editions.
struct TablePart {
    std::vector<std::string> editions; // empty: whatever the edition
    std::string sections;              // where they say so; empty: the rows do, or none does
    std::vector<std::string> heads;
    std::vector<TableRow> rows;
    bool said_together = false; // `sections` begins with all of `editions`, since all say it in the same place
};

struct CodeTable {
    std::string_view name;  // as typed: "ampacity"
    std::string_view title; // "Ampacity of copper and aluminium wire"
    std::vector<TablePart> (*parts)();
};
std::span<CodeTable const> code_tables();
CodeTable const* code_table(std::string_view name); // null when there is none

// The rows of every edition; editions that say the same stand together. `topic`: of cite.h, empty for none. An edition
// without rows was not read there, and one row says so.
std::vector<TablePart> by_edition(std::vector<std::string> const& heads, std::string_view topic,
                                  std::function<std::vector<TableRow>(CodeBook const&)> const& rows);

// For the cell of a section: "210.4(B)", "-" where the edition is silent, "not read yet".
std::string section_words(CodeBook const& book, std::string_view topic);
// A row for each topic under `prefix` that nobody has read in the edition; its aspect stands in the first column.
std::vector<TableRow> unread_rows(CodeBook const& book, std::string_view prefix, std::size_t columns);

// "NEC 2017, 2020, CE 2024" for "NEC 2017", "NEC 2020", "CE 2024".
std::string short_editions(std::vector<std::string> const& editions);

// Of wires and breakers.
std::vector<TablePart> ampacity_table();
std::vector<TablePart> small_wire_table();
std::vector<TablePart> breaker_table();
std::vector<TablePart> dwelling_feeder_table();
std::vector<TablePart> wire_size_table();
std::vector<TablePart> resistance_table();
std::vector<TablePart> drop_table();
// What a circuit may carry.
std::vector<TablePart> easement_table();
std::vector<TablePart> range_table();
std::vector<TablePart> receptacle_rating_table();
std::vector<TablePart> branch_table();
std::vector<TablePart> outlet_count_table();
std::vector<TablePart> backfeed_table();
// Where a cable may run.
std::vector<TablePart> cable_place_table();
std::vector<TablePart> burial_table();
// What counts for a service or feeder.
std::vector<TablePart> service_load_table();
std::vector<TablePart> cooking_load_table();
std::vector<TablePart> dryer_load_table();
// Words that a job file takes.
std::vector<TablePart> receptacle_table();
std::vector<TablePart> cable_table();
std::vector<TablePart> use_table();
// What a code demands or forbids.
std::vector<TablePart> remarking_table();
std::vector<TablePart> demand_table();
std::vector<TablePart> sign_table();
std::vector<TablePart> outbuilding_table();
std::vector<TablePart> citation_table();
std::vector<TablePart> source_table();
// Of dwellings.
std::vector<TablePart> gfci_table();
std::vector<TablePart> afci_rooms_table();
std::vector<TablePart> switch_neutral_table();
std::vector<TablePart> household_table();
std::vector<TablePart> counter_table();
std::vector<TablePart> own_circuit_table();
std::vector<TablePart> position_table();

} // namespace legwork
