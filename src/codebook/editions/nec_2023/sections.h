// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where NEC 2023 speaks of what a rule asks.
#pragma once

#include "codebook/editions/nec_2020/sections.h"

namespace legwork::nec_2023 {

using namespace how_read;

// Read as NEC 2020, but for these.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"wire-load-fits", "210.19(A), 210.20(A)", seen},
    {"wire-load-fits/large-range", "210.19(C)", seen},
    {"wire-continuous", "210.19(A), 210.20(A)", seen},

    {"wire-branch", "210.21(A), 210.23, Table 210.24(1)", seen},
    {"wire-branch/small", "210.18, 210.23(A)", seen},
    {"wire-breaker-fits/tap", "210.19(C) Exception No. 1", seen},

    {"panel-backfeed", "705.12(B)(2)", seen},
    {"panel-sign/emergency-disconnect", "230.85(E)", memory},
    {"panel-sign/far-source", "705.12(B)(2)", seen},

    {"gfci-needed/sink", "210.8(A)(8)", seen},
    {"gfci-needed/boathouse", "210.8(A)(9)", seen},
    {"gfci-needed/laundry", "210.8(A)(11)", seen},
    {"gfci-needed/appliance", "210.8(D)", memory},
    {"afci-needed", "210.12(B)", seen},

    {"need-disconnect", "422.31", seen},
    {"need-disconnect/cooling", "440.14", seen},

    {"load-service/floor-area", "220.41", seen},
    {"load-service/lighting-demand", "Table 220.45", seen},
    {"load-service/vehicle", "220.57", seen},
    {"load-service/managed", "220.70", memory, FromMemory::the_number},
    {"load-service/outlets", "220.14(I), 220.47", memory, FromMemory::all_numbers},
});
inline constexpr SectionTable kSections = same_as<nec_2020::kSections, kSectionRows>();

} // namespace legwork::nec_2023
