// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/space_table.h"

#include "cli/words.h"
#include "job/problem.h"
#include "panel/feeds.h"
#include "panel/layout.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace legwork {

namespace {

constexpr std::size_t kCell = 50;

struct Table {
    typed::Job const& job;
    Layout layout;
    std::vector<Feed> sources;
    std::map<Spot, std::string> filled;
};

std::string breaker(typed::Circuit const& c) {
    auto const amps = c.breaker ? text(*c.breaker) : "? A";
    return c.poles == 2 ? "2P " + amps : amps;
}

std::string entry(typed::Circuit const& c, Placement const& p) {
    auto const sign = p.from.empty() ? '+' : p.from != p.slots ? '*' : ' ';
    auto const place = c.room.empty() ? "" : ", " + c.room;
    return fmt::format("{} {} {} {:>8}", sign, fitted(c.mark, 4), fitted(fit_to_print(c.name + place), 27), breaker(c));
}

void fill(Table& t, PanelPlan const& plan) {
    for (Placement const& p : plan.placements) {
        auto const* c = circuit_of(t.job, p.circuit);
        if (!c || p.slots.empty()) continue;
        t.filled[p.slots.front()] = entry(*c, p);
        if (p.slots.size() > 1) t.filled[p.slots.back()] = fmt::format("  {} |", fitted(c->mark, 4));
    }
}

std::string idle(Table const& t, int space) {
    if (t.layout.is_blocked(space)) return "  blocked";
    if (!is_live(t.sources, t.layout, space)) return "  not fed";
    return "  -";
}

std::vector<std::string> cell(Table const& t, std::optional<int> space) {
    if (!space) return {""};
    std::vector<std::string> lines;
    auto const leg = letter(t.layout.leg(*space));
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

void print_space_table(typed::Job const& job, typed::Panel const& panel, PanelPlan const& plan, std::ostream& out) {
    Table t{job, Layout(panel), feeds(job, panel), {}};
    fill(t, plan);
    bool const mirrored = panel.first == Corner::top_right || panel.first == Corner::bottom_right;
    bool const from_below = panel.first == Corner::bottom_left || panel.first == Corner::bottom_right;
    int const rows = t.layout.rows();
    for (int n = 1; n <= rows; ++n) {
        int const row = from_below ? rows + 1 - n : n;
        auto const left = cell(t, t.layout.space_at({mirrored ? 1 : 0, row}));
        auto const right = cell(t, t.layout.space_at({mirrored ? 0 : 1, row}));
        print_row(left, right, out);
    }
    bool const any_new = std::ranges::any_of(plan.placements, [](Placement const& p) { return p.from.empty(); });
    if (any_new || plan.moves > 0) out << "  + new, * moved\n";
}

} // namespace legwork
