// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/place/place.h"

#include "balance/place/assign.h"
#include "balance/place/neat.h"

#include <algorithm>

namespace legwork {

namespace {

std::size_t at(int i) { return static_cast<std::size_t>(i); }

class Placer {
public:
    Placer(PanelModel const& m, Signs const& signs, Rooming const& r)
        : m_(m), signs_(signs), rooming_(r), neat_(m), empty_(r.empty), slots_(m.circuits.size()) {}

    std::optional<Slots> run() {
        for (std::size_t i = 0; i < m_.units.size(); ++i) stay(m_.units[i], static_cast<int>(i));
        neat_.look(slots_);
        std::vector<int> pairs, singles;
        for (std::size_t i = 0; i < m_.units.size(); ++i) {
            Unit const& u = m_.units[i];
            if (u.held || rooming_.fate[i] != Fate::lift) continue;
            (u.kind == Unit::Kind::single ? singles : pairs).push_back(static_cast<int>(i));
        }
        // Pairs first, since singles fit any gap that pairs leave.
        if (!place_pairs(pairs)) return {};
        auto const before = slots_;
        if (!place_singles(singles)) return {};
        neat_.look(slots_); // now the rooms of new circuits are known too
        slots_ = before;
        if (!place_singles(singles)) return {};
        return std::move(slots_);
    }

private:
    int space(int cell) const { return m_.space_of_cell[at(cell)]; }
    std::vector<Spot> today(int circuit) const {
        auto spots = m_.today[at(circuit)];
        if (m_.grows[at(circuit)])
            for (Spot& s : spots) s.half = 0;
        return spots;
    }

    void stay(Unit const& u, int index) {
        if (u.held) {
            slots_[at(u.a)] = today(u.a);
            if (u.b >= 0) slots_[at(u.b)] = today(u.b);
            return;
        }
        switch (rooming_.fate[at(index)]) {
        case Fate::home: return stay_home(u, index);
        case Fate::keep_a:
            slots_[at(u.a)] = today(u.a);
            slots_[at(u.b)] = {{space(rooming_.other_cell[at(index)]), 0}};
            return;
        case Fate::keep_b:
            slots_[at(u.b)] = today(u.b);
            slots_[at(u.a)] = {{space(rooming_.other_cell[at(index)]), 0}};
            return;
        case Fate::lift: return;
        }
    }

    void stay_home(Unit const& u, int index) {
        slots_[at(u.a)] = today(u.a);
        if (u.b < 0) return;
        slots_[at(u.b)] = today(u.b);
        bool const a_on_a = m_.leg[at(u.cell_a)] == Leg::a;
        if (m_.legs == Legs::two && !u.half_held() && signs_[at(index)] != (a_on_a ? 1 : -1)) {
            std::swap(slots_[at(u.a)], slots_[at(u.b)]);
        }
    }

    // Half a of a pair is on the upper cell; in phase wherever its wires let it.
    bool a_is_upper(int unit, int upper) const {
        if (m_.legs == Legs::two) return (signs_[at(unit)] > 0) == (m_.leg[at(upper)] == Leg::a);
        return turned_cost(unit, upper, true) < kForbidden;
    }
    std::int64_t turned_cost(int unit, int upper, bool a_up) const {
        Unit u = m_.units[at(unit)];
        if (u.b < 0)
            return fits(u.a, upper) && fits(u.a, upper + 1) ? neat_.cost(u, space(upper), space(upper + 1))
                                                            : kForbidden;
        if (!a_up) std::swap(u.a, u.b);
        return fits(u.a, upper) && fits(u.b, upper + 1) ? neat_.cost(u, space(upper), space(upper + 1)) : kForbidden;
    }
    bool fits(int circuit, int cell) const { return m_.reaches(circuit, cell); }
    std::int64_t pair_cost(int unit, int upper) const { return turned_cost(unit, upper, a_is_upper(unit, upper)); }
    void put_pair(int unit, int upper) {
        Unit const& u = m_.units[at(unit)];
        Spot const s{space(upper), 0}, t{space(upper + 1), 0};
        empty_[at(upper)] = empty_[at(upper + 1)] = false;
        if (u.b < 0)
            slots_[at(u.a)] = {s, t};
        else if (a_is_upper(unit, upper))
            slots_[at(u.a)] = {s}, slots_[at(u.b)] = {t};
        else
            slots_[at(u.a)] = {t}, slots_[at(u.b)] = {s};
    }
    bool is_site(int upper) const {
        return upper + 1 < m_.cells() && empty_[at(upper)] && empty_[at(upper + 1)] && m_.joined(upper, upper + 1);
    }
    bool may_stand(int unit, int cell) const {
        bool const on_leg =
            m_.legs != Legs::two || signs_[at(unit)] == 0 || (signs_[at(unit)] > 0) == (m_.leg[at(cell)] == Leg::a);
        return on_leg && fits(m_.units[at(unit)].a, cell);
    }

    // The sites nearest the main that hold all pairs, if it is not settled where, then who takes which.
    bool place_pairs(std::vector<int> const& pairs) {
        if (pairs.empty()) return true;
        auto const sites = rooming_.sites ? *rooming_.sites : nearest_sites(static_cast<int>(pairs.size()));
        if (sites.size() < pairs.size()) return false;
        std::vector<std::vector<std::int64_t>> cost;
        for (int const u : pairs) {
            cost.emplace_back();
            for (int const s : sites) cost.back().push_back(pair_cost(u, s));
        }
        auto const taken = cheapest_assignment(cost);
        if (!taken) return false;
        for (std::size_t i = 0; i < pairs.size(); ++i) put_pair(pairs[i], sites[at((*taken)[i])]);
        return true;
    }

    // Upper cells of `n` sites that do not overlap, the sum of their distances from the main the least.
    std::vector<int> nearest_sites(int n) const {
        constexpr std::int64_t kNone = std::int64_t{1} << 40;
        auto const cells = at(m_.cells());
        std::vector<std::vector<std::int64_t>> least(cells + 2, std::vector<std::int64_t>(at(n) + 1, kNone));
        for (auto& row : least) row[0] = 0;
        for (std::size_t c = cells; c-- > 0;)
            for (std::size_t k = 1; k <= at(n); ++k) {
                least[c][k] = least[c + 1][k];
                if (is_site(static_cast<int>(c)))
                    least[c][k] = std::min(least[c][k], least[c + 2][k - 1] + site_cost(static_cast<int>(c)));
            }
        std::vector<int> sites;
        if (least[0][at(n)] >= kNone) return sites;
        for (std::size_t c = 0, k = at(n); k > 0;) {
            bool const take =
                is_site(static_cast<int>(c)) && least[c][k] == least[c + 2][k - 1] + site_cost(static_cast<int>(c));
            if (take) sites.push_back(static_cast<int>(c)), --k;
            c += take ? 2 : 1;
        }
        return sites;
    }
    std::int64_t site_cost(int upper) const { return neat_.distance(space(upper)) + neat_.distance(space(upper + 1)); }

    bool place_singles(std::vector<int> const& singles) {
        std::vector<int> cells;
        for (int c = 0; c < m_.cells(); ++c)
            if (empty_[at(c)]) cells.push_back(c);
        std::vector<std::vector<std::int64_t>> cost;
        for (int const u : singles) {
            cost.emplace_back();
            for (int const c : cells)
                cost.back().push_back(may_stand(u, c) ? neat_.cost(m_.units[at(u)].a, space(c)) : kForbidden);
        }
        auto const taken = cheapest_assignment(cost);
        if (!taken) return false;
        for (std::size_t i = 0; i < singles.size(); ++i)
            slots_[at(m_.units[at(singles[i])].a)] = {{space(cells[at((*taken)[i])]), 0}};
        return true;
    }

    PanelModel const& m_;
    Signs const& signs_;
    Rooming const& rooming_;
    Neatness neat_;
    std::vector<bool> empty_;
    Slots slots_;
};

} // namespace

std::optional<Slots> place(PanelModel const& model, Signs const& signs, Rooming const& rooming) {
    return Placer(model, signs, rooming).run();
}

} // namespace legwork
