// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: a row of an edition has a topic that no code is asked about
// Says: mw-groupings
#include "codebook/editions/nec_2023/sections.h"

using namespace legwork;
using namespace how_read;
constexpr auto kRows = std::to_array<SectionRow>({{"mw-groupings", "200.4(B)", seen}});
constexpr SectionTable kSections = unread_but<kRows>();
