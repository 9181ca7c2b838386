// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "units/gauge.h"

#include <array>
#include <optional>
#include <string_view>

namespace legwork {

// Where a cable runs, as a job says it.
enum class WirePlace { unsaid, dry, damp, wet, outdoors, buried };

// What a building cable is made for. Of the plain kind (G/N, no word behind it) the sheathed cable that a country wires
// its dry rooms with: NM-B, NMD90.
enum class CableType { indoor, uf, nmwu, armoured, metal_clad, teck };

struct CableTypeName {
    CableType type;
    std::string_view name; // as typed behind G/N
};
inline constexpr std::array kCableTypes{
    CableTypeName{CableType::uf, "UF"},       CableTypeName{CableType::nmwu, "NMWU"},
    CableTypeName{CableType::armoured, "AC"}, CableTypeName{CableType::metal_clad, "MC"},
    CableTypeName{CableType::teck, "TECK"},
};

// A building cable by its name, G/N or G/N TYPE: wire size and insulated conductors besides the ground.
struct PowerCable {
    Gauge gauge; // 14 and larger
    int insulated = 0;
    CableType type = CableType::indoor;
};

// "12/3", "1/0/3" (split at the last "/"), "12/3 UF": 2 to 4 conductors of a gauge that branch and feeder cables are
// made in; nothing for any other text.
constexpr std::optional<PowerCable> power_cable(std::string_view name) {
    auto type = CableType::indoor;
    for (auto const& known : kCableTypes) {
        if (name.size() <= known.name.size() + 1 || !name.ends_with(known.name)) continue;
        if (name[name.size() - known.name.size() - 1] != ' ') continue;
        name.remove_suffix(known.name.size() + 1);
        type = known.type;
        break;
    }
    auto const slash = name.rfind('/');
    if (slash == std::string_view::npos) return std::nullopt;
    auto const gauge = gauge_named(name.substr(0, slash));
    auto const count = name.substr(slash + 1);
    if (!gauge || *gauge < Gauge::awg14 || count.size() != 1 || count[0] < '2' || count[0] > '4') return std::nullopt;
    return PowerCable{*gauge, count[0] - '0', type};
}

// "UF"; empty for the plain kind.
constexpr std::string_view type_name(CableType type) {
    for (auto const& known : kCableTypes)
        if (known.type == type) return known.name;
    return {};
}

static_assert(power_cable("1/0/3")->insulated == 3 && !power_cable("16/4") && !power_cable("12/5"));
static_assert(power_cable("12/3 UF")->type == CableType::uf && !power_cable("12/3UF") && !power_cable("UF"));

} // namespace legwork
