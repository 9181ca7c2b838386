// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/text/space_table.h"

#include "balance/tally.h"
#include "cli/text/words.h"
#include "panel/feeds.h"
#include "panel/layout.h"
#include "reckon/say.h"
#include "toml/problem.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {

constexpr std::size_t kBesides = 11;   // of a cell, what is no mark, name or breaker: number, leg, sign, blanks
constexpr std::size_t kLeastName = 12; // letters that are worth reading

// Columns of what stands on a space. Only a name is cut.
struct Widths {
    std::size_t mark = 4, name = kLeastName, breaker = 8;
    bool side_by_side = true;
    std::size_t cell() const { return kBesides + mark + name + breaker; }
};

struct Table {
    Building const& building;
    Panel const& panel;
    std::map<Spot, std::string> filled;
    Widths widths;
};

Widths widths_for(Building const& building, PanelPlan const& plan, std::size_t width) {
    Widths w;
    for (Placement const& p : plan.placements)
        if (auto const* c = circuit_named(building, p.circuit)) {
            w.mark = std::max(w.mark, character_count(c->mark));
            w.breaker = std::max(w.breaker, breaker_words(*c).size());
        }
    w.side_by_side = 2 * w.cell() <= width;
    auto const room = w.side_by_side ? width / 2 : width;
    w.name += room - std::min(room, w.cell());
    return w;
}

std::string entry(Circuit const& c, Placement const& p, Widths const& w) {
    auto const sign = p.from.empty() ? '+' : changes_breaker(p) ? '=' : p.from != p.slots ? '*' : ' ';
    auto const place = c.room.empty() ? "" : ", " + c.room;
    return fmt::format("{} {:<{}} {} {:>{}}", sign, c.mark, w.mark, fitted(fit_to_print(c.name + place), w.name),
                       breaker_words(c), w.breaker);
}

void fill(Table& t, PanelPlan const& plan) {
    for (Placement const& p : plan.placements) {
        auto const* c = circuit_named(t.building, p.circuit);
        if (!c || p.slots.empty()) continue;
        t.filled[p.slots.front()] = entry(*c, p, t.widths);
        if (p.slots.size() > 1) t.filled[p.slots.back()] = fmt::format("  {:<{}} |", c->mark, t.widths.mark);
    }
}

std::string idle(Table const& t, int space) {
    if (t.panel.layout.is_blocked(space)) return "  blocked";
    if (!t.panel.is_live(space)) return "  not fed";
    return "  -";
}

std::vector<std::string> cell(Table const& t, std::optional<int> space) {
    if (!space) return {""};
    std::vector<std::string> lines;
    char const leg = t.panel.is_dc() ? ' ' : letter(t.panel.layout.leg(*space)); // a block of fuses has no legs
    for (char const half : {'\0', 'a', 'b'})
        if (auto const at = t.filled.find({*space, half}); at != t.filled.end())
            lines.push_back(fmt::format("{:>4} {} {}", text(at->first), leg, at->second));
    if (lines.empty()) lines.push_back(fmt::format("{:>4} {} {}", *space, leg, idle(t, *space)));
    return lines;
}

void print_line(std::string line, std::ostream& out) {
    line.erase(line.find_last_not_of(' ') + 1);
    out << line << '\n';
}

using Cells = std::vector<std::vector<std::string>>; // the lines of each row's cell

void print_columns(Cells const& left, Cells const& right, Widths const& w, std::ostream& out) {
    for (std::size_t row = 0; row < left.size(); ++row)
        for (std::size_t i = 0; i < std::max(left[row].size(), right[row].size()); ++i)
            print_line(fitted(i < left[row].size() ? left[row][i] : "", w.cell()) +
                           (i < right[row].size() ? right[row][i] : ""),
                       out);
}

void print_column(Cells const& cells, std::string_view heading, std::ostream& out) {
    out << heading << '\n';
    for (auto const& lines : cells)
        for (auto const& line : lines)
            if (!line.empty()) print_line(line, out);
}

} // namespace

bool changes_breaker(Placement const& p) {
    return !p.from.empty() && !p.slots.empty() && p.from != p.slots && moves_of({p}) == 0;
}

void print_space_table(Building const& building, Panel const& panel, PanelPlan const& plan, Streams& streams) {
    auto& out = streams.out;
    Table t{building, panel, {}, widths_for(building, plan, streams.width)};
    fill(t, plan);
    bool const mirrored = panel.first == Corner::top_right || panel.first == Corner::bottom_right;
    bool const from_below = panel.first == Corner::bottom_left || panel.first == Corner::bottom_right;
    int const rows = t.panel.layout.rows();
    Cells left, right;
    for (int n = 1; n <= rows; ++n) {
        int const row = from_below ? rows + 1 - n : n;
        left.push_back(cell(t, t.panel.layout.space_at({mirrored ? 1 : 0, row})));
        right.push_back(cell(t, t.panel.layout.space_at({mirrored ? 0 : 1, row})));
    }
    if (t.widths.side_by_side) {
        print_columns(left, right, t.widths, out);
    } else {
        print_column(left, "Left", out);
        print_column(right, "Right", out);
    }
    std::vector<std::string> signs;
    if (std::ranges::any_of(plan.placements, [](Placement const& p) { return p.from.empty(); }) || plan.moves > 0)
        signs.insert(signs.end(), {"+ new", "* moved"});
    if (std::ranges::any_of(plan.placements, changes_breaker)) signs.emplace_back("= another breaker on its space");
    if (!signs.empty()) out << fmt::format("  {}\n", joined(signs, ", "));
}

} // namespace legwork
