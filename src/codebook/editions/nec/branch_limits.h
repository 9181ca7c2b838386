// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a branch circuit may feed as the NEC has it: 210.21(A), 210.23 and Table 210.24, as a public summary of the
// branch circuit requirements (up.codes) has them; the 10 A circuit of 2023 (210.18) as two trade pages do. Taps to
// cooking appliances: settled, 50 A is the wording of 2017.
#pragma once

#include "codebook/branch_limits.h"

namespace legwork::nec {

using namespace how_read;

constexpr BranchLimits branch_limits(bool exactly, std::optional<Figure> small) {
    return {.lights = Figure{20, seen},
            .receptacles = Figure{20, seen},
            .heavy_duty_above = Figure{20, seen},
            .small = small,
            .tap = {.least = Figure{20, seen}, .breaker = Figure{50, seen}, .exactly = exactly}};
}
inline constexpr BranchLimits kBranchLimits2017 = branch_limits(true, std::nullopt);
inline constexpr BranchLimits kBranchLimits2020 = branch_limits(false, std::nullopt);
inline constexpr BranchLimits kBranchLimits2023 = branch_limits(false, Figure{10, seen});

} // namespace legwork::nec
