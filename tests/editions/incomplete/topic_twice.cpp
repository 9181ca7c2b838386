// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: an edition has two rows for one topic
// Says: mw-grouping
#include "codebook/editions/nec_2023/sections.h"

using namespace legwork;
using namespace how_read;
constexpr auto kRows = std::to_array<SectionRow>({{"mw-grouping", "200.4(B)", seen}, {"mw-grouping", unread}});
constexpr SectionTable kSections = same_as<nec_2023::kSections, kRows>();
