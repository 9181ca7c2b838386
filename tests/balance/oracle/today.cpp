// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/today.h"

#include "balance/oracle/reckon.h"
#include "job/job.h"

#include <algorithm>
#include <set>

namespace legwork::oracle {

namespace {
class Stander {
public:
    Stander(Dice& dice, typed::Job& job, typed::Panel const& panel, bool halves, bool half_two_poles)
        : dice_(dice), job_(job), panel_(panel), halves_(halves), half_two_poles_(half_two_poles) {}

    // Stands some circuits: as a careful person would, or anyhow.
    void today(std::size_t first) {
        int const present = dice_.chance(12) ? 0 : dice_.chance(60) ? 100 : dice_.from(20, 95);
        int const careless = dice_.chance(25) ? 30 : 0;
        int const fixed = dice_.chance(60) ? 0 : dice_.from(5, 50);
        all_ = seats(job_, panel_);
        for (int s = 1; s <= panel_.spaces; ++s)
            if (std::count(panel_.blocked.begin(), panel_.blocked.end(), s) == 0) free_.insert(s);
        for (typed::Circuit const* c : circuits_on(job_, panel_)) // those before `first`
            for (int s = 1; c->space && s <= panel_.spaces; ++s)
                if (s == c->space->space || (c->poles == 2 && is_below(c->space->space, s))) free_.erase(s);
        std::vector<std::size_t> order;
        for (std::size_t i = first; i < job_.circuits.size(); ++i) order.push_back(i);
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[static_cast<std::size_t>(dice_.below(static_cast<int>(i)))]);
        // Pairs and two-poles first: they need neighbours.
        std::stable_partition(order.begin(), order.end(), [&](std::size_t i) {
            return job_.circuits[i].poles == 2 || !job_.circuits[i].multiwire.empty();
        });
        for (std::size_t i : order) {
            typed::Circuit& c = job_.circuits[i];
            if (c.space || !dice_.chance(present)) continue;
            stand(c, dice_.chance(careless));
        }
        if (halves_) halve(first);
        if (half_two_poles_) halve_two_poles(first);
        for (std::size_t i = first; i < job_.circuits.size(); ++i)
            if (job_.circuits[i].space && dice_.chance(fixed)) job_.circuits[i].fixed = true;
    }
    bool is_below(int s, int t) const { return seat(t).column == seat(s).column && seat(t).row == seat(s).row + 1; }

private:
    Seat const& seat(int s) const { return all_[static_cast<std::size_t>(s) - 1]; }
    void stand(typed::Circuit& c, bool anyhow) {
        typed::Circuit const* o = other_half(job_, c);
        std::vector<std::pair<int, int>> sites;
        for (int s : free_) {
            if (!anyhow && !seat(s).usable) continue;
            if (c.poles == 1 && (!o || anyhow)) sites.emplace_back(s, 0);
            for (int t : free_) {
                bool const two_legs = seat(s).on_a != seat(t).on_a;
                if (c.poles == 2 && is_below(s, t) && (anyhow || (two_legs && seat(t).usable)))
                    sites.emplace_back(s, t);
                if (c.poles == 1 && o && !anyhow && !o->space && seat(t).usable &&
                    pair_site(panel_, Phase::two_legs, seat(s), seat(t)))
                    sites.emplace_back(s, t);
            }
        }
        if (sites.empty()) return;
        auto const [s, t] = sites[static_cast<std::size_t>(dice_.below(static_cast<int>(sites.size())))];
        c.space = Spot{s, 0};
        free_.erase(s);
        if (t == 0) return;
        free_.erase(t);
        if (o) job_.circuits[static_cast<std::size_t>(o - job_.circuits.data())].space = Spot{t, 0};
    }
    // Puts one-pole circuits on halves, one or two to a space.
    void halve(std::size_t first) {
        for (int s : panel_.tandem) {
            std::vector<typed::Circuit*> there;
            for (std::size_t i = first; i < job_.circuits.size(); ++i) {
                typed::Circuit& c = job_.circuits[i];
                if (c.poles == 1 && c.space && c.space->space == s && c.multiwire.empty())
                    there.insert(there.begin(), &c);
                else if (c.poles == 1 && !c.space && c.multiwire.empty())
                    there.push_back(&c);
            }
            if (there.empty() || !dice_.chance(60)) continue;
            if (!there[0]->space && !free_.count(s)) continue;
            if (!seat(s).usable) continue;
            there[0]->space = Spot{s, dice_.chance(50) ? 'a' : 'b'};
            free_.erase(s);
            if (there.size() > 1 && !there[1]->space && dice_.chance(60))
                there[1]->space = Spot{s, there[0]->space->half == 'a' ? 'b' : 'a'};
        }
    }

    // Two-pole breakers become half-size, wherever they stand; beside some of them comes a one-pole circuit.
    void halve_two_poles(std::size_t first) {
        for (std::size_t i = first; i < job_.circuits.size(); ++i) {
            typed::Circuit& c = job_.circuits[i];
            if (c.poles != 2 || !c.space || !dice_.chance(50)) continue;
            c.space->half = dice_.chance(50) ? 'a' : 'b';
            bool const shared = std::count(panel_.tandem.begin(), panel_.tandem.end(), c.space->space) > 0;
            if (!shared || !seat(c.space->space).usable || !dice_.chance(40)) continue;
            for (std::size_t j = first; j < job_.circuits.size(); ++j) {
                typed::Circuit& o = job_.circuits[j];
                if (o.poles != 1 || o.space || !o.multiwire.empty()) continue;
                o.space = Spot{c.space->space, c.space->half == 'a' ? 'b' : 'a'};
                break;
            }
        }
    }

    Dice& dice_;
    typed::Job& job_;
    typed::Panel const& panel_;
    bool halves_, half_two_poles_;
    std::vector<Seat> all_;
    std::set<int> free_;
};
} // namespace

void stand_today(Dice& dice, typed::Job& job, typed::Panel const& panel, std::size_t first, bool halves,
                 bool half_two_poles) {
    Stander(dice, job, panel, halves, half_two_poles).today(first);
}

} // namespace legwork::oracle
