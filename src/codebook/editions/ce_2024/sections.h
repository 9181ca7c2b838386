// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where CE 2024 speaks of what a rule asks.
#pragma once

#include "codebook/editions/ce_2021/sections.h"

namespace legwork::ce_2024 {

using namespace how_read;

// Read as CE 2021, but for these.
inline constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"wire-branch", "30-104(a)", memory},
    {"wire-breaker-fits/tap", "26-746(3)", memory},
    {"panel-bus", "14-606(1)", memory},
    {"panel-sign/calculated-load", "2-100", memory, FromMemory::the_number},
});
inline constexpr SectionTable kSections = same_as<ce_2021::kSections, kSectionRows>();

} // namespace legwork::ce_2024
