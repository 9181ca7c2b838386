// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What stands above and below the lines of the directory: what feeds the panel and what kills it, leg totals,
// abbreviations.
#pragma once

#include "sheet/directory_entries.h"

#include <string>
#include <vector>

namespace legwork {

// Of a list, in no language yet: ListRow in words.
struct PhraseRow {
    Phrase lead, words;
};

// Ways into this panel, one a row, worded so that it is true whatever stands between: "Grid" | "120/240 V, 60 A, from
// Meter, north wall. Off: main 60 A in this panel; the wires up to it stay live."
std::vector<PhraseRow> source_rows(DirectoryInput const& input, Panel const& panel);

// What a person must switch off before a source is used, source by source.
std::vector<PhraseRow> off_by_hand_rows(DirectoryInput const& input, Panel const& panel);

// "Loads in VA: connected A 7320, B 7080, 240 apart; ..."; empty when there is no load to speak of.
Phrase leg_totals(PanelPlan const* plan, bool two_legs);

// What the abbreviations on this directory mean; only those that it uses.
Phrase abbreviations(PanelEntries const& entries, bool shows_legs);

} // namespace legwork
