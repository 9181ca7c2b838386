// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "oracle_random.h"

#include "oracle_reckon.h"

#include <algorithm>
#include <set>

namespace legwork::oracle {

namespace {
class Maker {
public:
    Maker(std::uint64_t seed, RandomPanel const& kind) : dice_(seed), kind_(kind) {}

    Job job() {
        job_.code = "CE 2024";
        situations();
        panel("Main", dice_.from(dice_.chance(25) ? 2 : kind_.most_spaces - 2, kind_.most_spaces));
        return job_;
    }
    Job with_sub_panel() {
        job_.code = "CE 2024";
        situations();
        panel("Main", dice_.from(4, 10));
        job_.panels[0].bus_legs = Panel::Bus::by_row;
        std::erase_if(job_.circuits, [&](Circuit const& c) { return c.mark == "C1" && c.multiwire.empty(); });
        Circuit feeder;
        feeder.mark = "SP";
        feeder.panel = "Main";
        bool const one_leg = dice_.chance(20);
        feeder.poles = one_leg ? 1 : 2;
        feeder.tie = one_leg ? Tie::none : Tie::two_pole_breaker;
        feeder.load = 2000_VA;
        job_.circuits.push_back(feeder);
        panel("Sub", dice_.from(2, 8));
        if (one_leg)
            job_.panels[1].supply->kind = SupplyKind::one_leg_120;
        else
            job_.panels[1].supply.reset();
        job_.panels[1].feeder = FeederName{"Main", "SP"};
        return job_;
    }

private:
    void situations() {
        int const n = dice_.from(0, kind_.most_situations);
        for (int i = 0; i < n; ++i) {
            Situation s;
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
        Panel p;
        p.name = name;
        if (spaces % 2 == 1 && dice_.chance(70)) --spaces;
        p.spaces = std::max(spaces, 2);
        p.supply = Supply{};
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
    void bus(Panel& p) {
        if (dice_.chance(40)) {
            p.bus_legs = Panel::Bus::by_column;
            return;
        }
        p.bus_legs = Panel::Bus::listed;
        for (int row = 0; row < (p.spaces + 1) / 2; ++row) p.row_legs.push_back(dice_.chance(50) ? Leg::a : Leg::b);
    }

    void circuits(Panel const& p) {
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
        today(p, first);
    }
    Circuit& add(Panel const& p, int poles) {
        Circuit c;
        c.mark = "C" + std::to_string(job_.circuits.size() + 1);
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
    void pair(Panel const& p) {
        std::string const group = "G" + std::to_string(job_.circuits.size());
        int const how = dice_.below(3);
        for (int i = 0; i < 2; ++i) {
            Circuit& c = add(p, 1);
            c.multiwire = group;
            c.tie = how == 0 ? Tie::none : how == 1 ? Tie::handle_tie : Tie::two_pole_breaker;
            if (i == 1 && dice_.chance(10)) c.load = job_.circuits[job_.circuits.size() - 2].load;
        }
    }

    // Stands some circuits: as a careful person would, or anyhow.
    void today(Panel const& p, std::size_t first) {
        int const present = dice_.chance(12) ? 0 : dice_.chance(60) ? 100 : dice_.from(20, 95);
        int const careless = dice_.chance(25) ? 30 : 0;
        int const fixed = dice_.chance(60) ? 0 : dice_.from(5, 50);
        all_ = seats(job_, p);
        free_.clear();
        for (int s = 1; s <= p.spaces; ++s)
            if (std::count(p.blocked.begin(), p.blocked.end(), s) == 0) free_.insert(s);
        std::vector<std::size_t> order;
        for (std::size_t i = first; i < job_.circuits.size(); ++i) order.push_back(i);
        for (std::size_t i = order.size(); i > 1; --i)
            std::swap(order[i - 1], order[static_cast<std::size_t>(dice_.below(static_cast<int>(i)))]);
        // Pairs and two-poles first: they need neighbours.
        std::stable_partition(order.begin(), order.end(), [&](std::size_t i) {
            return job_.circuits[i].poles == 2 || !job_.circuits[i].multiwire.empty();
        });
        for (std::size_t i : order) {
            Circuit& c = job_.circuits[i];
            if (c.space || !dice_.chance(present)) continue;
            stand(p, c, dice_.chance(careless));
        }
        if (kind_.halves) halve(p, first);
        for (std::size_t i = first; i < job_.circuits.size(); ++i)
            if (job_.circuits[i].space && dice_.chance(fixed)) job_.circuits[i].fixed = true;
    }
    Seat const& seat(int s) const { return all_[static_cast<std::size_t>(s) - 1]; }
    void stand(Panel const& p, Circuit& c, bool anyhow) {
        Circuit const* o = other_half(job_, c);
        std::vector<std::pair<int, int>> sites;
        for (int s : free_) {
            if (!anyhow && !seat(s).usable) continue;
            if (c.poles == 1 && (!o || anyhow)) sites.emplace_back(s, 0);
            for (int t : free_) {
                bool const below = seat(t).column == seat(s).column && seat(t).row == seat(s).row + 1;
                bool const two_legs = seat(s).on_a != seat(t).on_a;
                if (c.poles == 2 && below && (anyhow || (two_legs && seat(t).usable))) sites.emplace_back(s, t);
                if (c.poles == 1 && o && !anyhow && !o->space && seat(t).usable &&
                    pair_site(p, Phase::two_legs, seat(s), seat(t)))
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
    void halve(Panel const& p, std::size_t first) {
        for (int s : p.tandem) {
            std::vector<Circuit*> there;
            for (std::size_t i = first; i < job_.circuits.size(); ++i) {
                Circuit& c = job_.circuits[i];
                if (c.poles == 1 && c.space && c.space->space == s)
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

    Dice dice_;
    RandomPanel kind_;
    Job job_;
    std::vector<Seat> all_;
    std::set<int> free_;
};
} // namespace

Job random_job(std::uint64_t seed, RandomPanel const& kind) { return Maker(seed, kind).job(); }
Job random_job_with_sub_panel(std::uint64_t seed) { return Maker(seed, {.odd_buses = false}).with_sub_panel(); }

} // namespace legwork::oracle
