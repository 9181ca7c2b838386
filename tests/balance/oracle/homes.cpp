// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/homes.h"

#include "balance/oracle/random.h"
#include "job/job.h"

#include <algorithm>

namespace legwork::oracle {

namespace {
class HomeMaker {
public:
    HomeMaker(std::uint64_t seed, Home const& home) : dice_(seed), home_(home) {}

    typed::Job job() {
        job_.code = "NEC 2023";
        typed::Panel& p = job_.panels.emplace_back();
        p.name = "Main";
        p.spaces = home_.spaces;
        p.supply = typed::Supply{};
        for (int s = 1; home_.situations > 1 && s <= home_.situations; ++s)
            job_.situations.emplace_back().name = "pattern " + std::to_string(s);
        for (int s = 1; s <= home_.spaces; ++s) free_.push_back(s);
        std::sort(free_.begin(), free_.end(), [](int s, int t) { return s % 2 != t % 2 ? s % 2 > t % 2 : s < t; });
        for (int i = 0; i < home_.two_poles; ++i) two_poles();
        for (int i = 0; i < home_.pairs; ++i) pair(i);
        while (static_cast<int>(free_.size()) > home_.empty) {
            auto const i = index(free_.size()); // before the circuit is made: the same job by every compiler
            stand(add(1), i);
        }
        return job_;
    }

private:
    std::size_t index(std::size_t n) { return static_cast<std::size_t>(dice_.below(static_cast<int>(n))); }
    typed::Circuit& add(int poles) {
        typed::Circuit c;
        c.mark = "C" + std::to_string(job_.circuits.size() + 1);
        c.panel = "Main";
        c.poles = poles;
        c.load = VoltAmperes{dice_.from(home_.largest / 20, home_.largest) * std::int64_t{1000} * poles};
        for (typed::Situation& s : job_.situations) s.by_mark[c.mark] = dice_.chance(25) ? 0 : dice_.from(0, 1'000'000);
        return job_.circuits.emplace_back(c);
    }
    void stand(typed::Circuit& c, std::size_t i) {
        c.space = Spot{free_[i], 0};
        free_.erase(free_.begin() + static_cast<std::ptrdiff_t>(i));
    }
    // The first of two free neighbours: free_ lists the left column, then the right.
    std::size_t site() {
        for (;;) {
            auto const i = index(free_.size() - 1);
            if (free_[i + 1] == free_[i] + 2) return i;
        }
    }
    void two_poles() {
        typed::Circuit& c = add(2);
        c.tie = Tie::two_pole_breaker;
        auto const i = site();
        stand(c, i);
        free_.erase(free_.begin() + static_cast<std::ptrdiff_t>(i));
    }
    void pair(int number) {
        auto const i = site();
        for (int half = 0; half < 2; ++half) {
            typed::Circuit& c = add(1);
            c.multiwire = "G" + std::to_string(number + 1);
            c.tie = Tie::handle_tie;
            stand(c, i);
        }
    }

    Dice dice_;
    Home home_;
    typed::Job job_;
    std::vector<int> free_;
};

std::vector<std::int64_t> difference(std::vector<std::int64_t> a, std::vector<std::int64_t> const& b) {
    for (std::size_t i = 0; i < a.size(); ++i) a[i] -= b[i];
    return a;
}
} // namespace

typed::Job random_home(std::uint64_t seed, Home const& home) { return HomeMaker(seed, home).job(); }

Legs legs(typed::Job const& job, typed::Panel const& panel) {
    auto const all = seats(job, panel);
    auto const on_a = [&](typed::Circuit const& c) { return all[static_cast<std::size_t>(c.space->space) - 1].on_a; };
    Legs found;
    found.constant.assign(job.situations.empty() ? 1 : job.situations.size(), 0);
    int free_a = 0, free_b = 0, singles = 0;
    for (Seat const& s : all)
        if (s.usable) ++(s.on_a ? free_a : free_b);
    for (typed::Circuit const* c : circuits_on(job, panel)) {
        typed::Circuit const* o = other_half(job, *c);
        bool const pairwise = o || c->poles == 2;
        if (c->fixed || pairwise) { // a pair takes one of each leg, wherever it goes
            if (c->poles == 2)
                --free_a, --free_b;
            else
                --(on_a(*c) ? free_a : free_b);
        }
        if (c->poles == 2 || (o && o < c)) continue;
        auto const v = minimised(loads(job, *c));
        auto const d = o ? difference(v, minimised(loads(job, *o))) : v;
        if (!c->fixed) {
            found.decisions.push_back({d, on_a(*c), o ? 2 : 1, !o});
            singles += !o;
        } else {
            for (std::size_t i = 0; i < d.size(); ++i) found.constant[i] += on_a(*c) ? d[i] : -d[i];
        }
    }
    found.least_on_a = std::max(0, singles - free_b);
    found.most_on_a = std::min(singles, free_a);
    return found;
}

} // namespace legwork::oracle
