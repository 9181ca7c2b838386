// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/recheck/recount.h"

#include <algorithm>
#include <cmath>
#include <complex>
#include <cstdlib>
#include <optional>

namespace legwork::recount {

namespace {

constexpr int kDeepest = 32; // panels below panels

bool two_hots(SupplyKind k) { return k == SupplyKind::split_120_240 || k == SupplyKind::wye_120_208; }

std::int64_t volts(SupplyKind k) {
    return k == SupplyKind::dc_12 ? 12 : k == SupplyKind::dc_24 ? 24 : k == SupplyKind::dc_48 ? 48 : 120;
}

std::vector<Supply> sources_from(Panel const& p, int depth) {
    std::vector<Supply> found;
    if (p.above && depth < kDeepest) {
        found = sources_from(*p.above, depth + 1);
        for (Supply& s : found) {
            if (!p.own_supply || two_hots(p.own_supply->kind)) continue;
            bool const one_leg = p.own_supply->kind == SupplyKind::one_leg_120;
            if (one_leg || two_hots(s.kind)) s.kind = p.own_supply->kind;
            if (one_leg) s.leg = p.own_supply->leg;
        }
        return found;
    }
    for (Supply const* s : p.supplies) found.push_back(*s);
    if (p.own_supply) found.push_back(*p.own_supply);
    return found;
}

// VA of a circuit, of two poles on each leg.
std::int64_t pole_load(Circuit const& c, Situation const* s, std::int64_t v, bool two) {
    std::int64_t const share = s ? s->share[c.number] : 1'000'000;
    if (c.off) return 0;
    // Thousandths of a VA times millionths, rounded once, halves up; whole megawatts apart, or the product may not fit.
    constexpr std::int64_t kVa = 1'000'000'000;
    auto const rounded = [&](std::int64_t thousandths) {
        return thousandths / kVa * share + (thousandths % kVa * share + kVa / 2) / kVa;
    };
    if (c.measured) return rounded(c.measured->count * v);
    if (!c.load && c.mca) return rounded(c.mca->count * v);
    auto const va = c.load ? rounded(c.load->count) : 0;
    return two ? va / 2 + va % 2 : va;
}

// Sums over a panel and what is below it: all load, or what flows to neutral from one source.
class Adder {
public:
    Adder(Building const& building, Plan const& plan, std::optional<std::size_t> source)
        : building_(building), plan_(plan), source_(source) {}

    // What has no space counts half on each leg if `all`: a feeder carries it wherever it will be.
    Sums panel(Panel const& p, PanelPlan const& planned, bool all, int depth = 0) const {
        Sums sums(building_.situations.size() + 1, {0, 0});
        auto const from = sources(p);
        auto const kind = from.empty() ? SupplyKind::split_120_240 : from.front().kind;
        std::size_t i = 0;
        for (Circuit const& c : building_.circuits) {
            if (c.panel != &p) continue;
            bool const placed = i < planned.placements.size() && !planned.placements[i].slots.empty();
            int const space = placed ? planned.placements[i].slots[0].space : 0;
            ++i;
            if (!placed && !all) continue;
            bool const whole_on_one = c.poles == 1 || is_direct(kind);
            int const leg = is_direct(kind) || !placed ? 0 : Bus{p}.leg(space);
            bool const dry = source_ && placed && whole_on_one && from[*source_].kind == SupplyKind::one_leg_120 &&
                             leg != (from[*source_].leg == Leg::a ? 0 : 1);
            if (dry) continue;
            auto const load = circuit(c, from, kind, depth);
            for (std::size_t k = 0; k < sums.size(); ++k) {
                auto const [a, b] = load[k];
                if (!whole_on_one)
                    sums[k][0] += a, sums[k][1] += b;
                else if (!placed)
                    sums[k][0] += (a + b + 1) / 2, sums[k][1] += (a + b + 1) / 2;
                else
                    sums[k][static_cast<std::size_t>(leg)] += a + b;
            }
        }
        return sums;
    }

private:
    Sums circuit(Circuit const& c, std::vector<Supply> const& from, SupplyKind kind, int depth) const {
        Sums sums(building_.situations.size() + 1, {0, 0});
        bool const off = c.off || (source_ && std::ranges::count(from[*source_].off, c.mark) > 0);
        bool feeds = false;
        for (std::size_t i = 0; i < building_.panels.size() && i < plan_.panels.size() && depth < kDeepest; ++i) {
            Panel const& p = building_.panels[i];
            bool const fed = p.above && p.above == c.panel && p.feeder == &c;
            bool const holds_any =
                std::ranges::any_of(building_.circuits, [&](Circuit const& d) { return d.panel == &p; });
            if (!fed || !holds_any) continue;
            feeds = true;
            auto const below = panel(p, plan_.panels[i], true, depth + 1);
            for (std::size_t k = 0; k < sums.size() && !off; ++k) sums[k][0] += below[k][0], sums[k][1] += below[k][1];
        }
        bool const two = c.poles == 2 && !is_direct(kind);
        if (feeds || off || (source_ && two)) return sums;
        for (std::size_t k = 0; k < sums.size(); ++k) {
            auto const va = pole_load(c, k ? &building_.situations[k - 1] : nullptr, volts(kind), two);
            sums[k] = {va, two ? va : 0};
        }
        return sums;
    }

    Building const& building_;
    Plan const& plan_;
    std::optional<std::size_t> source_;
};

} // namespace

int Bus::rows() const { return panel.spaces / 2 + panel.spaces % 2; }

int Bus::row(int s) const {
    if (panel.numbering == Numbering::across) return (s + 1) / 2;
    return s > rows() ? s - rows() : s;
}

bool Bus::is_first_column(int s) const { return panel.numbering == Numbering::across ? s % 2 == 1 : s <= rows(); }

int Bus::leg(int s) const {
    if (panel.bus_legs == BusLegs::by_column) return is_first_column(s) ? 0 : 1;
    auto const i = static_cast<std::size_t>(row(s)) - 1;
    if (panel.bus_legs == BusLegs::listed && i < panel.row_legs.size()) return panel.row_legs[i] == Leg::a ? 0 : 1;
    return row(s) % 2 == 1 ? 0 : 1;
}

bool Bus::side_by_side(int s, int t) const {
    return is_first_column(s) == is_first_column(t) && std::abs(row(s) - row(t)) == 1;
}

bool Bus::facing(int s, int t) const { return row(s) == row(t) && s != t; }

std::vector<Supply> sources(Panel const& panel) { return sources_from(panel, 0); }

bool has_two_legs(Panel const& panel) {
    auto const all = sources(panel);
    return std::ranges::any_of(all, [](Supply const& s) { return two_hots(s.kind); });
}

bool is_direct(SupplyKind k) { return k == SupplyKind::dc_12 || k == SupplyKind::dc_24 || k == SupplyKind::dc_48; }

bool is_live(Panel const& panel, int space) {
    if (std::ranges::count(panel.dead, space)) return false;
    auto const all = sources(panel);
    return std::ranges::any_of(all, [&](Supply const& s) {
        return s.kind != SupplyKind::one_leg_120 || (s.leg == Leg::a ? 0 : 1) == Bus{panel}.leg(space);
    });
}

Sums leg_sums(Building const& building, Plan const& plan, Panel const& panel, PanelPlan const& planned) {
    return Adder(building, plan, {}).panel(panel, planned, false);
}

std::vector<double> neutral_amperes(Building const& building, Plan const& plan, Panel const& panel,
                                    PanelPlan const& planned) {
    std::vector<double> worst(building.situations.size() + 1, 0);
    auto const from = sources(panel);
    for (std::size_t f = 0; f < from.size(); ++f) {
        // Two phasors: leg B lags leg A by 180 degrees, 120 of a wye, or not at all.
        double const degrees = from[f].kind == SupplyKind::split_120_240 ? 180
                               : from[f].kind == SupplyKind::wye_120_208 ? 120
                                                                         : 0;
        auto const b = std::polar(1.0, -degrees * std::acos(-1.0) / 180.0);
        auto const sums = Adder(building, plan, f).panel(panel, planned, false);
        for (std::size_t k = 0; k < sums.size(); ++k) {
            auto const v = static_cast<double>(volts(from[f].kind));
            auto const amps = std::abs(static_cast<double>(sums[k][0]) / v + b * (static_cast<double>(sums[k][1]) / v));
            worst[k] = std::max(worst[k], amps);
        }
    }
    return worst;
}

} // namespace legwork::recount
