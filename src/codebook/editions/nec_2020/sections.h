// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where NEC 2020 speaks of what a rule asks.
#pragma once

#include "codebook/editions/nec_2017/sections.h"

namespace legwork::nec_2020 {

using namespace how_read;

// Read as NEC 2017, but for these.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"mw-neutral-current", "240.4, Table 310.16", seen},

    {"wire-breaker-fits/large", "240.4, Table 310.16", seen},
    {"wire-breaker-fits/cable", "334.80, 240.4, Table 310.16", seen},
    {"wire-breaker-fits/aluminium", "310.3(A)", seen},
    {"wire-breaker-fits/dwelling-feeder", "310.12", seen},
    {"wire-breaker-fits/dwelling-sheathed", "310.12, 334.80", seen},
    {"wire-continuous/heating", "424.4(B)", seen, FromMemory::the_number},

    {"panel-backfeed", "705.12(B)(3)(2)", seen},
    {"panel-sign/emergency-disconnect", "230.85", memory},
    {"panel-sign/far-source", "705.12(B)(3)(2)", seen},

    {"gfci-needed/outdoor-outlets", "210.8(F)", seen},
    {"gfci-needed/appliance", "210.8(D), 422.5(A)", memory},
    {"gfci-needed/crawl-space-lights", "210.8(C)", memory, FromMemory::the_number},
    {"gfci-needed/boat-hoist", "555.9", memory, FromMemory::the_number},

    // Of rules that are explained and not checked yet.
    {"box-full", "314.16(B)(1)", seen},
    {"run-bundle", "310.15(C)(1), 334.80", seen},

    {"load-service/floor-area", "220.14(J)", seen},
    {"load-service/wire", "Table 310.16", seen},
    {"load-service/dwelling-wire", "310.12", seen},
});
inline constexpr SectionTable kSections = same_as<nec_2017::kSections, kSectionRows>();

} // namespace legwork::nec_2020
