// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/judge.h"

#include "balance/balance.h"
#include "building/resolve.h"

#include <algorithm>
#include <sstream>
#include <tuple>

namespace legwork::oracle {

namespace {
std::string told(std::optional<std::int64_t> const& v) { return v ? std::to_string(*v) : "nothing"; }

template <class Front>
std::string words(Front const& front) {
    std::ostringstream out;
    for (auto const& s : front) {
        if constexpr (requires { s.imbalance; })
            out << ' ' << s.moves << ':' << s.imbalance;
        else
            out << ' ' << s.moves << ':' << s.imbalance_va;
    }
    return out.str();
}

class Judge {
public:
    explicit Judge(typed::Job const& job) : job_(job) {}

    std::vector<std::string> faults() {
        BalanceOptions best;
        best.best = true;
        ask("best", best);
        ask("default", {});
        for (int moves : {0, 1, 2, 5}) {
            BalanceOptions some;
            some.max_moves = moves;
            ask("moves " + std::to_string(moves), some);
        }
        ask_filed();
        return faults_;
    }

private:
    void check(bool holds, std::string const& fault) {
        if (!holds) faults_.push_back(asked_ + ": " + fault);
    }

    void ask(std::string const& how, BalanceOptions const& options) {
        Plan const plan = balance(resolve(job_), options);
        for (typed::Panel const& p : job_.panels) {
            asked_ = how + ", panel " + p.name;
            PanelPlan const* q = plan_of(plan, p.name);
            check(q != nullptr, "no answer");
            if (q && known_below(plan, p)) panel(p, *q, below(job_, plan, p), options);
        }
    }
    // A panel below that has no plan leaves this one's loads unknown.
    bool known_below(Plan const& plan, typed::Panel const& p) const {
        for (typed::Panel const& s : job_.panels)
            if (s.feeder && s.feeder->panel == p.name && !circuits_on(job_, s).empty())
                if (PanelPlan const* q = plan_of(plan, s.name); !q || !q->why.empty()) return false;
        return true;
    }

    // Asked again and again with the same loads below, and slow.
    std::vector<Step> const& front_of(typed::Panel const& p, Today today, FeederLoads const& under) {
        auto const [at, is_new] = fronts_.try_emplace({p.name, today, under});
        if (is_new) at->second = exhaustive(board(job_, p, today, under));
        return at->second;
    }

    void panel(typed::Panel const& p, PanelPlan const& q, FeederLoads const& under, BalanceOptions const& options) {
        auto const& front = front_of(p, Today::may_move, under);
        if (front.empty()) return impossible(q);
        if (phase(job_, p) != Phase::two_legs) {
            bool const enough = !options.max_moves || *options.max_moves >= front.front().moves;
            return check(q.why.empty() == enough, enough ? "says there is no room: " + q.why : "too few moves");
        }
        std::vector<Step> said;
        for (TradeoffStep const& s : q.tradeoff) said.push_back({s.moves, s.imbalance_va});
        check(said == front, "trade-off is" + words(front) + ", told" + words(said));
        check(q.least_imbalance_va == front.back().imbalance, "least told is " + told(q.least_imbalance_va));
        proof(p, q);
        auto const wanted = chosen(front, options);
        if (!wanted) {
            check(q.placements.empty() && !q.imbalance_va && !q.why.empty(), "a plan with fewer moves than can be");
            auto const fewest = std::to_string(front.front().moves);
            return check(q.why.find(fewest) != std::string::npos,
                         "does not say that it takes " + fewest + ": " + q.why);
        }
        if (!q.why.empty()) return check(false, "no plan: " + q.why);
        plan_holds(q, Today::may_move, under);
        if (!options.best && !options.max_moves) return near_enough(q, front);
        check(q.moves == wanted->moves && q.imbalance_va == wanted->imbalance,
              "not the best plan: " + std::to_string(q.moves) + " moves, " + told(q.imbalance_va) + " VA");
    }
    // Where half-size breakers could be fitted the optimizer places none and may leave open whether that would help.
    void proof(typed::Panel const& p, PanelPlan const& q) {
        if (!p.tandem.empty() && !q.proven) return check(q.lower_bound_va < q.least_imbalance_va, "a bound too high");
        check(q.proven && q.lower_bound_va == q.least_imbalance_va, "not proven");
    }
    void impossible(PanelPlan const& q) {
        check(q.placements.empty() && !q.why.empty(), "a plan for an impossible panel");
        check(!q.imbalance_va && !q.least_imbalance_va && q.tradeoff.empty(), "numbers for an impossible panel");
        check(!q.moves_for_room, "moves that would make room in an impossible panel");
    }
    static std::optional<Step> chosen(std::vector<Step> const& front, BalanceOptions const& options) {
        if (!options.max_moves) return front.back(); // not empty
        std::optional<Step> found;
        for (Step const& s : front)
            if (s.moves <= *options.max_moves) found = s;
        return found;
    }
    void plan_holds(PanelPlan const& q, Today today, FeederLoads const& under) {
        for (std::string const& fault : recount(job_, q, today, under).faults) check(false, fault);
    }
    // The fewest moves that come within max(120 VA, 2 % of the heavier leg) of the least imbalance; the heavier leg is
    // that of the heaviest situation at the least imbalance.
    void near_enough(PanelPlan const& q, std::vector<Step> const& front) {
        std::int64_t const least = front.back().imbalance;
        std::int64_t heavier = 0;
        for (std::size_t i = job_.situations.empty() ? 0 : 1; i < q.situations.size(); ++i)
            heavier = std::max(heavier, (q.situations[i].leg_a_va + q.situations[i].leg_b_va + least + 1) / 2);
        auto const slack = std::max<std::int64_t>(120, heavier / 50);
        for (Step const& s : front) {
            if (s.imbalance > least + slack) continue;
            return check(q.moves == s.moves && q.imbalance_va == s.imbalance,
                         "near enough is " + std::to_string(s.moves) + " moves, not " + std::to_string(q.moves));
        }
    }

    void ask_filed() {
        Plan const plan = as_filed(resolve(job_));
        for (typed::Panel const& p : job_.panels) {
            asked_ = "as filed, panel " + p.name;
            PanelPlan const* q = plan_of(plan, p.name);
            check(q != nullptr, "no answer");
            if (q && known_below(plan, p)) filed(p, *q, below(job_, plan, p));
        }
    }
    void filed(typed::Panel const& p, PanelPlan const& q, FeederLoads const& under) {
        auto const& held = front_of(p, Today::stays, under);
        auto const& free = front_of(p, Today::may_move, under);
        if (held.empty()) {
            check(!q.why.empty(), "does not say that there is no room");
            check(free.empty() ? !q.moves_for_room : q.moves_for_room == free.front().moves, "wrong moves for room");
            return;
        }
        check(q.why.empty(), "says there is no room: " + q.why);
        plan_holds(q, Today::stays, under);
        if (phase(job_, p) != Phase::two_legs) return;
        check(q.imbalance_va == held.back().imbalance,
              "best is " + std::to_string(held.back().imbalance) + ", told " + told(q.imbalance_va));
        check(!free.empty() || !q.least_imbalance_va, "a least imbalance that nothing reaches");
        if (!free.empty() && q.proven)
            check(q.least_imbalance_va == free.back().imbalance, "least told is " + told(q.least_imbalance_va));
    }

    typed::Job const& job_;
    std::map<std::tuple<std::string, Today, FeederLoads>, std::vector<Step>> fronts_;
    std::string asked_;
    std::vector<std::string> faults_;
};

bool without_circuit(typed::Job& job, std::size_t i) {
    typed::Circuit const c = job.circuits[i];
    if (c.mark == "SP") return false;
    std::erase_if(job.circuits, [&](typed::Circuit const& o) {
        return o.mark == c.mark || (!c.multiwire.empty() && o.multiwire == c.multiwire);
    });
    return true;
}
} // namespace

std::vector<std::string> judge(typed::Job const& job) { return Judge(job).faults(); }

typed::Job smallest_wrong(typed::Job job) {
    auto const wrong = [](typed::Job const& j) { return !judge(j).empty(); };
    for (bool shrunk = true; shrunk;) {
        shrunk = false;
        auto const keep_if_wrong = [&](typed::Job const& less) {
            if (!wrong(less)) return false;
            job = less;
            return shrunk = true;
        };
        for (std::size_t i = 0; i < job.circuits.size(); ++i) {
            typed::Job less = job;
            if (without_circuit(less, i) && keep_if_wrong(less)) break;
            less = job;
            less.circuits[i].fixed = false;
            if (job.circuits[i].fixed && keep_if_wrong(less)) break;
            less.circuits[i].space.reset();
            if (job.circuits[i].space && keep_if_wrong(less)) break;
        }
        for (std::size_t i = 0; i < job.situations.size(); ++i) {
            typed::Job less = job;
            less.situations.erase(less.situations.begin() + static_cast<std::ptrdiff_t>(i));
            if (keep_if_wrong(less)) break;
        }
        for (std::size_t p = 0; p < job.panels.size(); ++p) {
            typed::Job less = job;
            less.panels[p].blocked.clear();
            less.panels[p].dead.clear();
            if ((!job.panels[p].blocked.empty() || !job.panels[p].dead.empty())) keep_if_wrong(less);
        }
    }
    return job;
}

} // namespace legwork::oracle
