// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Says: say silent or unread instead
#include "codebook/sections.h"

using namespace legwork;
constexpr SectionRow kRow{"mw-grouping", "", Source::seen};
