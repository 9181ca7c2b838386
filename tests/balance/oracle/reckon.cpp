// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "balance/oracle/reckon.h"
#include "job/job.h"

#include <algorithm>
#include <cstdlib>

namespace legwork::oracle {

namespace {
bool holds(std::vector<int> const& list, int value) { return std::find(list.begin(), list.end(), value) != list.end(); }

struct Source {
    SupplyKind kind;
    Leg leg;
};

std::vector<Source> sources(typed::Job const& job, typed::Panel const& panel) {
    std::vector<Source> found;
    if (panel.feeder) {
        for (typed::Panel const& above : job.panels)
            if (above.name == panel.feeder->panel) found = sources(job, above);
        bool const narrowed = panel.supply && (panel.supply->kind == SupplyKind::one_leg_120 ||
                                               panel.supply->kind == SupplyKind::bridged_120);
        if (narrowed) found.assign(1, {panel.supply->kind, panel.supply->leg});
        return found;
    }
    if (panel.supply) found.push_back({panel.supply->kind, panel.supply->leg});
    for (typed::Supply const& s : job.supplies)
        if (std::find(panel.supplies.begin(), panel.supplies.end(), s.name) != panel.supplies.end())
            found.push_back({s.kind, s.leg});
    return found;
}

bool row_on_a(typed::Panel const& panel, int column, int row) {
    if (panel.bus_legs == BusLegs::by_column) return column == 0;
    auto const i = static_cast<std::size_t>(row) - 1;
    if (panel.bus_legs == BusLegs::listed && i < panel.row_legs.size()) return panel.row_legs[i] == Leg::a;
    return row % 2 == 1;
}
} // namespace

std::vector<Seat> seats(typed::Job const& job, typed::Panel const& panel) {
    auto const from = sources(job, panel);
    auto const reached = [&](bool on_a) {
        for (Source const& s : from)
            if (s.kind != SupplyKind::one_leg_120 || (s.leg == Leg::a) == on_a) return true;
        return false;
    };
    int const left = (panel.spaces + 1) / 2; // the first column takes the odd one
    std::vector<Seat> all;
    for (int s = 1; s <= panel.spaces; ++s) {
        Seat seat;
        if (panel.numbering == Numbering::across) {
            seat.column = s % 2 == 1 ? 0 : 1;
            seat.row = s / 2 + s % 2;
        } else {
            seat.column = s <= left ? 0 : 1;
            seat.row = s <= left ? s : s - left;
        }
        seat.on_a = row_on_a(panel, seat.column, seat.row);
        seat.usable = !holds(panel.blocked, s) && !holds(panel.dead, s) && reached(seat.on_a);
        all.push_back(seat);
    }
    return all;
}

Phase phase(typed::Job const& job, typed::Panel const& panel) {
    bool a = false, b = false;
    for (Source const& s : sources(job, panel)) {
        if (s.kind == SupplyKind::split_120_240 || s.kind == SupplyKind::wye_120_208) return Phase::two_legs;
        a = a || s.kind != SupplyKind::one_leg_120 || s.leg == Leg::a;
        b = b || s.kind != SupplyKind::one_leg_120 || s.leg == Leg::b;
    }
    return a && b ? Phase::in_phase : Phase::one_leg;
}

bool two_pole_site(Phase phase, Seat const& p, Seat const& q) {
    return p.column == q.column && std::abs(p.row - q.row) == 1 && (phase != Phase::two_legs || p.on_a != q.on_a);
}

bool pair_site(typed::Panel const& panel, Phase phase, Seat const& p, Seat const& q) {
    if (phase == Phase::two_legs && panel.bus_legs == BusLegs::by_column) return p.row == q.row && p.column != q.column;
    return two_pole_site(phase, p, q);
}

std::vector<std::int64_t> loads(typed::Job const& job, typed::Circuit const& circuit) {
    std::int64_t milli_va = circuit.load ? circuit.load->count : 0;
    if (circuit.off)
        milli_va = 0;
    else if (circuit.measured)
        milli_va = circuit.measured->count * 120 * circuit.poles;
    else if (!circuit.load && circuit.mca)
        milli_va = circuit.mca->count * 120 * circuit.poles;
    auto const shared = [&](std::int64_t millionths) {
        constexpr std::int64_t whole = 1'000'000'000; // thousandths of a VA times millionths
        return (milli_va * millionths + whole / 2) / whole;
    };
    std::vector<std::int64_t> all{shared(1'000'000)};
    for (typed::Situation const& s : job.situations) {
        std::int64_t share = s.other;
        if (s.by_mark.count(circuit.mark))
            share = s.by_mark.at(circuit.mark);
        else if (!circuit.use.empty() && s.by_use.count(circuit.use))
            share = s.by_use.at(circuit.use);
        all.push_back(shared(share));
    }
    return all;
}

std::vector<std::int64_t> minimised(std::vector<std::int64_t> const& all) {
    if (all.size() == 1) return all;
    return {all.begin() + 1, all.end()};
}

bool reaches(typed::Circuit const& circuit, Seat const& seat, int space) {
    if (circuit.reach_side == "left" && seat.column != 0) return false;
    if (circuit.reach_side == "right" && seat.column != 1) return false;
    return circuit.reach_spaces.empty() || holds(circuit.reach_spaces, space);
}

std::vector<typed::Circuit const*> circuits_on(typed::Job const& job, typed::Panel const& panel) {
    std::vector<typed::Circuit const*> found;
    for (typed::Circuit const& c : job.circuits)
        if (c.panel == panel.name) found.push_back(&c);
    return found;
}

typed::Circuit const* other_half(typed::Job const& job, typed::Circuit const& circuit) {
    if (circuit.multiwire.empty()) return nullptr;
    for (typed::Panel const& p : job.panels)
        if (p.name == circuit.panel && phase(job, p) == Phase::one_leg) return nullptr;
    for (typed::Circuit const& c : job.circuits)
        if (&c != &circuit && c.multiwire == circuit.multiwire && c.panel == circuit.panel) return &c;
    return nullptr;
}

} // namespace legwork::oracle
