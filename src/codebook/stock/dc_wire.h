// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Wires of direct current up to 60 V: what fuse they take, what they lose. Nothing of one edition of a code.
#pragma once

#include "codebook/source.h"
#include "units/gauge.h"
#include "units/quantity.h"

#include <optional>

namespace legwork {

// The largest fuse on a copper wire. From 14 AWG on what protects the same wire in a building (the small-wire limits,
// then the 60 °C column, seen); 18 and 16 AWG by 240.4(D)(1) and (2), which who asks finds by edition
// (`dc-fuse/small`); below 18 AWG common practice for the thin wires of strips and bells.
struct DcFuse {
    Amps largest;
    Source source;
    bool same_in_all = true; // else each edition says for itself how the number was come by
};
std::optional<DcFuse> largest_dc_fuse(Gauge gauge); // nothing above 4/0

// Ohms per kilometre of one copper conductor at 75 °C, stranded as cables for direct current are: Chapter 9 Table 8,
// below 18 AWG reckoned from the gauge formula (17.241 nΩm at 20 °C, 0.00393/K, 2 % for the strands).
double dc_ohms_per_km(Gauge gauge);

} // namespace legwork
