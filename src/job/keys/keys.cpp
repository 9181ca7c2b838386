// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/keys/keys.h"

#include "job/keys/accept.h"
#include "job/keys/box.h"
#include "job/keys/cable.h"
#include "job/keys/circuit.h"
#include "job/keys/dwelling.h"
#include "job/keys/job.h"
#include "job/keys/panel.h"
#include "job/keys/situation.h"
#include "job/keys/supply.h"

namespace legwork {

namespace {

constexpr int kMostCircuits = 400, kMostPanels = 20, kMostSituations = 16;

constexpr Key one(KeyTable const& table, bool needed = false) {
    return {.name = table.name,
            .takes = Takes::table,
            .example = "{ ... }",
            .help = table.help,
            .needed = needed,
            .table = &table};
}

constexpr Key several(KeyTable const& table, int most, bool needed = false) {
    return {.name = table.name,
            .takes = Takes::tables,
            .example = "[{ ... }]",
            .help = table.help,
            .most = most,
            .needed = needed,
            .table = &table};
}

constexpr std::array kTables{
    one(kJobTable, true),
    one(kDwellingTable),
    several(kSupplyTable, kMostPanels),
    several(kPanelTable, kMostPanels, true),
    several(kCircuitTable, kMostCircuits),
    several(kSituationTable, kMostSituations),
    several(kCableTable, kMostCircuits),
    several(kBoxTable, kMostCircuits),
    several(kAcceptTable, kMostCircuits),
};

} // namespace

constexpr KeyTable kJobFileKeys{"", "the file", "One building: its panels and circuits", kTables};

} // namespace legwork
