// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Recounts a finished plan from the job alone. Duller than the search and sharing nothing with it, geometry and loads
// included, so that a mistake there cannot hide here.

#include "balance/balance.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>

namespace legwork {

namespace {

using Sums = std::vector<std::array<std::int64_t, 2>>; // per situation: VA on leg A, on leg B

struct Bus {
    Panel const& panel;
    int rows() const { return panel.spaces / 2 + panel.spaces % 2; }
    int row(int s) const {
        if (panel.numbering == Numbering::across) return (s + 1) / 2;
        return s > rows() ? s - rows() : s;
    }
    bool is_first_column(int s) const { return panel.numbering == Numbering::across ? s % 2 == 1 : s <= rows(); }
    int leg(int s) const { // 0 A, 1 B
        if (panel.bus_legs == Panel::Bus::by_column) return is_first_column(s) ? 0 : 1;
        auto const i = static_cast<std::size_t>(row(s)) - 1;
        if (panel.bus_legs == Panel::Bus::listed && i < panel.row_legs.size())
            return panel.row_legs[i] == Leg::a ? 0 : 1;
        return row(s) % 2 == 1 ? 0 : 1;
    }
    bool side_by_side(int s, int t) const { // in one column
        return is_first_column(s) == is_first_column(t) && std::abs(row(s) - row(t)) == 1;
    }
    bool facing(int s, int t) const { return row(s) == row(t) && s != t; }
};

// What the sources of a panel are, looked up to the top.
std::vector<Supply> sources(Job const& job, Panel const& p, int depth = 0) {
    std::vector<Supply> found;
    Panel const* above = nullptr;
    if (p.feeder)
        for (Panel const& q : job.panels)
            if (q.name == p.feeder->panel) above = &q;
    if (above && depth < 32) {
        found = sources(job, *above, depth + 1);
        bool const one_hot =
            p.supply && p.supply->kind != SupplyKind::split_120_240 && p.supply->kind != SupplyKind::wye_120_208;
        for (Supply& s : found) {
            if (!one_hot) continue;
            bool const two = s.kind == SupplyKind::split_120_240 || s.kind == SupplyKind::wye_120_208;
            if (two || p.supply->kind == SupplyKind::one_leg_120) s.kind = p.supply->kind;
            s.leg = p.supply->leg;
        }
        return found;
    }
    for (std::string const& n : p.supplies)
        for (Supply const& s : job.supplies)
            if (s.name == n) found.push_back(s);
    if (p.supply) found.push_back(*p.supply);
    return found;
}

bool two_hots(SupplyKind k) { return k == SupplyKind::split_120_240 || k == SupplyKind::wye_120_208; }
bool direct(SupplyKind k) { return k == SupplyKind::dc_12 || k == SupplyKind::dc_24 || k == SupplyKind::dc_48; }
std::int64_t volts(SupplyKind k) {
    return k == SupplyKind::dc_12 ? 12 : k == SupplyKind::dc_24 ? 24 : k == SupplyKind::dc_48 ? 48 : 120;
}

class Recheck {
public:
    Recheck(Job const& job, Plan const& plan, bool filed) : job_(job), plan_(plan), filed_(filed) {}

    std::vector<std::string> run() {
        if (plan_.panels.size() != job_.panels.size())
            fault("the plan has {} panels, the job {}", plan_.panels.size(), job_.panels.size());
        for (std::size_t i = 0; i < std::min(plan_.panels.size(), job_.panels.size()); ++i)
            check(job_.panels[i], plan_.panels[i]);
        return std::move(faults_);
    }

private:
    template <class... Args>
    void fault(fmt::format_string<Args...> words, Args&&... args) {
        faults_.push_back(fmt::format(words, std::forward<Args>(args)...));
    }

    void check(Panel const& panel, PanelPlan const& plan) {
        if (plan.panel != panel.name) return fault("panel {} is planned as {}", panel.name, plan.panel);
        std::vector<Circuit const*> mine;
        for (Circuit const& c : job_.circuits)
            if (c.panel == panel.name) mine.push_back(&c);
        if (plan.placements.empty() && !mine.empty()) {
            if (plan.why.empty()) fault("{}: nothing is placed and nothing says why", panel.name);
            if (filed_) fault("{}: the filed layout has no placements", panel.name);
            if (plan.imbalance_va) fault("{}: an imbalance is claimed for no layout", panel.name);
            return;
        }
        if (plan.placements.size() != mine.size())
            return fault("{}: {} placements for {} circuits", panel.name, plan.placements.size(), mine.size());
        bool homeless = false;
        for (std::size_t i = 0; i < mine.size(); ++i) {
            if (plan.placements[i].circuit != mine[i]->mark)
                return fault("{}: {} stands in the place of {}", panel.name, plan.placements[i].circuit, mine[i]->mark);
            check_one(panel, *mine[i], plan.placements[i]);
            homeless = homeless || plan.placements[i].slots.empty();
        }
        if (homeless && plan.why.empty()) fault("{}: a circuit has no space and nothing says why", panel.name);
        if (homeless && !filed_) fault("{}: a circuit has no space", panel.name);
        check_slots(panel, mine, plan);
        check_pairs(panel, mine, plan);
        check_loads(panel, mine, plan, homeless);
        check_moves(panel, mine, plan);
        check_front(panel, plan);
    }

    // Stands where the file has it, so that an illegal place is the file's and not the plan's.
    bool as_the_file(Panel const& panel, Circuit const& c, Placement const& p) const {
        return c.space && p.slots == expected(panel, c, *c.space);
    }

    static std::vector<Spot> expected(Panel const& panel, Circuit const& c, Spot at) {
        if (c.poles == 1) return {at};
        Bus const bus{panel};
        for (int t = 1; t <= panel.spaces; ++t)
            if (bus.is_first_column(t) == bus.is_first_column(at.space) && bus.row(t) == bus.row(at.space) + 1)
                return {at, {t, at.half == 0 ? '\0' : at.half == 'a' ? 'b' : 'a'}};
        return {};
    }

    void check_one(Panel const& panel, Circuit const& c, Placement const& p) {
        Bus const bus{panel};
        if (p.slots.empty()) return;
        if (p.slots.size() != (c.poles == 1 ? 1U : 2U)) return fault("{} takes {} slots", c.mark, p.slots.size());
        for (Spot const s : p.slots)
            if (s.space < 1 || s.space > panel.spaces)
                return fault("{} stands on space {}, off the panel", c.mark, s.space);
        bool const filed = as_the_file(panel, c, p);
        if (filed_ && c.space && !filed && !expected(panel, c, *c.space).empty())
            fault("{} does not stand where the file has it", c.mark);
        if (c.fixed && c.space && !filed) {
            bool const grown = c.space->half != 0 && p.slots.front().space == c.space->space;
            if (!grown) fault("{} is fixed and does not stand at home", c.mark);
        }
        if (p.slots != expected(panel, c, p.slots.front())) fault("{} does not take two neighbouring spaces", c.mark);
        if (filed_ && filed) return;
        for (Spot const s : p.slots) {
            if (std::ranges::count(panel.blocked, s.space)) fault("{} stands on blocked space {}", c.mark, s.space);
            if (!is_live(panel, s.space)) fault("{} stands on dead space {}", c.mark, s.space);
            bool const takes_halves = std::ranges::count(panel.tandem, s.space) > 0;
            if (s.half && !takes_halves && !(filed && c.fixed))
                fault("{} stands on a half of space {}, which takes none", c.mark, s.space);
            bool const reaches =
                within_reach(panel, c, s.space) || (c.space && holds(expected(panel, c, *c.space), s.space));
            if (!reaches) fault("{} does not reach space {}", c.mark, s.space);
        }
        if (c.poles == 2 && two_legs(panel) && bus.leg(p.slots[0].space) == bus.leg(p.slots[1].space))
            fault("{} has both poles on one leg", c.mark);
        bool const dc =
            direct(sources(job_, panel).empty() ? SupplyKind::split_120_240 : sources(job_, panel).front().kind);
        if (c.poles == 1 && !dc && (!p.leg || (*p.leg == Leg::a ? 0 : 1) != bus.leg(p.slots[0].space)))
            fault("{} is not on the leg that the plan says", c.mark);
    }

    static bool holds(std::vector<Spot> const& slots, int space) {
        return std::ranges::any_of(slots, [&](Spot s) { return s.space == space; });
    }

    bool two_legs(Panel const& panel) const {
        auto const all = sources(job_, panel);
        return std::ranges::any_of(all, [](Supply const& s) { return two_hots(s.kind); });
    }

    bool is_live(Panel const& panel, int space) const {
        if (std::ranges::count(panel.dead, space)) return false;
        auto const all = sources(job_, panel);
        return std::ranges::any_of(all, [&](Supply const& s) {
            return s.kind != SupplyKind::one_leg_120 || (s.leg == Leg::a ? 0 : 1) == Bus{panel}.leg(space);
        });
    }

    static bool within_reach(Panel const& panel, Circuit const& c, int space) {
        if (!c.reach_spaces.empty() && !std::ranges::count(c.reach_spaces, space)) return false;
        if (c.reach_side.empty()) return true;
        // Coordinates of the space on the wall: right and down, after turning the panel as it hangs.
        Bus const bus{panel};
        int x = bus.is_first_column(space) ? -1 : 1, y = 2 * bus.row(space) - bus.rows() - 1;
        if (panel.first == Corner::top_right || panel.first == Corner::bottom_right) x = -x;
        if (panel.first == Corner::bottom_left || panel.first == Corner::bottom_right) y = -y;
        int across = x;
        if (panel.hang == Hang::upside_down) across = -x;
        if (panel.hang == Hang::turned_left) across = y; // the top goes to the left
        if (panel.hang == Hang::turned_right) across = -y;
        return c.reach_side == "left" ? across <= 0 : across >= 0;
    }

    void check_slots(Panel const& panel, std::vector<Circuit const*> const& mine, PanelPlan const& plan) {
        std::map<int, std::vector<std::pair<char, std::size_t>>> taken;
        for (std::size_t i = 0; i < plan.placements.size(); ++i)
            for (Spot const s : plan.placements[i].slots) taken[s.space].push_back({s.half, i});
        for (auto const& [space, who] : taken)
            for (std::size_t i = 0; i < who.size(); ++i)
                for (std::size_t j = i + 1; j < who.size(); ++j) {
                    if (who[i].first && who[j].first && who[i].first != who[j].first) continue;
                    bool const files_fault = filed_ &&
                                             as_the_file(panel, *mine[who[i].second], plan.placements[who[i].second]) &&
                                             as_the_file(panel, *mine[who[j].second], plan.placements[who[j].second]);
                    if (!files_fault)
                        fault("{} and {} both stand on space {}", mine[who[i].second]->mark, mine[who[j].second]->mark,
                              space);
                }
    }

    void check_pairs(Panel const& panel, std::vector<Circuit const*> const& mine, PanelPlan const& plan) {
        if (!two_legs(panel)) return;
        Bus const bus{panel};
        for (std::size_t i = 0; i < mine.size(); ++i)
            for (std::size_t j = i + 1; j < mine.size(); ++j) {
                if (mine[i]->multiwire.empty() || mine[i]->multiwire != mine[j]->multiwire) continue;
                auto const &p = plan.placements[i], &q = plan.placements[j];
                if (p.slots.empty() || q.slots.empty()) continue;
                bool const both_filed = as_the_file(panel, *mine[i], p) && as_the_file(panel, *mine[j], q);
                if (filed_ && both_filed) continue;
                int const s = p.slots[0].space, t = q.slots[0].space;
                if (bus.leg(s) == bus.leg(t))
                    fault("{} and {} share a neutral on one leg", mine[i]->mark, mine[j]->mark);
                bool const close = panel.bus_legs == Panel::Bus::by_column ? bus.facing(s, t) : bus.side_by_side(s, t);
                bool const untied = mine[i]->tie == Tie::none && mine[j]->tie == Tie::none;
                if (!close && !(untied && stand_as_today(*mine[i], *mine[j], s, t)))
                    fault("{} and {} are a pair and not neighbours", mine[i]->mark, mine[j]->mark);
            }
    }

    static bool stand_as_today(Circuit const& c, Circuit const& d, int s, int t) {
        if (!c.space || !d.space) return false;
        return std::set<int>{c.space->space, d.space->space} == std::set<int>{s, t};
    }

    std::int64_t pole_va(Circuit const& c, Situation const* s, std::int64_t v, bool two) const {
        std::int64_t share = 1'000'000;
        if (s) {
            share = s->other;
            if (auto const u = s->by_use.find(c.use); !c.use.empty() && u != s->by_use.end()) share = u->second;
            if (auto const m = s->by_mark.find(c.mark); m != s->by_mark.end()) share = m->second;
        }
        if (c.off) return 0;
        // Thousandths of a VA times millionths, rounded once, halves up.
        auto const rounded = [&](std::int64_t thousandths) { // 10^10 x 10^6 fits
            return (thousandths * share + 500'000'000) / 1'000'000'000;
        };
        if (c.measured) return rounded(c.measured->count * v);
        auto const va = c.load ? rounded(c.load->count) : 0;
        return two ? va / 2 + va % 2 : va;
    }

    // The legs of a panel as planned, sub-panels included; what has no space counts half on each leg if `all`.
    Sums legs(Panel const& panel, std::vector<Circuit const*> const& mine, PanelPlan const& plan, bool all, int depth) {
        Sums sums(job_.situations.size() + 1, {0, 0});
        auto const from = sources(job_, panel);
        auto const kind = from.empty() ? SupplyKind::split_120_240 : from.front().kind;
        for (std::size_t i = 0; i < mine.size(); ++i) {
            bool const placed = i < plan.placements.size() && !plan.placements[i].slots.empty();
            if (!placed && !all) continue;
            auto const load = load_of(*mine[i], kind, depth);
            for (std::size_t k = 0; k < sums.size(); ++k) {
                bool const split = mine[i]->poles == 2 && !direct(kind);
                auto const whole = load[k][0] + load[k][1];
                if (split)
                    sums[k][0] += load[k][0], sums[k][1] += load[k][1];
                else if (!placed)
                    sums[k][0] += (whole + 1) / 2, sums[k][1] += (whole + 1) / 2;
                else
                    sums[k][direct(kind)
                                ? 0
                                : static_cast<std::size_t>(Bus{panel}.leg(plan.placements[i].slots[0].space))] += whole;
            }
        }
        return sums;
    }

    Sums load_of(Circuit const& c, SupplyKind kind, int depth) {
        Sums sums(job_.situations.size() + 1, {0, 0});
        bool feeds = false;
        for (std::size_t i = 0; i < job_.panels.size() && i < plan_.panels.size() && depth < 32; ++i) {
            Panel const& p = job_.panels[i];
            if (!p.feeder || p.feeder->panel != c.panel || p.feeder->mark != c.mark) continue;
            std::vector<Circuit const*> below;
            for (Circuit const& d : job_.circuits)
                if (d.panel == p.name) below.push_back(&d);
            if (below.empty()) continue;
            feeds = true;
            auto const part = legs(p, below, plan_.panels[i], true, depth + 1);
            for (std::size_t k = 0; k < sums.size() && !c.off; ++k) sums[k][0] += part[k][0], sums[k][1] += part[k][1];
        }
        if (feeds) return sums;
        bool const two = c.poles == 2 && !direct(kind);
        for (std::size_t k = 0; k < sums.size(); ++k) {
            auto const va = pole_va(c, k ? &job_.situations[k - 1] : nullptr, volts(kind), two);
            sums[k] = {va, two ? va : 0};
        }
        return sums;
    }

    void check_loads(Panel const& panel, std::vector<Circuit const*> const& mine, PanelPlan const& plan,
                     bool homeless) {
        if (plan.situations.size() != job_.situations.size() + 1)
            return fault("{}: {} situations are reported", panel.name, plan.situations.size());
        auto const sums = legs(panel, mine, plan, false, 0);
        std::int64_t worst = 0;
        for (std::size_t k = 0; k < sums.size(); ++k) {
            auto const& said = plan.situations[k];
            auto const d = std::abs(sums[k][0] - sums[k][1]);
            if (said.leg_a_va != sums[k][0] || said.leg_b_va != sums[k][1] || said.imbalance_va != d)
                fault("{}, {}: legs {} and {} VA, {} and {} claimed", panel.name, said.name, sums[k][0], sums[k][1],
                      said.leg_a_va, said.leg_b_va);
            if (k > 0 || job_.situations.empty()) worst = std::max(worst, d);
        }
        bool const counts = two_legs(panel) && !homeless;
        if (counts != plan.imbalance_va.has_value())
            fault("{}: an imbalance is {} claimed", panel.name, counts ? "not" : "wrongly");
        if (counts && plan.imbalance_va && *plan.imbalance_va != worst)
            fault("{}: the imbalance is {} VA, {} claimed", panel.name, worst, *plan.imbalance_va);
    }

    void check_moves(Panel const& panel, std::vector<Circuit const*> const& mine, PanelPlan const& plan) {
        int moves = 0;
        for (std::size_t i = 0; i < mine.size(); ++i) {
            auto const& p = plan.placements[i];
            auto const home = mine[i]->space ? expected(panel, *mine[i], *mine[i]->space) : std::vector<Spot>{};
            if (p.from != home) fault("{}: `from` is not what the file says", mine[i]->mark);
            if (home.empty() || p.slots.empty()) continue;
            bool same = home.size() == p.slots.size();
            for (std::size_t k = 0; same && k < home.size(); ++k) same = home[k].space == p.slots[k].space;
            moves += !same;
        }
        if (moves != plan.moves) fault("{}: {} moves, {} claimed", panel.name, moves, plan.moves);
        if (filed_ && moves) fault("{}: the filed layout moves {} circuits", panel.name, moves);
    }

    void check_front(Panel const& panel, PanelPlan const& plan) {
        if (plan.lower_bound_va && plan.least_imbalance_va && *plan.lower_bound_va > *plan.least_imbalance_va)
            fault("{}: the lower bound is above what was found", panel.name);
        if (plan.proven && plan.lower_bound_va != plan.least_imbalance_va)
            fault("{}: called proven, but bound and least differ", panel.name);
        for (std::size_t i = 1; i < plan.tradeoff.size(); ++i)
            if (plan.tradeoff[i].moves <= plan.tradeoff[i - 1].moves ||
                plan.tradeoff[i].imbalance_va >= plan.tradeoff[i - 1].imbalance_va)
                fault("{}: the trade-off does not drop at {} moves", panel.name, plan.tradeoff[i].moves);
        if (!filed_ && plan.imbalance_va && plan.least_imbalance_va && *plan.imbalance_va < *plan.least_imbalance_va)
            fault("{}: the plan is more even than the least", panel.name);
    }

    Job const& job_;
    Plan const& plan_;
    bool filed_;
    std::vector<std::string> faults_;
};

} // namespace

std::vector<std::string> recheck(Job const& job, Plan const& plan, bool filed) {
    return Recheck(job, plan, filed).run();
}

} // namespace legwork
