// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/text.h"

#include "cli/text/words.h"
#include "codebook/tables/tables.h"
#include "toml/problem.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>

namespace legwork {

namespace {

constexpr std::size_t kGap = 2;

using Line = std::vector<std::string>; // a cell a column

std::string source_words(std::optional<Source> source) {
    if (!source) return "";
    switch (*source) {
    case Source::seen: return "seen";
    case Source::noted: return "noted";
    case Source::memory: return "from memory";
    case Source::unread: return "not read";
    case Source::practice: break;
    }
    return "practice";
}

std::vector<Line> lines_of(TablePart const& part) {
    std::vector<Line> lines{part.heads};
    lines.front().emplace_back("source");
    for (TableRow const& row : part.rows) {
        lines.push_back(row.cells);
        lines.back().push_back(source_words(row.source));
    }
    return lines;
}

std::size_t longest_word(std::string_view text) {
    std::size_t longest = 0;
    for (;;) {
        auto const blank = text.find(' ');
        longest = std::max(longest, character_count(text.substr(0, blank)));
        if (blank == std::string_view::npos) return longest;
        text.remove_prefix(blank + 1);
    }
}

// As wide as the texts; the widest columns give way, down to their longest word, until all stand on a line.
std::vector<std::size_t> widths_of(std::vector<Line> const& lines, std::size_t width) {
    std::vector<std::size_t> widths(lines.front().size(), 0), least = widths;
    for (Line const& line : lines)
        for (std::size_t i = 0; i < line.size(); ++i) {
            widths[i] = std::max(widths[i], character_count(line[i]));
            least[i] = std::max(least[i], longest_word(line[i]));
        }
    for (;;) {
        std::size_t total = 0;
        std::optional<std::size_t> widest;
        for (std::size_t i = 0; i < widths.size(); ++i) {
            total += widths[i] + kGap;
            if (widths[i] > least[i] && (!widest || widths[i] > widths[*widest])) widest = i;
        }
        if (total <= width + kGap || !widest) return widths;
        --widths[*widest];
    }
}

std::vector<std::string> split(std::string const& text, std::size_t width) {
    std::vector<std::string> pieces;
    std::string const whole = in_lines(text, width, 0);
    for (std::size_t begin = 0; begin <= whole.size();) {
        auto const end = std::min(whole.find('\n', begin), whole.size());
        pieces.push_back(whole.substr(begin, end - begin));
        begin = end + 1;
    }
    return pieces;
}

void print_line(Line const& line, std::vector<std::size_t> const& widths, Streams& streams) {
    std::vector<std::vector<std::string>> cells;
    std::size_t rows = 1;
    for (std::size_t i = 0; i < line.size(); ++i) {
        cells.push_back(split(line[i], widths[i]));
        rows = std::max(rows, cells.back().size());
    }
    for (std::size_t row = 0; row < rows; ++row) {
        std::string shown;
        for (std::size_t i = 0; i < cells.size(); ++i) {
            std::string const piece = row < cells[i].size() ? cells[i][row] : "";
            auto const have = character_count(piece);
            shown += piece + std::string((have < widths[i] ? widths[i] - have : 0) + kGap, ' ');
        }
        shown.erase(shown.find_last_not_of(' ') + 1);
        streams.out << shown << '\n';
    }
}

void print_part(TablePart const& part, Streams& streams) {
    streams.out << '\n';
    auto const editions = short_editions(part.editions);
    if (!editions.empty() && !part.said_together) streams.out << editions << '\n';
    if (!part.sections.empty()) streams.out << in_lines(part.sections, streams.width, 4) << '\n';
    auto const lines = lines_of(part);
    auto const widths = widths_of(lines, streams.width);
    for (Line const& line : lines) {
        print_line(line, widths, streams);
        if (&line != &lines.front()) continue;
        std::size_t total = 0;
        for (auto const w : widths) total += w + kGap;
        streams.out << std::string(total - kGap, '-') << '\n';
    }
}

bool has(CodeTable const& table, Source source) {
    for (TablePart const& part : table.parts())
        if (std::ranges::any_of(part.rows, [&](TableRow const& r) { return r.source == source; })) return true;
    return false;
}

} // namespace

void print_table(CodeTable const& table, Streams& streams) {
    streams.out << table.title << '\n';
    for (TablePart const& part : table.parts()) print_part(part, streams);
    streams.out << '\n';
    auto const tell = [&](Source source, std::string_view words) {
        if (has(table, source)) streams.out << in_lines(words, streams.width, 4) << '\n';
    };
    tell(Source::seen, "seen: a page that states it was read; practice: custom, no source.");
    tell(Source::noted, "noted: one page of notes states it; alone it never makes an error.");
    tell(Source::memory, "from memory: look it up in your code before you rely on it; alone it never makes an error.");
    tell(Source::unread, "not read: nobody has looked what this edition says; no rule judges by it.");
}

void list_tables(Streams& streams) {
    for (CodeTable const& t : code_tables())
        streams.out << fmt::format("{:<20}{}\n", t.name, in_lines(t.title, streams.width, 20, 20));
    streams.out << "\nlegwork explain --table NAME prints one.\n";
}

} // namespace legwork
