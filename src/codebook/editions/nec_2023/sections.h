// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where NEC 2023 speaks of what a rule asks.
#pragma once

#include "codebook/editions/nec_2020/sections.h"

namespace legwork::nec_2023 {

using namespace how_read;

// Read as NEC 2020, but for these. A row stands here too where the section is as in 2020 and was not seen, or not as
// surely, in this edition.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"wire-breaker-fits/motor", "Table 430.52(C)(1)", noted},
    {"wire-breaker-fits/welder", "630.12", noted},
    {"wire-breaker-fits/nameplate", "440.22(A), 440.32", seen},
    {"wire-load-fits", "210.19(A), 210.20(A)", seen},
    {"wire-load-fits/large-range", "210.19(C)", seen},
    {"wire-continuous", "210.19(A), 210.20(A)", seen},
    {"wire-conductors/four-wire", "250.140(B)", seen},
    {"wire-outlet/no-ground", "406.4(A)", noted},

    {"wire-branch", "210.21(A), 210.23, Table 210.24(1)", seen},
    {"wire-branch/small", "210.18, 210.23(A)", seen},
    {"wire-breaker-fits/tap", "210.19(C) Exception No. 1", seen},

    {"panel-backfeed", "705.12(B)(2)", seen},
    {"panel-sign/emergency-disconnect", "230.85(E)", seen},
    {"panel-sign/feeder-emergency-disconnect", "225.41", seen},
    {"panel-sign/far-source", "705.12(B)(2)", seen},
    {"panel-sub-neutral", "250.142(B)", seen},

    {"need-kitchen-share", "210.52(B)(2)", seen},
    {"gfci-needed/elsewhere", "210.8(B)", noted},
    {"gfci-needed/sink", "210.8(A)(8)", seen},
    {"gfci-needed/boathouse", "210.8(A)(9)", seen},
    {"gfci-needed/laundry", "210.8(A)(11)", seen},
    {"gfci-needed/appliance", "210.8(D)", noted},
    {"gfci-needed/vehicle-charger", "625.54", noted},
    {"gfci-needed/hot-tub", "680.44", noted},
    {"gfci-needed/hydromassage", "680.71", memory},
    {"need-dedicated/hydromassage", "680.71", memory},
    {"afci-needed", "210.12(B)", seen},

    {"need-disconnect", "422.31", seen},
    {"need-disconnect/cooling", "440.14", seen},

    {"dc-fuse/small", "240.4(D)(1), (2)", seen},
    {"load-service", "220.40, 230.42", seen},
    {"load-service/floor-area", "220.41", seen},
    {"load-service/lighting-demand", "Table 220.45", seen},
    {"load-service/vehicle", "220.57", seen},
    {"load-service/managed", "220.70", seen},
    {"load-service/neutral-wye", "220.61(C)(1)", noted},
    {"load-service/listed", "220.40", seen},
    {"load-service/outlets", "220.14(I), 220.47", noted},
});
inline constexpr SectionTable kSections = same_as<nec_2020::kSections, kSectionRows>();

} // namespace legwork::nec_2023
