// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The AC circuit of a power supply draws what the DC panel behind it draws, and what is lost on the way. It stays a
// circuit like any other with a load and a share in each situation, so that nobody behind needs to know.
#include "building/resolving.h"

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {

constexpr std::int64_t kWhole = 1'000'000;
constexpr int kDeepest = 32; // panels below panels

struct DcLoad {
    Circuit const* circuit = nullptr;
    VoltAmperes load;
};

// Of what is not known nothing; a sub-panel counts by its circuits.
void add_loads(Panel const& panel, std::vector<DcLoad>& found, int depth = 0) {
    for (Circuit const* c : panel.circuits) {
        if (c->off || c->is_source()) continue;
        if (c->feeds_loads() && depth < kDeepest) {
            add_loads(*c->fed_panel(), found, depth + 1);
        } else if (c->load) {
            found.push_back({c, *c->load});
        } else if (c->measured && !panel.feeds.empty()) {
            found.push_back({c, volts_to_neutral(panel.feeds.front().kind) * *c->measured});
        }
    }
}

// Rounded up to the grain; exact as long as the answer fits.
std::int64_t divided(std::int64_t count, std::int64_t millionths) {
    auto const rest = count % millionths * kWhole;
    return count / millionths * kWhole + (rest + millionths - 1) / millionths;
}

// In whole VA: a load is told as such.
VoltAmperes rounded_up(VoltAmperes load) { return {(load.count + 999) / 1000 * 1000}; }

// What each of its DC panels takes from the circuit, by load of that panel.
std::vector<DcLoad> taken(Circuit const& c) {
    std::vector<DcLoad> all;
    for (Panel const* p : c.supplies_dc) {
        auto const first = all.size();
        add_loads(*p, all);
        for (auto i = first; i < all.size(); ++i) all[i].load.count = divided(all[i].load.count, p->efficiency);
    }
    return all;
}

std::int64_t sum(std::vector<DcLoad> const& all) {
    std::int64_t count = 0;
    for (DcLoad const& one : all) count += one.load.count;
    return count;
}

} // namespace

void resolve_power_supplies(Resolving& r) {
    for (Circuit& c : r.building.circuits) {
        if (c.supplies_dc.empty()) continue;
        // Divided once for each panel, so that nothing is rounded twice.
        std::int64_t count = 0;
        bool known = false;
        for (Panel const* p : c.supplies_dc) {
            std::vector<DcLoad> loads;
            add_loads(*p, loads);
            known = known || !loads.empty();
            count += divided(sum(loads), p->efficiency);
        }
        if (!known) continue; // then its own counts
        c.load = rounded_up({count});
        c.load_in_amperes = false;
        std::erase(c.asked, "load");
    }
}

void share_power_supplies(Resolving const& r, typed::Situation const& said, Situation& situation) {
    for (Circuit const& c : r.building.circuits) {
        if (c.supplies_dc.empty() || said.by_mark.contains(c.mark)) continue;
        auto const loads = taken(c);
        auto const all = sum(loads);
        if (all == 0) continue;
        // Of each a part in millionths of the sum, in doubles: a share is told to six places.
        double part = 0;
        for (DcLoad const& one : loads)
            part += static_cast<double>(one.load.count) * static_cast<double>(situation.share[one.circuit->number]);
        situation.share[c.number] =
            std::min(kWhole, static_cast<std::int64_t>(std::ceil(part / static_cast<double>(all) - 1e-6)));
    }
}

} // namespace legwork
