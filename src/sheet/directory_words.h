// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What stands above and below the lines of the directory: what feeds the panel and what kills it, leg totals,
// abbreviations.
#pragma once

#include "sheet/directory_entries.h"
#include "sheet/directory_list.h"

#include <string>
#include <vector>

namespace legwork {

// Ways into this panel, one a row, worded so that it is true whatever stands between: "Grid" | "120/240 V, 60 A, from
// Meter, north wall. Off: main 60 A in this panel; the wires up to it stay live."
std::vector<ListRow> source_rows(DirectoryInput const& input, Panel const& panel);

// What a person must switch off before a source is used, source by source.
std::vector<ListRow> off_by_hand_rows(DirectoryInput const& input, Panel const& panel);

// "Loads in VA: connected A 7320, B 7080, 240 apart; ..."; empty when there is no load to speak of.
std::string leg_totals(PanelPlan const* plan, bool two_legs);

// What the abbreviations on this directory mean; only those that it uses.
std::string abbreviations(PanelEntries const& entries, bool shows_legs);

} // namespace legwork
