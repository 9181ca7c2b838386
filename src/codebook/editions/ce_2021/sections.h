// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where CE 2021 speaks of what a rule asks.
#pragma once

#include "codebook/editions/ce_2018/sections.h"

namespace legwork::ce_2021 {

using namespace how_read;

// Read as CE 2018, but for these.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"wire-branch", "30-104(a)", seen},
    {"panel-bus", "14-606(1)", seen},
    {"wire-breaker-fits/tap", "26-746(3)", seen},
    {"load-service/managed", "8-500", seen},
});
inline constexpr SectionTable kSections = same_as<ce_2018::kSections, kSectionRows>();

} // namespace legwork::ce_2021
