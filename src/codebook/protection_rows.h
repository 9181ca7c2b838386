// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tables behind protection.h.
#pragma once

#include "codebook/protection.h"

namespace legwork {

// Which receptacles the ground-fault rows speak of.
struct ReceptacleScope {
    bool two_pole;            // 240 V ones too (150 V or less to ground)
    std::optional<Amps> most; // largest rating; nothing: any
};
struct GfciTable {
    ReceptacleScope scope;
    std::span<GfciRow const> rows;
};
inline ReceptacleScope const& gfci_scope(CodeBook const& book) { return book.gfci.scope; }
inline std::span<GfciRow const> gfci_rows(CodeBook const& book) { return book.gfci.rows; }

struct SwitchTable {
    RoomPlaces rooms;    // whose lights it is asked of; empty: every control location
    bool lighting_only;  // a switch for receptacles is let off
    bool not_in_conduit; // a raceway takes another wire later
};
inline SwitchTable const& switch_table(CodeBook const& book) { return book.switches.table(); }

} // namespace legwork
