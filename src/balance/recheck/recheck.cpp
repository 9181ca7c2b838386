// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Recounts a finished plan from the job alone. Duller than the search and sharing nothing with it, geometry and loads
// included, so that a mistake there cannot hide here.

#include "balance/balance.h"
#include "balance/recheck/recount.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace legwork {

namespace {

using namespace recount;

class Recheck {
public:
    Recheck(Building const& building, Plan const& plan, bool filed) : building_(building), plan_(plan), filed_(filed) {}

    std::vector<std::string> run() {
        if (plan_.panels.size() != building_.panels.size())
            fault("the plan has {} panels, the job {}", plan_.panels.size(), building_.panels.size());
        for (std::size_t i = 0; i < std::min(plan_.panels.size(), building_.panels.size()); ++i)
            check(building_.panels[i], plan_.panels[i]);
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
        for (Circuit const& c : building_.circuits)
            if (c.panel == &panel) mine.push_back(&c);
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
        check_loads(panel, plan, homeless);
        check_moves(panel, mine, plan);
        check_front(panel, plan);
    }

    // Stands where the file has it, so that an illegal place is the file's and not the plan's.
    static bool as_the_file(Panel const& panel, Circuit const& c, Placement const& p) {
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
        auto const from = sources(panel);
        bool const dc = !from.empty() && is_direct(from.front().kind);
        if (c.poles == 1 && !dc && (!p.leg || (*p.leg == Leg::a ? 0 : 1) != bus.leg(p.slots[0].space)))
            fault("{} is not on the leg that the plan says", c.mark);
    }

    static bool holds(std::vector<Spot> const& slots, int space) {
        return std::ranges::any_of(slots, [&](Spot s) { return s.space == space; });
    }

    static bool two_legs(Panel const& panel) { return has_two_legs(panel); }

    static bool within_reach(Panel const& panel, Circuit const& c, int space) {
        if (!c.reach_spaces.empty() && !std::ranges::count(c.reach_spaces, space)) return false;
        if (!c.reach_side) return true;
        // Coordinates of the space on the wall: right and down, after turning the panel as it hangs.
        Bus const bus{panel};
        int x = bus.is_first_column(space) ? -1 : 1, y = 2 * bus.row(space) - bus.rows() - 1;
        if (panel.first == Corner::top_right || panel.first == Corner::bottom_right) x = -x;
        if (panel.first == Corner::bottom_left || panel.first == Corner::bottom_right) y = -y;
        int across = x;
        if (panel.hang == Hang::upside_down) across = -x;
        if (panel.hang == Hang::turned_left) across = y; // the top goes to the left
        if (panel.hang == Hang::turned_right) across = -y;
        return c.reach_side == Side::left ? across <= 0 : across >= 0;
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
                if (!mine[i]->pair || mine[i]->pair != mine[j]->pair) continue;
                auto const &p = plan.placements[i], &q = plan.placements[j];
                if (p.slots.empty() || q.slots.empty()) continue;
                bool const both_filed = as_the_file(panel, *mine[i], p) && as_the_file(panel, *mine[j], q);
                if (filed_ && both_filed) continue;
                int const s = p.slots[0].space, t = q.slots[0].space;
                if (bus.leg(s) == bus.leg(t))
                    fault("{} and {} share a neutral on one leg", mine[i]->mark, mine[j]->mark);
                bool const close = panel.bus_legs == BusLegs::by_column ? bus.facing(s, t) : bus.side_by_side(s, t);
                bool const untied = mine[i]->tie == Tie::none && mine[j]->tie == Tie::none;
                if (!close && !(untied && stand_as_today(*mine[i], *mine[j], s, t)))
                    fault("{} and {} are a pair and not neighbours", mine[i]->mark, mine[j]->mark);
            }
    }

    static bool stand_as_today(Circuit const& c, Circuit const& d, int s, int t) {
        if (!c.space || !d.space) return false;
        return std::set<int>{c.space->space, d.space->space} == std::set<int>{s, t};
    }

    void check_loads(Panel const& panel, PanelPlan const& plan, bool homeless) {
        if (plan.situations.size() != building_.situations.size() + 1)
            return fault("{}: {} situations are reported", panel.name, plan.situations.size());
        auto const sums = leg_sums(building_, plan_, panel, plan);
        auto const neutral = neutral_amperes(building_, plan_, panel, plan);
        std::int64_t worst = 0;
        for (std::size_t k = 0; k < sums.size(); ++k) {
            auto const& said = plan.situations[k];
            auto const d = std::abs(sums[k][0] - sums[k][1]);
            if (said.leg_a_va != sums[k][0] || said.leg_b_va != sums[k][1] || said.imbalance_va != d)
                fault("{}, {}: legs {} and {} VA, {} and {} claimed", panel.name, said.name, sums[k][0], sums[k][1],
                      said.leg_a_va, said.leg_b_va);
            if (!(std::abs(said.neutral_a - neutral[k]) <= 1e-6 * (1 + neutral[k])))
                fault("{}, {}: {:.2f} A in the neutral, {:.2f} claimed", panel.name, said.name, neutral[k],
                      said.neutral_a);
            if (k > 0 || building_.situations.empty()) worst = std::max(worst, d);
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

    Building const& building_;
    Plan const& plan_;
    bool filed_;
    std::vector<std::string> faults_;
};

} // namespace

std::vector<std::string> recheck(Building const& building, Plan const& plan, bool filed) {
    return Recheck(building, plan, filed).run();
}

} // namespace legwork
