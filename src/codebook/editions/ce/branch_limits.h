// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a branch circuit may feed as the CE Code has it: rule 30-104(a), as two public pages tell it. Receptacles go by
// their rating alone (26-700, 14-600: wire-outlet).
#pragma once

#include "codebook/branch_limits.h"

namespace legwork::ce {

constexpr BranchLimits branch_limits(Source read) {
    return {.lights = Figure{15, read}, .receptacles = {}, .heavy_duty_above = {}, .small = {}, .tap = {}};
}
inline constexpr BranchLimits kBranchLimits = branch_limits(Source::memory); // 2018, 2024
inline constexpr BranchLimits kBranchLimits2021 = branch_limits(Source::seen);

} // namespace legwork::ce
