// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/wire_data.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace legwork {

namespace {
constexpr std::array kResistances{
    ResistanceRow{Gauge::awg18, 7.77, 7.95, 12.8, 0},    ResistanceRow{Gauge::awg16, 4.89, 4.99, 8.05, 0},
    ResistanceRow{Gauge::awg14, 3.07, 3.14, 5.06, 0},    ResistanceRow{Gauge::awg12, 1.93, 1.98, 3.18, 0},
    ResistanceRow{Gauge::awg10, 1.21, 1.24, 2.00, 2.04}, ResistanceRow{Gauge::awg8, 0.764, 0.778, 1.26, 1.28},
    ResistanceRow{Gauge::awg6, 0, 0.491, 0, 0.808},      ResistanceRow{Gauge::awg4, 0, 0.308, 0, 0.508},
    ResistanceRow{Gauge::awg3, 0, 0.245, 0, 0.403},      ResistanceRow{Gauge::awg2, 0, 0.194, 0, 0.319},
    ResistanceRow{Gauge::awg1, 0, 0.154, 0, 0.253},      ResistanceRow{Gauge::awg1_0, 0, 0.122, 0, 0.201},
    ResistanceRow{Gauge::awg2_0, 0, 0.0967, 0, 0.159},   ResistanceRow{Gauge::awg3_0, 0, 0.0766, 0, 0.126},
    ResistanceRow{Gauge::awg4_0, 0, 0.0608, 0, 0.100},
};
constexpr double kKilometresPerThousandFeet = 0.3048;
} // namespace

double diameter_inches(Gauge gauge) { return 0.005 * std::pow(92.0, (36.0 - awg_number(gauge)) / 39.0); }
double diameter_mm(Gauge gauge) { return diameter_inches(gauge) * 25.4; }
double circular_mils(Gauge gauge) { return std::pow(diameter_inches(gauge) * 1000.0, 2); }
double area_mm2(Gauge gauge) { return std::numbers::pi / 4.0 * std::pow(diameter_mm(gauge), 2); }

std::span<ResistanceRow const> resistances() { return kResistances; }
Reference resistance_reference() { return {"NEC", "Chapter 9 Table 8", Source::seen}; }

std::optional<double> ohms_per_km_75(Gauge gauge, Metal metal, Stranding stranding) {
    auto const row = std::ranges::find(kResistances, gauge, &ResistanceRow::gauge);
    if (row == kResistances.end()) return std::nullopt;
    bool const solid = stranding == Stranding::solid;
    double const ohms = metal == Metal::copper ? (solid ? row->copper_solid : row->copper_stranded)
                                               : (solid ? row->aluminium_solid : row->aluminium_stranded);
    if (ohms == 0) return std::nullopt;
    return ohms / kKilometresPerThousandFeet;
}

std::optional<double> ohms_per_km(Gauge gauge, Metal metal, Stranding stranding, double celsius) {
    auto const at_75 = ohms_per_km_75(gauge, metal, stranding);
    if (!at_75) return std::nullopt;
    return *at_75 * (1.0 + (metal == Metal::copper ? 0.00323 : 0.00330) * (celsius - 75.0));
}

Stranding usual_stranding(Gauge gauge) { return gauge <= Gauge::awg10 ? Stranding::solid : Stranding::stranded; }

} // namespace legwork
