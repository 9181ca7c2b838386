// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/tables/tables.h"

#include "codebook/cite.h"
#include "codebook/sections.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork {

namespace {
constexpr std::array kTables{
    CodeTable{"ampacity", "Ampacity of wire, A, not more than three loaded conductors, 30 °C around", ampacity_table},
    CodeTable{"small-wires", "Largest breaker on a small wire", small_wire_table},
    CodeTable{"breakers", "Standard breakers, A", breaker_table},
    CodeTable{"dwelling-feeders", "Smallest wire of a service or feeder that carries one whole dwelling",
              dwelling_feeder_table},
    CodeTable{"wire", "Diameter and area of wire (gauge formula of ASTM B258)", wire_size_table},
    CodeTable{"resistance", "Resistance of wire, direct current, 75 °C", resistance_table},
    CodeTable{"drop", "Voltage drop", drop_table},
    CodeTable{"easements", "Continuous loads, heating, motors, welders: shares of breaker and wire", easement_table},
    CodeTable{"range", "What the circuit of one household range is reckoned at", range_table},
    CodeTable{"receptacle-ratings", "Receptacles on a circuit of several", receptacle_rating_table},
    CodeTable{"branch", "What a branch circuit of a size may feed", branch_table},
    CodeTable{"cable-places", "Where cable of a type may run", cable_place_table},
    CodeTable{"burial", "How deep wires are buried, where nothing drives above them", burial_table},
    CodeTable{"outlet-count", "Most outlets on a circuit whose load is not known", outlet_count_table},
    CodeTable{"backfeed", "What a bus may take from solar or a battery beside its main", backfeed_table},
    CodeTable{"service-load", "What counts of a load for a service or feeder, by method", service_load_table},
    CodeTable{"cooking-load",
              "Household cooking appliances on a service or feeder: A up to 3 1/2 kW, B up to 8 3/4 kW, C up to 12 kW",
              cooking_load_table},
    CodeTable{"dryer-load", "Household dryers on a service or feeder", dryer_load_table},
    CodeTable{"receptacles", "Receptacle types (NEMA WD 6)", receptacle_table},
    CodeTable{"cables", "Cable kinds: conductors and colours as made", cable_table},
    CodeTable{"uses", "What a circuit is for, and what that says about it", use_table},
    CodeTable{"remarking", "What may be done to a conductor whose colour does not say its job", remarking_table},
    CodeTable{"demands", "Where the two families of codes part ways", demand_table},
    CodeTable{"gfci", "Ground-fault protection by place and use", gfci_table},
    CodeTable{"afci", "Arc-fault protection in dwellings", afci_rooms_table},
    CodeTable{"switch-neutral", "A neutral in the box of a switch", switch_neutral_table},
    CodeTable{"household", "Circuits that a dwelling must have", household_table},
    CodeTable{"counter", "Circuits of the kitchen counter", counter_table},
    CodeTable{"own-circuit", "Uses that want a circuit of their own", own_circuit_table},
    CodeTable{"positions", "Breaker positions that the panel of a dwelling must have, and how many of them free",
              position_table},
    CodeTable{"signs", "Signs asked for at a panel; what stands in { } is filled in", sign_table},
    CodeTable{"outbuilding", "How many supplies one outbuilding may have", outbuilding_table},
    CodeTable{"citations", "Where each edition speaks of what a rule asks", citation_table},
    CodeTable{"sources",
              "How each rule was come by, by edition; and, where less sure, its section's number or a figure",
              source_table},
};

constexpr std::string_view kSilent = "-", kUnread = "not read yet";

std::vector<CodeBook const*> all_books() {
    auto all = books_of(Family::nec);
    for (CodeBook const* book : books_of(Family::ce)) all.push_back(book);
    return all;
}

bool alike(std::vector<TableRow> const& x, std::vector<TableRow> const& y) {
    return std::ranges::equal(
        x, y, [](TableRow const& a, TableRow const& b) { return a.cells == b.cells && a.source == b.source; });
}

TableRow unread_row(std::string first, std::size_t columns) {
    std::vector<std::string> cells(columns, std::string(kSilent));
    cells.front() = std::move(first);
    return {std::move(cells), Source::unread};
}

// "NEC 2017: 314.16(B); NEC 2020, 2023: 314.16(B)(1)"; empty where none speaks.
void add_sections(TablePart& part, std::string_view topic) {
    if (topic.empty()) return;
    auto const& editions = part.editions;
    for (std::size_t i = 0; i < editions.size();) {
        auto const at = section_words(*code_book(editions[i]), topic);
        std::vector<std::string> same;
        for (; i < editions.size() && section_words(*code_book(editions[i]), topic) == at; ++i)
            same.push_back(editions[i]);
        if (at == kSilent) continue;
        part.sections += fmt::format("{}{}: {}", part.sections.empty() ? "" : "; ", short_editions(same), at);
        part.said_together = same.size() == editions.size();
    }
}
} // namespace

std::span<CodeTable const> code_tables() { return kTables; }

CodeTable const* code_table(std::string_view name) {
    auto const at = std::ranges::find(kTables, name, &CodeTable::name);
    return at == kTables.end() ? nullptr : &*at;
}

std::string section_words(CodeBook const& book, std::string_view topic) {
    auto const& says = section_of(book, topic);
    if (says.speaks()) return section_words(cite(book, topic));
    return std::string(says.is_unread() ? kUnread : kSilent);
}

std::vector<TableRow> unread_rows(CodeBook const& book, std::string_view prefix, std::size_t columns) {
    std::vector<TableRow> rows;
    for (Topic const& t : topics())
        if (t.name.starts_with(prefix) && section_of(book, t.name).is_unread())
            rows.push_back(unread_row(fmt::format("{}: {}", t.name.substr(prefix.size()), kUnread), columns));
    return rows;
}

std::string short_editions(std::vector<std::string> const& editions) {
    std::string all, family;
    for (auto const& edition : editions) {
        auto const blank = edition.find(' ');
        auto const now = edition.substr(0, blank);
        all += all.empty() ? "" : ", ";
        all += now == family ? edition.substr(blank + 1) : edition;
        family = now;
    }
    return all;
}

std::vector<TablePart> by_edition(std::vector<std::string> const& heads, std::string_view topic,
                                  std::function<std::vector<TableRow>(CodeBook const&)> const& rows) {
    std::vector<TablePart> parts;
    for (CodeBook const* book : all_books()) {
        auto made = rows(*book);
        if (made.empty()) made = {unread_row(std::string(kUnread), heads.size())};
        auto at = std::ranges::find_if(parts, [&](TablePart const& p) { return alike(p.rows, made); });
        if (at == parts.end()) at = parts.insert(at, {{}, "", heads, std::move(made)});
        at->editions.emplace_back(book->edition);
    }
    for (TablePart& part : parts) add_sections(part, topic);
    return parts;
}

} // namespace legwork
