// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where CE 2021 speaks of what a rule asks.
#pragma once

#include "codebook/editions/ce_2018/sections.h"

namespace legwork::ce_2021 {

using namespace how_read;

// As CE 2018 is taken to have it, but for these. Seen: two pages that agree, or one that quotes the regulator; noted:
// the notes that one person made from the book.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"mw-pigtail", "4-030(4)", seen},
    {"mw-open-neutral", "4-030(4)", seen},

    {"tape-white-as-hot", "4-030(1)", noted},
    {"tape-white-as-hot/conduit", "4-030", seen},
    {"tape-white-as-hot/switch-loop", "4-030(2)", seen},
    {"tape-as-neutral", "4-024(4)", seen},
    {"tape-as-neutral/conduit", "4-024(1)", seen},
    {"tape-as-neutral/large", "4-026", seen},
    {"tape-green", "4-032", seen},

    {"wire-breaker-fits/motor", "28-200, Table 29", noted},
    {"wire-breaker-fits/welder", "42-008", noted},
    {"wire-breaker-fits/nameplate", "28-106, 28-200", practice},
    {"wire-breaker-fits/dwelling-feeder", silent, noted},
    {"wire-continuous/feeder", "8-104, 28-108", seen},
    {"wire-conductors/four-wire", "26-744(2), (4)", noted},
    {"wire-breaker-size", "14-104(1)(a), Table 13", seen},
    {"wire-outlet-count", "8-304(1)", seen},
    {"wire-outlet/amperes", "26-700(2)", seen},
    {"wire-outlet/single", "26-700(2)", seen},
    {"wire-outlet/no-ground", "26-702", noted},

    {"panel-spare-spaces", "8-108(1)", seen},
    {"panel-spare-spaces/left", "8-108(2)", seen},
    {"panel-sign/several-sources", "14-414(1)(b), (3)", noted},
    {"panel-sub-neutral", "10-210(d)", noted},

    {"need-kitchen", "26-656(d)", seen},
    {"need-kitchen/split", "26-722(d)(iii)", seen},
    {"need-kitchen-share", "26-656(d)", seen},
    {"need-laundry", "26-654(b), 26-720(e)", noted},
    {"need-laundry/utility", "26-654(c)", noted},
    {"need-garage", "26-656(h), 26-724(b), (c)", noted},
    {"need-outdoor", "26-656(g), 26-724(a)", noted},
    {"need-dedicated/central-heating", "26-806", noted},
    {"need-dedicated/vehicle-charger", "86-300, 26-654(f)", seen},
    {"need-dedicated/refrigerator", "26-654(a)", noted},
    {"need-dedicated/microwave", "26-654(d)", noted},
    {"need-dedicated/central-vacuum", "26-654(e)", seen},
    {"need-dedicated/heating", "62-110", noted},
    {"need-dedicated/cooking", "26-746(1)", noted},
    {"gfci-needed/vehicle-charger", "86-306(2)", seen},
    {"afci-needed", "26-658", seen},
    {"need-neutral-at-switch", "4-022(2)", seen},

    {"load-service/never-together", "8-106(2), (3)", seen},
    {"load-service/motor", "28-108", noted},
    {"load-service/managed", "8-106(10), (11), 8-500", seen},
    {"load-service/measured", "8-106(8)", seen},
    {"load-service/presumed", "8-104(3)", seen},
    {"load-service/listed", "8-210", seen},
    {"load-service/outlets", "8-210", seen},
    {"load-service/size", "Table 13", noted},
    {"load-service/dwelling-wire", silent, noted},

    {"wire-branch", "30-104(a)", seen},
    {"panel-bus", "14-606(1)", seen},
    {"wire-breaker-fits/tap", "26-746(3)", seen},
});
inline constexpr SectionTable kSections = same_as<ce_2018::kSections, kSectionRows>();

} // namespace legwork::ce_2021
