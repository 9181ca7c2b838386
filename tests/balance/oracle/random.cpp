// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/random.h"

#include "balance/oracle/today.h"
#include "job/job.h"

#include <algorithm>

namespace legwork::oracle {

namespace {
class Maker {
public:
    Maker(std::uint64_t seed, RandomPanel const& kind) : dice_(seed), kind_(kind) {}

    typed::Job job() {
        job_.code = "CE 2024";
        situations();
        panel("Main", dice_.from(dice_.chance(25) ? 2 : kind_.most_spaces - 2, kind_.most_spaces));
        return job_;
    }
    typed::Job with_sub_panel() {
        job_.code = "CE 2024";
        situations();
        panel("Main", dice_.from(4, 10));
        sub_panel("Main", "Sub", "SP");
        if (dice_.chance(30)) sub_panel(dice_.chance(50) ? "Main" : "Sub", "Loft", "SQ");
        if (dice_.chance(10)) part_a_pair();
        return job_;
    }

private:
    void situations() {
        int const n = dice_.from(0, kind_.most_situations);
        for (int i = 0; i < n; ++i) {
            typed::Situation s;
            s.name = "pattern " + std::to_string(i + 1);
            if (dice_.chance(50)) s.other = share();
            for (char const* use : {"heating", "lighting"})
                if (dice_.chance(60)) s.by_use[use] = share();
            for (int c = 1; c <= 6; ++c)
                if (dice_.chance(25)) s.by_mark["C" + std::to_string(c)] = share();
            job_.situations.push_back(s);
        }
    }
    std::int64_t share() {
        if (dice_.chance(30)) return dice_.chance(50) ? 0 : 1'000'000;
        return dice_.from(0, 1'000'000);
    }

    void panel(std::string const& name, int spaces) {
        typed::Panel p;
        p.name = name;
        if (spaces % 2 == 1 && dice_.chance(70)) --spaces;
        p.spaces = std::max(spaces, 2);
        p.supply = typed::Supply{};
        if (dice_.chance(10)) p.supply->kind = SupplyKind::wye_120_208;
        if (dice_.chance(4)) p.supply->kind = SupplyKind::bridged_120;
        if (dice_.chance(4)) p.supply->kind = SupplyKind::one_leg_120;
        if (dice_.chance(30)) p.numbering = Numbering::down;
        if (kind_.odd_buses && dice_.chance(20)) bus(p);
        for (int s = 1; s <= p.spaces; ++s) {
            if (dice_.chance(6))
                p.blocked.push_back(s);
            else if (dice_.chance(4))
                p.dead.push_back(s);
            if (dice_.chance(kind_.halves ? 40 : 5)) p.tandem.push_back(s);
        }
        job_.panels.push_back(p);
        circuits(job_.panels.back());
    }
    void sub_panel(std::string const& above, std::string const& name, std::string const& mark) {
        typed::Panel const upper = *panel_of(job_, above);
        make_room(upper);
        std::size_t const first = job_.circuits.size();
        typed::Circuit& feeder = add(upper, dice_.chance(20) ? 1 : 2);
        feeder.mark = mark;
        int const poles = feeder.poles;
        stand_today(dice_, job_, upper, first, false, false);
        panel(name, dice_.from(2, 8));
        typed::Panel& p = job_.panels.back();
        p.feeder = typed::FeederName{above, mark};
        if (poles == 1)
            p.supply->kind = SupplyKind::one_leg_120;
        else
            p.supply.reset();
    }
    // Takes circuits away, so that a feeder often finds a place.
    void make_room(typed::Panel const& p) {
        for (int taken = 0; taken < 2; ++taken) {
            auto const at = std::find_if(job_.circuits.begin(), job_.circuits.end(), [&](typed::Circuit const& c) {
                return c.panel == p.name && c.poles == 1 && c.multiwire.empty() && c.mark[0] == 'C';
            });
            if (at != job_.circuits.end() && dice_.chance(70)) job_.circuits.erase(at);
        }
    }
    // The halves of a pair in two panels: each then stands by itself.
    void part_a_pair() {
        for (typed::Circuit& c : job_.circuits) {
            if (c.multiwire.empty() || c.panel != "Main" || c.fixed) continue;
            c.panel = "Sub";
            c.space.reset();
            return;
        }
    }
    void bus(typed::Panel& p) {
        if (dice_.chance(40)) {
            p.bus_legs = BusLegs::by_column;
            return;
        }
        p.bus_legs = BusLegs::listed;
        for (int row = 0; row < (p.spaces + 1) / 2; ++row) p.row_legs.push_back(dice_.chance(50) ? Leg::a : Leg::b);
    }

    void circuits(typed::Panel const& p) {
        int const slots = p.spaces - static_cast<int>(p.blocked.size() + p.dead.size());
        int left = dice_.chance(4) ? slots + 1 : dice_.chance(40) ? slots : dice_.from(slots / 2, std::max(slots, 0));
        int const pairs = kind_.pair_heavy ? 75 : dice_.from(0, 40);
        std::size_t const first = job_.circuits.size();
        while (left > 0) {
            if (left >= 2 && dice_.chance(pairs)) {
                if (dice_.chance(40))
                    add(p, 2);
                else
                    pair(p);
                left -= 2;
            } else {
                add(p, 1);
                --left;
            }
        }
        limit_reach(p, first);
        stand_today(dice_, job_, p, first, kind_.halves, kind_.half_two_poles);
    }
    void limit_reach(typed::Panel const& p, std::size_t first) {
        for (std::size_t i = first; kind_.reach && i < job_.circuits.size(); ++i) {
            typed::Circuit& c = job_.circuits[i];
            if (!dice_.chance(kind_.short_wires)) continue;
            if (dice_.chance(50)) c.reach_side = dice_.chance(50) ? "left" : "right";
            for (int s = 1; c.reach_side.empty() && s <= p.spaces; ++s)
                if (dice_.chance(kind_.within)) c.reach_spaces.push_back(s);
        }
    }
    typed::Circuit& add(typed::Panel const& p, int poles) {
        typed::Circuit c;
        c.mark = "C" + std::to_string(++marks_);
        c.panel = p.name;
        c.poles = poles;
        c.tie = poles == 2 ? Tie::two_pole_breaker : Tie::none;
        if (dice_.chance(50)) c.use = dice_.chance(50) ? "heating" : "lighting";
        if (dice_.chance(10)) c.measured = Amps{dice_.from(1, 16'000)};
        if (!dice_.chance(5)) c.load = load(poles);
        c.off = dice_.chance(3);
        return job_.circuits.emplace_back(c);
    }
    VoltAmperes load(int poles) {
        if (dice_.chance(6)) return 0_VA;
        if (dice_.chance(10)) return {dice_.from(1, 4) * std::int64_t{500'000} * poles}; // many alike
        if (dice_.chance(10)) return {dice_.from(1, 1'900'000) * std::int64_t{poles}};   // thousandths of a VA
        return {dice_.from(1, 1900) * std::int64_t{1000} * poles};
    }
    void pair(typed::Panel const& p) {
        std::string const group = "G" + std::to_string(job_.circuits.size());
        int const how = dice_.below(3);
        for (int i = 0; i < 2; ++i) {
            typed::Circuit& c = add(p, 1);
            c.multiwire = group;
            c.tie = how == 0 ? Tie::none : how == 1 ? Tie::handle_tie : Tie::two_pole_breaker;
            if (i == 1 && dice_.chance(10)) c.load = job_.circuits[job_.circuits.size() - 2].load;
        }
    }

    Dice dice_;
    RandomPanel kind_;
    typed::Job job_;
    int marks_ = 0;
};
} // namespace

typed::Job random_job(std::uint64_t seed, RandomPanel const& kind) { return Maker(seed, kind).job(); }
typed::Job random_job_with_sub_panel(std::uint64_t seed) { return Maker(seed, {.odd_buses = false}).with_sub_panel(); }

} // namespace legwork::oracle
