// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How what each rule stands on was come by, in every edition.
#include "codebook/cite.h"
#include "codebook/editions/checked_edition.h"
#include "codebook/tables/tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <concepts>
#include <map>

namespace legwork {

namespace {
// The figures of an edition's tables, each under the topic that checked_edition.h ties it to: the least sure of each.
class Figures {
public:
    void number(std::string_view topic, Source source) {
        if (source == Source::unread) return;
        auto const [at, is_new] = least_.emplace(topic, source);
        if (!is_new) at->second = std::max(at->second, source);
    }
    void number(std::string_view topic, Figure figure) { number(topic, figure.source); }
    template <class Rows>
    void numbers(std::string_view topic, Rows const& rows) {
        for (auto const& row : rows) number(topic, row.source);
    }
    template <class Table>
    void page(std::string_view topic, CodePage<Table> const& page) {
        Table const* table = page.get();
        if (!table) return;
        if constexpr (requires {
                          { table->source } -> std::convertible_to<Source>;
                      })
            number(topic, table->source);
        if constexpr (requires {
                          { table->circuits } -> std::convertible_to<Figure>;
                      })
            number(topic, table->circuits);
    }
    template <class Rows>
    void list(std::string_view, Rows const& rows) {
        for (auto const& row : rows)
            if constexpr (requires { row.source; }) number(row.topic, row.source);
    }
    void method(std::string_view, bool) {}
    void silence(std::string_view, bool) {}
    void remarking(RemarkingRow const& row) { number(row.topic, row.source); }

    std::optional<Source> of(std::string_view topic) const {
        auto const at = least_.find(topic);
        return at == least_.end() ? std::nullopt : std::optional(at->second);
    }

private:
    std::map<std::string_view, Source> least_;
};

Figures figures_of(CodeBook const& book) {
    Figures all;
    agreement::compare(all, book);
    return all;
}

struct Column {
    CodeBook const* book;
    Figures figures;
};
std::vector<Column> columns() {
    std::vector<Column> all;
    for (auto const family : {Family::nec, Family::ce})
        for (CodeBook const* book : books_of(family)) all.push_back({book, figures_of(*book)});
    return all;
}

// A figure that is less sure than what its section says.
std::optional<Source> lesser_figure(Column const& c, Topic const& topic) {
    auto const& says = section_of(*c.book, topic.name);
    auto const figure = c.figures.of(topic.name);
    return says.speaks() && figure && *figure > says.source ? figure : std::nullopt;
}

std::string_view content(Section const& says, Topic const& topic) {
    if (says.is_unread()) return "unread";
    if (says.speaks()) return name(says.source);
    return topic.basis == Topic::Basis::custom ? "practice" : "silent";
}

// "seen; section memory; figure noted"
std::string cell(Column const& c, Topic const& topic) {
    auto const& says = section_of(*c.book, topic.name);
    std::string words(content(says, topic));
    if (says.numbers != FromMemory::none) words += "; section memory";
    if (auto const figure = lesser_figure(c, topic)) words += fmt::format("; figure {}", name(*figure));
    return words;
}

std::optional<Source> least_sure(std::vector<Column> const& all, Topic const& topic) {
    std::optional<Source> least;
    for (Column const& c : all) {
        auto const& says = section_of(*c.book, topic.name);
        if (!says.speaks()) continue;
        auto const here = lesser_figure(c, topic).value_or(says.source);
        least = least ? std::max(*least, here) : here;
    }
    return least;
}

TableRow counts(std::vector<Column> const& all, std::string_view words, auto const& is) {
    TableRow row{{std::string(words)}, {}};
    for (Column const& c : all)
        row.cells.push_back(std::to_string(std::ranges::count_if(topics(), [&](Topic const& t) { return is(c, t); })));
    return row;
}

TablePart part(std::string first, std::vector<Column> const& all) {
    TablePart p;
    p.heads = {std::move(first)};
    for (Column const& c : all) p.heads.emplace_back(c.book->edition);
    return p;
}
} // namespace

std::vector<TablePart> source_table() {
    auto const all = columns();
    auto by_topic = part("rule, or one of its aspects", all);
    for (Topic const& t : topics()) {
        TableRow row{{std::string(t.name)}, least_sure(all, t)};
        for (Column const& c : all) row.cells.push_back(cell(c, t));
        by_topic.rows.push_back(std::move(row));
    }
    for (Column const& c : all) by_topic.editions.emplace_back(c.book->edition);
    auto sums = part("how many of them", all);
    for (std::string_view const how : {"seen", "noted", "memory", "practice", "unread", "silent"})
        sums.rows.push_back(counts(
            all, how, [&](Column const& c, Topic const& t) { return content(section_of(*c.book, t.name), t) == how; }));
    sums.rows.push_back(counts(all, "section's number from memory", [](Column const& c, Topic const& t) {
        return section_of(*c.book, t.name).numbers != FromMemory::none;
    }));
    sums.rows.push_back(counts(all, "a figure less sure than its section",
                               [](Column const& c, Topic const& t) { return lesser_figure(c, t).has_value(); }));
    return {std::move(by_topic), std::move(sums)};
}

} // namespace legwork
