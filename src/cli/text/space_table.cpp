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

constexpr std::size_t kCell = 50;

// Columns of what stands on a space, together kCell less its number and leg. Marks and ratings are never cut.
struct Widths {
    std::size_t mark = 4, name = 27, breaker = 8;
};

struct Table {
    Building const& building;
    Panel const& panel;
    std::map<Spot, std::string> filled;
    Widths widths;
};

Widths widths_for(Building const& building, PanelPlan const& plan) {
    Widths w;
    auto const all = w.mark + w.name + w.breaker;
    for (Placement const& p : plan.placements)
        if (auto const* c = circuit_named(building, p.circuit)) {
            w.mark = std::max(w.mark, c->mark.size());
            w.breaker = std::max(w.breaker, breaker_words(*c).size());
        }
    w.name = all - w.mark - w.breaker;
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
    auto const leg = letter(t.panel.layout.leg(*space));
    for (char const half : {'\0', 'a', 'b'})
        if (auto const at = t.filled.find({*space, half}); at != t.filled.end())
            lines.push_back(fmt::format("{:>4} {} {}", text(at->first), leg, at->second));
    if (lines.empty()) lines.push_back(fmt::format("{:>4} {} {}", *space, leg, idle(t, *space)));
    return lines;
}

void print_row(std::vector<std::string> const& left, std::vector<std::string> const& right, std::ostream& out) {
    for (std::size_t i = 0; i < std::max(left.size(), right.size()); ++i) {
        auto line = fitted(i < left.size() ? left[i] : "", kCell) + (i < right.size() ? right[i] : "");
        line.erase(line.find_last_not_of(' ') + 1);
        out << line << '\n';
    }
}

} // namespace

bool changes_breaker(Placement const& p) {
    return !p.from.empty() && !p.slots.empty() && p.from != p.slots && moves_of({p}) == 0;
}

void print_space_table(Building const& building, Panel const& panel, PanelPlan const& plan, std::ostream& out) {
    Table t{building, panel, {}, widths_for(building, plan)};
    fill(t, plan);
    bool const mirrored = panel.first == Corner::top_right || panel.first == Corner::bottom_right;
    bool const from_below = panel.first == Corner::bottom_left || panel.first == Corner::bottom_right;
    int const rows = t.panel.layout.rows();
    for (int n = 1; n <= rows; ++n) {
        int const row = from_below ? rows + 1 - n : n;
        auto const left = cell(t, t.panel.layout.space_at({mirrored ? 1 : 0, row}));
        auto const right = cell(t, t.panel.layout.space_at({mirrored ? 0 : 1, row}));
        print_row(left, right, out);
    }
    std::vector<std::string> signs;
    if (std::ranges::any_of(plan.placements, [](Placement const& p) { return p.from.empty(); }) || plan.moves > 0)
        signs.insert(signs.end(), {"+ new", "* moved"});
    if (std::ranges::any_of(plan.placements, changes_breaker)) signs.emplace_back("= another breaker on its space");
    if (!signs.empty()) out << fmt::format("  {}\n", joined(signs, ", "));
}

} // namespace legwork
