// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/reach_search.h"

#include <algorithm>
#include <map>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

class Search {
public:
    Search(Solved const& solved, Below const& below, ModelOptions const& options, int most_moves, Effort& effort)
        : solved_(solved),
          m_(solved.model()),
          below_(below),
          options_(options),
          most_moves_(most_moves),
          effort_(effort) {
        options_.pins.assign(m_.circuits.size(), 0);
        for (Unit const& u : m_.units) {
            if (u.held) continue;
            for (int const c : {u.a, u.b})
                if (c >= 0 && !m_.reach[at(c)].empty() && !(c == u.a ? u.a_held : u.b_held)) limited_.push_back(c);
        }
    }

    ReachFront run() {
        bool all_stand = true;
        auto const& bound = solved_.front().steps;
        for (std::size_t n = 0; n < bound.size() && bound[n].moves <= most_moves_; ++n) {
            if (auto slots = solved_.layout(n, effort_))
                offer(bound[n].moves, bound[n].worst, std::move(*slots));
            else
                all_stand = false;
        }
        bool const exact_bound =
            solved_.front().proven_to >= std::min(most_moves_, bound.empty() ? 0 : bound.back().moves);
        if (all_stand) return {drops(), exact_bound};
        bool const finished = put_on(0);
        return {drops(), finished && every_way_proven_};
    }

private:
    void offer(int moves, std::int64_t worst, Slots slots) {
        auto const here = best_.find(moves);
        if (here != best_.end() && here->second.worst <= worst) return;
        best_[moves] = {moves, worst, std::move(slots)};
    }
    std::int64_t least(int moves) const {
        auto worst = std::numeric_limits<std::int64_t>::max();
        for (auto const& [m, step] : best_)
            if (m <= moves) worst = std::min(worst, step.worst);
        return worst;
    }
    std::vector<ReachStep> drops() const {
        std::vector<ReachStep> steps;
        for (auto const& [moves, step] : best_)
            if (steps.empty() || step.worst < steps.back().worst) steps.push_back(step);
        return steps;
    }
    // Nothing can be better than the front without a look at reach.
    bool is_enough() const {
        return std::ranges::all_of(
                   solved_.front().steps,
                   [&](Front::Step const& s) { return s.moves > most_moves_ || least(s.moves) <= s.worst; }) &&
               solved_.front().proven_to >= std::min(most_moves_, solved_.front().steps.back().moves);
    }

    // The limited circuits from number `n` on, on every space they may have. False when the effort ended first.
    bool put_on(std::size_t n) {
        if (is_enough()) return true;
        if (n == limited_.size()) return solve();
        int const c = limited_[n];
        for (int cell = 0; cell < m_.cells(); ++cell) {
            options_.pins[at(c)] = 0; // where it stood a moment ago is free
            if (!may_stand(c, cell)) continue;
            options_.pins[at(c)] = m_.space_of_cell[at(cell)];
            if (!put_on(n + 1)) return false;
        }
        options_.pins[at(c)] = 0;
        return true;
    }

    bool may_stand(int c, int cell) const {
        auto const& filed = m_.today[at(c)];
        bool const two = m_.circuits[at(c)]->poles == 2;
        bool const home = !filed.empty() && m_.cell_of_space[at(filed.front().space)] == cell;
        auto const fits = [&](int k) { return !m_.wall[at(k)] && (home || m_.reaches(c, k)) && !is_taken(k); };
        if (!fits(cell)) return false;
        return !two || (cell + 1 < m_.cells() && m_.joined(cell, cell + 1) && fits(cell + 1));
    }
    bool is_taken(int cell) const {
        for (std::size_t i = 0; i < options_.pins.size(); ++i) {
            if (!options_.pins[i]) continue;
            int const first = m_.cell_of_space[at(options_.pins[i])];
            if (first == cell || (m_.circuits[i]->poles == 2 && first + 1 == cell)) return true;
        }
        return false;
    }

    bool solve() {
        if (++ways_ > kMostWays || effort_.is_over()) return false;
        auto part = effort_.part(effort_.left() / 4);
        auto const given = effort_.left() / 4;
        {
            Solved const way(*m_.job, *m_.panel, below_, options_, part);
            auto const& steps = way.front().steps;
            if (!steps.empty() && way.front().proven_to < std::min(most_moves_, steps.back().moves))
                every_way_proven_ = false;
            for (std::size_t n = 0; n < steps.size() && steps[n].moves <= most_moves_; ++n) {
                if (steps[n].worst >= least(steps[n].moves)) continue;
                if (auto slots = way.layout(n, part))
                    offer(steps[n].moves, steps[n].worst, std::move(*slots));
                else
                    every_way_proven_ = false;
            }
        }
        effort_.charge(part, given);
        return true;
    }

    static constexpr int kMostWays = 20'000;
    Solved const& solved_;
    PanelModel const& m_;
    Below const& below_;
    ModelOptions options_;
    int most_moves_;
    Effort& effort_;
    std::vector<int> limited_;
    std::map<int, ReachStep> best_;
    int ways_ = 0;
    bool every_way_proven_ = true;
};

} // namespace

Front as_front(ReachFront const& reach, Front const& bound) {
    Front f;
    if (reach.steps.empty()) return f;
    for (ReachStep const& s : reach.steps) f.steps.push_back({s.moves, s.worst, {}});
    f.fewest_moves = reach.steps.front().moves;
    f.least = reach.steps.back().worst;
    f.lower_bound = reach.is_proven ? f.least : std::min(f.least, bound.lower_bound);
    if (reach.is_proven) f.proven_to = reach.steps.back().moves;
    return f;
}

ReachFront reach_front(Solved const& solved, Below const& below, ModelOptions const& options, int most_moves,
                       Effort& effort) {
    return Search(solved, below, options, most_moves, effort).run();
}

} // namespace legwork
