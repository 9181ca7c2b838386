// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/drop.h"

#include "codebook/stock/wire_data.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace legwork {

std::optional<double> one_way_ohms(std::span<DropPiece const> pieces, double celsius) {
    double sum = 0;
    for (DropPiece const& p : pieces) {
        auto const per_km = ohms_per_km(p.gauge, p.metal, usual_stranding(p.gauge), celsius);
        if (!per_km) return std::nullopt;
        sum += *per_km * metres(p.length) / 1000;
    }
    return sum;
}

LegDrops three_wire_drop(double leg_a_amperes, double leg_b_amperes, int phase_degrees, double ohms) {
    double const a = leg_a_amperes, b = leg_b_amperes;
    double const in_line = std::cos(phase_degrees * std::numbers::pi / 180.0); // of the other leg's current
    return {ohms * (2 * a + b * in_line), ohms * (2 * b + a * in_line), ohms * (a + b)};
}

std::optional<Gauge> gauge_within(std::span<DropPiece const> pieces, double most_ohms, double celsius) {
    for (GaugeName const& g : kGauges) {
        std::vector<DropPiece> larger(pieces.begin(), pieces.end());
        for (DropPiece& p : larger) p.gauge = std::max(p.gauge, g.gauge);
        auto const ohms = one_way_ohms(larger, celsius);
        if (ohms && *ohms <= most_ohms) return g.gauge;
    }
    return std::nullopt;
}

} // namespace legwork
