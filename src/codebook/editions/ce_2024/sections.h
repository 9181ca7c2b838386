// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where CE 2024 speaks of what a rule asks.
#pragma once

#include "codebook/editions/ce_2021/sections.h"

namespace legwork::ce_2024 {

using namespace how_read;

// As CE 2021, but for these: its numbers that were seen there only are from memory here, and what a page of 2024 shows
// by its heading alone is named by that.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"mw-pigtail", "4-030(4)", seen, FromMemory::the_number},
    {"mw-open-neutral", "4-030(4)", seen, FromMemory::the_number},

    {"tape-white-as-hot", "4-030", noted},
    {"tape-white-as-hot/switch-loop", "4-030", seen},
    {"tape-as-neutral", "4-024", seen},
    {"tape-as-neutral/conduit", "4-024", seen},

    {"wire-breaker-fits/motor", "Table 29", noted},
    {"wire-breaker-fits/welder", "42-008", memory, FromMemory::the_number},
    {"wire-breaker-fits/nameplate", "28-106, 28-200", practice, FromMemory::all_numbers},
    {"wire-breaker-fits/dwelling-feeder", silent, seen},
    {"wire-continuous/feeder", "8-104, 28-108", seen, FromMemory::second_number},
    {"wire-conductors/four-wire", "26-744(2), (4)", memory, FromMemory::the_number},
    {"wire-outlet/amperes", "26-700(2)", seen, FromMemory::the_number},
    {"wire-outlet/single", "26-700(2)", seen, FromMemory::the_number},
    {"wire-outlet/no-ground", "26-702", memory, FromMemory::the_number},

    {"panel-backfeed", "64-112(4)(c), (d)", seen},
    {"wire-branch", "30-104(a)", memory},
    {"wire-breaker-fits/tap", "26-746(3)", memory},
    {"panel-bus", "14-606(1)", memory},
    {"panel-sign/calculated-load", "2-100", memory, FromMemory::the_number},
    {"panel-sign/several-sources", "14-414(1)(b), (3)", memory, FromMemory::the_number},
    {"panel-sub-neutral", "10-210(d)", memory, FromMemory::the_number},

    {"need-kitchen", "26-656(d)", seen, FromMemory::the_number},
    {"need-kitchen-share", "26-656(d)", seen, FromMemory::the_number},
    {"need-laundry", "26-654(b), 26-720(e)", memory, FromMemory::all_numbers},
    {"need-laundry/utility", "26-654(c)", memory, FromMemory::the_number},
    {"need-garage", "26-656(h), 26-724(b), (c)", memory, FromMemory::all_numbers},
    {"need-outdoor", "26-656(g), 26-724(a)", memory, FromMemory::all_numbers},
    {"need-dedicated/central-heating", "26-806", memory, FromMemory::the_number},
    {"need-dedicated/vehicle-charger", "86-300, 26-654(f)", memory, FromMemory::all_numbers},
    {"need-dedicated/refrigerator", "26-654(a)", memory, FromMemory::the_number},
    {"need-dedicated/microwave", "26-654(d)", memory, FromMemory::the_number},
    {"need-dedicated/central-vacuum", "26-654(e)", seen, FromMemory::the_number},
    {"need-dedicated/heating", "62-110", memory, FromMemory::the_number},
    {"need-dedicated/cooking", "26-746(1)", memory, FromMemory::the_number},
    {"gfci-needed/vehicle-charger", "86-306(2)", memory, FromMemory::the_number},
    {"need-neutral-at-switch", "4-022", seen},

    {"load-service/motor", "28-108", memory, FromMemory::the_number},
    {"load-service/dwelling-wire", silent, seen},
});
inline constexpr SectionTable kSections = same_as<ce_2021::kSections, kSectionRows>();

} // namespace legwork::ce_2024
