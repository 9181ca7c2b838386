// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/backfeed.h"

#include "codebook/stock/uses.h"
#include "panel/feeds.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
bool is_interactive(Circuit const& c) { return c.use && c.use->interactive; }

// An output that nobody gave is some current, however small.
constexpr BackfeedShare kUnknown{Amps{1}, std::nullopt};

struct PanelSources {
    std::vector<Circuit const*> own, feeders;
    BackfeedShare share{};
    std::optional<Amps> output{Amps{}};
};

std::optional<Amps> sum(std::optional<Amps> a, std::optional<Amps> b) {
    return a && b ? std::optional(*a + *b) : std::nullopt;
}

std::optional<Amps> breakers_of(std::vector<Circuit const*> const& circuits) {
    std::optional<Amps> all{Amps{}};
    for (Circuit const* c : circuits) all = sum(all, c->breaker);
    return all;
}

BackfeedShare share_of_own(Case const& c, Panel const& panel, std::vector<Circuit const*> const& own) {
    if (own.empty()) return {Amps{}, Amps{}};
    auto const breakers = breakers_of(own);
    auto const percent_of_output = backfeed(c.book).output_percent;
    if (!percent_of_output) return breakers ? BackfeedShare{*breakers, breakers} : kUnknown;
    if (!panel.output) return {kUnknown.least, breakers};
    auto const counted = percent(*panel.output, percent_of_output->value);
    return {counted, counted};
}

// A sub-panel and what hangs below it; `depth` ends a chain of feeders that a job made by hand may close to a ring.
PanelSources find(Case const& c, Panel const& panel, std::size_t depth) {
    PanelSources all;
    std::ranges::copy_if(panel.circuits, std::back_inserter(all.own),
                         [](Circuit const* own) { return is_interactive(*own); });
    all.share = share_of_own(c, panel, all.own);
    if (!all.own.empty()) all.output = panel.output;
    for (Circuit const* circuit : panel.circuits) {
        Panel const* below = depth > 0 ? circuit->fed_panel() : nullptr;
        if (!below) continue;
        auto const behind = find(c, *below, depth - 1);
        if (behind.own.empty() && behind.feeders.empty()) continue;
        all.feeders.push_back(circuit);
        all.share.least += behind.share.least;
        all.share.most = sum(all.share.most, behind.share.most ? behind.share.most : circuit->breaker);
        all.output = sum(all.output, behind.output);
    }
    return all;
}

// Every breaker once, the main not counted; the two circuits of a pair on one two-pole breaker share it.
std::optional<Amps> all_breakers(Panel const& panel) {
    std::optional<Amps> all{Amps{}};
    for (Circuit const* c : panel.circuits) {
        if (c->is(PanelPart::main)) continue;
        bool const counted = c->pair && c->pair->tie == Tie::two_pole_breaker && c->pair->second == c;
        if (!counted) all = sum(all, c->breaker);
    }
    return all;
}

void set_ahead(Panel const& panel, Backfeed& b) {
    b.ahead = panel.main;
    Circuit const* feeder = panel.feeder;
    if (!feeder || !feeder->breaker || (b.ahead && *b.ahead <= *feeder->breaker)) return;
    b.ahead = feeder->breaker;
    b.ahead_is_feeder = true;
}

BackfeedLeave leave_of(Backfeed const& b) {
    if (!b.bus) return BackfeedLeave::not_known;
    bool const sum_fits = b.ahead && b.share.most && *b.ahead + *b.share.most <= *b.bus;
    if (sum_fits) return BackfeedLeave::sum;
    if (!b.ahead) return BackfeedLeave::not_known;
    if (*b.ahead + b.share.least > *b.most) return BackfeedLeave::too_much;
    bool const fits_in_most = b.share.most && *b.ahead + *b.share.most <= *b.most;
    return fits_in_most ? BackfeedLeave::far_end : BackfeedLeave::not_known;
}

// One row further from the main: +1 or -1 in the rows of the layout.
int away(Panel const& panel, PanelEnd main) {
    bool const first_top = panel.first == Corner::top_left || panel.first == Corner::top_right;
    return first_top == (main == PanelEnd::top) ? 1 : -1;
}

bool is_usable(Layout const& layout, int space) { return !layout.is_blocked(space) && !layout.is_dead(space); }
} // namespace

Backfeed backfeed_of(Case const& c, Panel const& panel) {
    Backfeed b;
    if (panel.is_dc()) return b;
    auto const found = find(c, panel, c.building.panels.size());
    for (Circuit const& circuit : c.building.circuits)
        if (std::ranges::count(found.own, &circuit) + std::ranges::count(found.feeders, &circuit) > 0)
            b.sources.push_back(&circuit);
    if (b.sources.empty()) return b;
    b.all_behind_feeders = found.own.empty();
    b.bus = panel.bus;
    set_ahead(panel, b);
    b.share = found.share;
    b.output = found.output;
    auto const& table = backfeed(c.book);
    b.bus_percent = c.building.dwelling ? table.dwelling_bus_percent : table.bus_percent;
    if (b.bus) b.most = percent(*b.bus, b.bus_percent.value);
    if (auto const all = all_breakers(panel); table.all_breakers && all && b.bus && *all <= *b.bus)
        b.all_breakers = all;
    b.leave = leave_of(b);
    return b;
}

std::optional<PanelEnd> main_end(Case const& c, Panel const& panel) {
    if (panel.main_at) return panel.main_at;
    Layout const& layout = panel.layout;
    for (Circuit const* circuit : panel.circuits) {
        Placement const* p =
            circuit->is(PanelPart::main) && circuit->space ? placement_of(c.plan, circuit->mark) : nullptr;
        if (!p) continue;
        for (Spot const s : p->slots)
            for (auto const end : {PanelEnd::top, PanelEnd::bottom}) {
                auto const [column, row] = layout.position(s.space);
                if (!layout.space_at({column, row - away(panel, end)})) return end;
            }
    }
    return std::nullopt;
}

bool at_far_end(Case const& c, Panel const& panel, Circuit const& source, PanelEnd main) {
    Placement const* p = placement_of(c.plan, source.mark);
    if (!p || p->slots.empty()) return false;
    Layout const& layout = panel.layout;
    std::vector<int> sources; // spaces
    for (Circuit const* other : backfeed_of(c, panel).sources)
        if (Placement const* at = placement_of(c.plan, other->mark))
            for (Spot const s : at->slots) sources.push_back(s.space);
    auto [column, row] = layout.position(p->slots.front().space);
    for (row += away(panel, main);; row += away(panel, main)) {
        auto const further = layout.space_at({column, row});
        if (!further) return true;
        if (is_usable(layout, *further) && std::ranges::count(sources, *further) == 0) return false;
    }
}

std::vector<int> far_spaces(Panel const& panel, PanelEnd main) {
    Layout const& layout = panel.layout;
    std::vector<int> found;
    int const step = away(panel, main);
    for (int const column : {0, 1})
        for (int row = step > 0 ? layout.rows() : 1; row >= 1 && row <= layout.rows(); row -= step) {
            auto const space = layout.space_at({column, row});
            if (!space || !is_usable(layout, *space)) continue;
            found.push_back(*space);
            break;
        }
    return found;
}

} // namespace legwork
