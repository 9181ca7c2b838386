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
ReceptacleScope const& gfci_scope(CodeBook const& book);
std::span<GfciRow const> gfci_rows(CodeBook const& book);

struct SwitchTable {
    RoomPlaces rooms;    // whose lights it is asked of; empty: every control location
    bool lighting_only;  // a switch for receptacles is let off
    bool not_in_conduit; // a raceway takes another wire later
};
SwitchTable const& switch_table(CodeBook const& book);

} // namespace legwork
