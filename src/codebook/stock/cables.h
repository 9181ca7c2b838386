// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Cable kinds as they are made. One table; G/N kinds (12/3) are worked out from the gauge and the count.
#pragma once

#include "codebook/source.h"
#include "codebook/stock/colors.h"
#include "units/gauge.h"
#include "units/power_cable.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct CableKind {
    std::string name;              // "12/3", "cat6"
    std::optional<Gauge> gauge;    // null for coax
    int insulated = 0;             // conductors besides the ground
    std::vector<WireColor> colors; // of the insulated conductors as made, common practice; empty for coax
    bool ground = false;
    bool power = false;                 // AC power cable (G/N, G/N TYPE)
    CableType type = CableType::indoor; // of a power cable
    std::string jacket;                 // usual jacket colour, common practice; empty when there is none
};

// A G/N kind, plain or with its type ("12/3 UF"), or one of the named ones; nothing for any other text. G/N splits at
// the last "/": "1/0/3".
std::optional<CableKind> cable_kind(std::string_view name);
// The same as one of all kinds that there are, each in its place for good; null for any other text.
CableKind const* cable_kind_named(std::string_view name);
std::vector<std::string> named_cable_kinds(); // cat5e, cat6, coax, lighting-strip and thermostat cables, ...

} // namespace legwork
