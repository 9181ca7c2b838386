// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "toml/table_reader.h"

namespace legwork {

// `kind` of a [[supply]], `supply` of a panel.
inline std::optional<SupplyKind> read_supply_kind(TableReader& t, std::string_view key) {
    return t.choice(key, {SupplyKind::split_120_240, SupplyKind::wye_120_208, SupplyKind::bridged_120,
                          SupplyKind::one_leg_120, SupplyKind::dc_12, SupplyKind::dc_24, SupplyKind::dc_48});
}

// `leg` beside a supply of 120 V on one leg: A when not said.
inline Leg read_leg(TableReader& t, std::optional<SupplyKind> kind) {
    if (kind && *kind != SupplyKind::one_leg_120 && t.has("leg"))
        t.complain("leg", "only a supply of \"120 on one leg\" has a leg", "take  leg  away");
    return t.choice("leg", {Leg::a, Leg::b}).value_or(Leg::a);
}

constexpr bool is_direct_current(SupplyKind kind) { return kind >= SupplyKind::dc_12; }

} // namespace legwork
