// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where NEC 2020 speaks of what a rule asks.
#pragma once

#include "codebook/editions/nec_2017/sections.h"

namespace legwork::nec_2020 {

using namespace how_read;

// Read as NEC 2017, but for these. A row stands here too where the section is as in 2017 and was not seen, or not as
// surely, in this edition.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"mw-neutral-current", "240.4, Table 310.16", seen},

    {"wire-breaker-fits/large", "240.4, Table 310.16", seen},
    {"wire-breaker-fits/cable", "334.80, 240.4, Table 310.16", seen},
    {"wire-breaker-fits/nameplate", "440.22(A), 440.32", practice, FromMemory::second_number},
    {"wire-breaker-fits/aluminium", "310.3(A)", seen},
    {"wire-breaker-fits/dwelling-feeder", "310.12", seen},
    {"wire-breaker-fits/dwelling-sheathed", "310.12, 334.80", seen},
    {"wire-continuous/heating", "424.4(B)", seen},
    {"wire-conductors/four-wire", "250.140 Exception", noted},

    {"panel-backfeed", "705.12(B)(3)(2)", seen},
    {"panel-sign/emergency-disconnect", "230.85", seen},
    {"panel-sign/several-sources", "702.7(A)", memory},
    {"panel-sign/generator-inlet", "702.7(C)", noted},
    {"panel-sign/single-120-volt", "710.15(C)", noted},
    {"panel-sign/far-source", "705.12(B)(3)(2)", seen},

    {"need-outdoor", "210.52(E)(1)", seen},
    {"gfci-needed/elsewhere", "210.8(B)", memory},
    {"gfci-needed/outdoor-outlets", "210.8(F)", seen},
    {"gfci-needed/appliance", "210.8(D), 422.5(A)", seen},
    {"gfci-needed/crawl-space-lights", "210.8(C)", noted},
    {"gfci-needed/boat-hoist", "555.9", seen},

    // Of rules that are explained and not checked yet.
    {"box-full", "314.16(B)(1)", seen},
    {"run-bundle", "310.15(C)(1), 334.80", seen},
    {"dc-fuse/small", "240.4(D)(1), (2)", memory},

    {"load-service/floor-area", "220.14(J)", seen},
    {"load-service/managed", "750.30", noted},
    {"load-service/neutral-wye", "220.61(C)(1)", seen},
    {"load-service/wire", "Table 310.16", seen},
    {"load-service/dwelling-wire", "310.12", seen},
});
inline constexpr SectionTable kSections = same_as<nec_2017::kSections, kSectionRows>();

} // namespace legwork::nec_2020
