// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "codebook/demands.h"
#include "codebook/outbuilding.h"
#include "codebook/sections.h"
#include "codebook/signs.h"
#include "codebook/tables/tables.h"

#include <fmt/format.h>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

std::string_view words_of(Remarking as) {
    switch (as) {
    case Remarking::not_asked: return "no tape asked";
    case Remarking::allowed: return "allowed, with tape";
    case Remarking::disputed: return "disputed: ask first";
    case Remarking::unread: return "not read yet: ask first";
    case Remarking::never: break;
    }
    return "never";
}

// An answer that stands where the topic does.
TableRow asked(CodeBook const& book, std::string what, bool is, std::string_view topic) {
    auto const source = cite(book, topic).source;
    return {{std::move(what), source == Source::unread ? "not read yet" : is ? "yes" : "no"}, source};
}

std::string said_by(Sign const& s) {
    if (s.first_for.empty()) return std::string(s.text.en);
    return fmt::format("for {}: {}; for {}: {}", s.first_for, s.text.en, s.other_for, s.other.en);
}

// Of one family; the columns are its editions.
TablePart family_citations(Family family) {
    auto const books = books_of(family);
    TablePart part;
    part.heads = {"topic"};
    for (CodeBook const* b : books) {
        part.editions.emplace_back(b->edition);
        part.heads.emplace_back(b->edition);
    }
    for (Topic const& t : topics()) {
        TableRow row{{std::string(t.name)}, source_of(books, t.name)};
        bool worth = false;
        for (CodeBook const* b : books) {
            auto const& says = section_of(*b, t.name);
            row.cells.push_back(section_words(*b, t.name));
            worth |= !says.is_silent();
        }
        if (worth) part.rows.push_back(std::move(row));
    }
    return part;
}
} // namespace

std::vector<TablePart> remarking_table() {
    return by_edition({"conductor", "what may be done", "section"}, "", [](CodeBook const& b) {
        auto const& t = b.remarking;
        Rows rows;
        auto const add = [&](std::string what, RemarkingRow const& r) {
            rows.push_back({{std::move(what), std::string(words_of(r.as)), section_words(b, r.topic)}, r.source});
        };
        auto const size = name(t.large_from);
        add("white as hot, in a cable", t.white_as_hot_in_cable);
        add("white as hot, in conduit", t.white_as_hot_in_conduit);
        add("white as the feed of a switch loop", t.white_in_switch_loop);
        add(fmt::format("another colour as neutral, in a cable, smaller than {} AWG", size),
            t.small_as_neutral_in_cable);
        add(fmt::format("another colour as neutral, in conduit, smaller than {} AWG", size),
            t.small_as_neutral_in_conduit);
        add(fmt::format("another colour as neutral, {} AWG and larger", size), t.large_as_neutral);
        add("green or bare as hot or neutral", t.green);
        return rows;
    });
}

std::vector<TablePart> demand_table() {
    return by_edition({"what", "asked"}, "", [](CodeBook const& b) {
        auto const& d = demands(b);
        return Rows{
            asked(b,
                  "both hots of every multiwire pair switch off together (else only where a split receptacle, a 240 V "
                  "load or a fixed appliance hangs on it)",
                  d.every_pair_off_together, "mw-disconnect"),
            asked(b, "two one-pole breakers tied on site count as opening both poles", d.tied_singles_count,
                  "mw-disconnect/tied-singles"),
            asked(b, "no name of the directory depends on who lives there", d.names_outlive_people, "dir-person"),
            asked(b, "a handle that moves up and down is on when up", d.up_is_on, "panel-hang"),
        };
    });
}

std::vector<TablePart> sign_table() {
    return by_edition({"sign", "where", "text", "section"}, "", [](CodeBook const& b) {
        Rows rows;
        for (Sign const& s : signs()) {
            auto const r = cite(b, fmt::format("panel-sign/{}", s.id));
            bool const is_unread = r.source == Source::unread, is_silent = r.section.empty() && !is_unread;
            if (is_silent && !s.advised) continue;
            rows.push_back({{std::string(s.name), std::string(words(s.place)), said_by(s),
                             is_silent ? "advised" : section_words(b, fmt::format("panel-sign/{}", s.id))},
                            is_silent ? Source::practice : r.source});
        }
        return rows;
    });
}

std::vector<TablePart> outbuilding_table() {
    return by_edition({"what", "figure"}, "panel-outbuilding", [](CodeBook const& b) {
        if (b.outbuilding.is_unread()) return Rows{};
        auto const& t = outbuilding_supplies(b);
        return Rows{
            {{"one supply", t.one_only ? "demanded" : "custom"}, cite(b, "panel-outbuilding").source},
            {{"feeders that may do where all begin in one panel", std::to_string(t.feeders_from_one_panel.value)},
             t.feeders_from_one_panel.source},
            {{"supplies that may do where each has its own voltage", std::to_string(t.other_volts.value)},
             t.other_volts.source},
        };
    });
}

std::vector<TablePart> citation_table() { return {family_citations(Family::nec), family_citations(Family::ce)}; }

} // namespace legwork
