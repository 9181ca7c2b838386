// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The bare conductor: size by the gauge formula, resistance by table.
#pragma once

#include "codebook/source.h"
#include "units/gauge.h"

#include <optional>
#include <span>

namespace legwork {

// Diameter of a solid wire: 0.005 in x 92^((36 - n) / 39), n = 0, -1, -2, -3 for 1/0 to 4/0 (ASTM B258). Of a stranded
// one: of the solid wire of the same copper.
double diameter_inches(Gauge gauge);
double diameter_mm(Gauge gauge);
double circular_mils(Gauge gauge); // diameter in thousandths of an inch, squared
double area_mm2(Gauge gauge);

enum class Stranding { solid, stranded };

// Direct-current resistance at 75 °C, ohms per 1000 ft, uncoated copper; 0: not in the table.
struct ResistanceRow {
    Gauge gauge;
    double copper_solid, copper_stranded, aluminium_solid, aluminium_stranded;
};
std::span<ResistanceRow const> resistances(); // NEC Chapter 9 Table 8, read on two pages
Reference resistance_reference();

// Ohms per kilometre of one conductor at 75 °C; nothing where the table has none.
std::optional<double> ohms_per_km_75(Gauge gauge, Metal metal, Stranding stranding);
// The same at another temperature: copper R75 x (1 + 0.00323 (t - 75)), aluminium 0.00330 (from memory).
std::optional<double> ohms_per_km(Gauge gauge, Metal metal, Stranding stranding, double celsius);
// How building cable is made: solid up to 10 AWG, stranded from 8 (common practice, seen of one maker).
Stranding usual_stranding(Gauge gauge);

} // namespace legwork
