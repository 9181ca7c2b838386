// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/recount.h"
#include "job/job.h"

#include <algorithm>
#include <cstdlib>
#include <map>
#include <set>

namespace legwork::oracle {

namespace {
class Counter {
public:
    Counter(typed::Job const& job, typed::Panel const& panel, PanelPlan const& plan, Today today,
            FeederLoads const& under)
        : job_(job),
          panel_(panel),
          plan_(plan),
          phase_(phase(job, panel)),
          seats_(seats(job, panel)),
          today_(today),
          under_(under) {}

    Recount count() {
        found_.d.assign(job_.situations.size() + 1, 0);
        found_.sum = found_.d;
        auto const circuits = circuits_on(job_, panel_);
        check(plan_.placements.size() == circuits.size(), "not one placement a circuit");
        for (typed::Circuit const* c : circuits) one(*c);
        for (typed::Circuit const* c : circuits) pair(*c);
        for (auto const v : minimised(found_.d)) found_.imbalance = std::max(found_.imbalance, std::abs(v));
        claims();
        return found_;
    }

private:
    void check(bool holds, std::string const& fault) {
        if (!holds) found_.faults.push_back(fault);
    }
    Seat const& seat(int space) const { return seats_[static_cast<std::size_t>(space) - 1]; }
    Placement const* placed(typed::Circuit const& c) const {
        for (Placement const& p : plan_.placements)
            if (p.circuit == c.mark) return &p;
        return nullptr;
    }
    bool filed(typed::Circuit const& c) const { return c.space && today_ == Today::stays; }
    bool stays(typed::Circuit const& c) const { return filed(c) || (c.space && c.fixed); }

    void one(typed::Circuit const& c) {
        Placement const* p = placed(c);
        if (!p || p->slots.size() != static_cast<std::size_t>(c.poles)) return check(false, c.mark + " has no space");
        for (Spot s : p->slots) {
            if (s.space < 1 || s.space > panel_.spaces) return check(false, c.mark + " is off the panel");
            check(filed(c) || seat(s.space).usable, c.mark + " is on a blocked or dead space");
            bool const home = c.space && p->slots[0].space == c.space->space;
            check(home || reaches(c, seat(s.space), s.space), c.mark + " is out of reach");
            take(c, s);
        }
        Spot const home = c.space.value_or(Spot{});
        check(!stays(c) || p->slots[0] == home, c.mark + " must stay");
        check(p->from.empty() == !c.space, c.mark + " comes from nowhere, or a new one from somewhere");
        check(p->from.empty() || p->from[0] == home, c.mark + " comes from elsewhere");
        if (c.space && home.space != p->slots[0].space) ++found_.moves;
        load(c, *p);
        if (c.poles == 2)
            two_poles(c, *p);
        else
            check(p->leg && (*p->leg == Leg::a) == seat(p->slots[0].space).on_a, c.mark + " names the other leg");
    }
    void two_poles(typed::Circuit const& c, Placement const& p) {
        Seat const &s = seat(p.slots[0].space), &t = seat(p.slots[1].space);
        check(t.column == s.column && t.row == s.row + 1, c.mark + " is not on two spaces in a column");
        check(filed(c) || two_pole_site(phase_, s, t), c.mark + " does not reach two legs");
    }
    void take(typed::Circuit const& c, Spot s) {
        for (char half : s.half ? std::string(1, s.half) : std::string("ab")) {
            auto& owner = owners_[{s.space, half}];
            check(owner.empty(), c.mark + " stands where " + owner + " stands");
            owner = c.mark;
        }
        check(!s.half || (c.space && c.space->half), c.mark + " is newly on a half");
    }
    // What the circuit adds to A - B and to A + B; two poles put half on each leg.
    void load(typed::Circuit const& c, Placement const& p) {
        auto const fed = under_.find(c.mark);
        auto const v = fed == under_.end() ? loads(job_, c) : fed->second.sum;
        for (std::size_t i = 0; i < v.size(); ++i) {
            if (c.poles == 1)
                found_.d[i] += seat(p.slots[0].space).on_a ? v[i] : -v[i];
            else if (fed != under_.end())
                found_.d[i] += fed->second.difference[i];
            found_.sum[i] += v[i];
        }
    }
    void pair(typed::Circuit const& c) {
        typed::Circuit const* o = other_half(job_, c);
        if (!o || o < &c || (filed(c) && filed(*o))) return;
        Placement const *p = placed(c), *q = placed(*o);
        if (!p || !q || p->slots.empty() || q->slots.empty()) return;
        Seat const &s = seat(p->slots[0].space), &t = seat(q->slots[0].space);
        check(phase_ != Phase::two_legs || s.on_a != t.on_a, c.mark + " and " + o->mark + " are on one leg");
        bool const may_stay_apart = phase_ == Phase::in_phase || (c.tie == Tie::none && o->tie == Tie::none);
        bool const at_home =
            c.space && o->space && p->from.size() == 1 && q->from.size() == 1 &&
            std::set{p->slots[0].space, q->slots[0].space} == std::set{c.space->space, o->space->space};
        check((may_stay_apart && at_home) || pair_site(panel_, phase_, s, t),
              c.mark + " and " + o->mark + " are not neighbours");
    }
    void claims() {
        check(plan_.moves == found_.moves, "claims " + std::to_string(plan_.moves) + " moves");
        check(plan_.situations.size() == found_.d.size(), "not every situation is told");
        if (plan_.imbalance_va)
            check(*plan_.imbalance_va == found_.imbalance, "claims " + std::to_string(*plan_.imbalance_va) + " VA");
        for (std::size_t i = 0; i < std::min(plan_.situations.size(), found_.d.size()); ++i) situation(i);
    }
    void situation(std::size_t i) {
        SituationLoad const& told = plan_.situations[i];
        check(told.name == (i == 0 ? "connected" : job_.situations[i - 1].name), "wrong name of a situation");
        check(told.leg_a_va - told.leg_b_va == found_.d[i], told.name + ": legs do not differ as they do");
        check(told.imbalance_va == std::abs(found_.d[i]), told.name + ": wrong imbalance");
        // Half of an odd two-pole load is a half VA: up to one VA a circuit may go either way.
        auto const gap = told.leg_a_va + told.leg_b_va - found_.sum[i];
        check(std::abs(gap) <= static_cast<std::int64_t>(plan_.placements.size()),
              told.name + ": legs do not add up to the loads");
    }

    typed::Job const& job_;
    typed::Panel const& panel_;
    PanelPlan const& plan_;
    Phase phase_;
    std::vector<Seat> seats_;
    Today today_;
    FeederLoads const& under_;
    Recount found_;
    std::map<std::pair<int, char>, std::string> owners_;
};
} // namespace

Recount recount(typed::Job const& job, PanelPlan const& plan, Today today, FeederLoads const& under) {
    for (typed::Panel const& p : job.panels)
        if (p.name == plan.panel) return Counter(job, p, plan, today, under).count();
    return {{"no such panel"}, {}, {}, 0, 0};
}

namespace {
// The legs of a sub-panel as its own plan tells them, which is judged by itself. Nothing goes through a feeder that is
// off.
Below told(PanelPlan const& plan, bool off) {
    Below found;
    for (SituationLoad const& s : plan.situations) {
        if (off) {
            found.difference.push_back(0);
            found.sum.push_back(0);
            continue;
        }
        found.difference.push_back(s.leg_a_va - s.leg_b_va);
        found.sum.push_back(s.leg_a_va + s.leg_b_va);
    }
    return found;
}
} // namespace

FeederLoads below(typed::Job const& job, Plan const& plan, typed::Panel const& panel) {
    FeederLoads found;
    for (typed::Panel const& p : job.panels) {
        if (!p.feeder || p.feeder->panel != panel.name || circuits_on(job, p).empty()) continue;
        for (PanelPlan const& q : plan.panels)
            if (q.panel == p.name && !q.placements.empty())
                found[p.feeder->mark] = told(q, circuit_of(job, p.feeder->mark)->off);
    }
    return found;
}

} // namespace legwork::oracle
