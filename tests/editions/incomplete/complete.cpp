// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Builds: what the others break is whole here.
#include "codebook/editions/checked_edition.h"
#include "editions/made_up.h"

using namespace legwork;
constexpr auto kRows = nec_2017::kSectionRows;
constexpr SectionTable kSections = whole<kRows>();
constexpr CodeBook kBook = made_up::as_nec_2023("NEC 2999", nec_2023::kSections, nec_2023::kAfci);
constexpr CodeBook const* kChecked = checked<kBook>();
constexpr Figure kFigure{80, Source::seen};
