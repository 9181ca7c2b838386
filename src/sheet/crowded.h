// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Whether a form is too small for what was composed on it.
#pragma once

#include "page/page.h"
#include "page/text_width.h"

#include <string>

namespace legwork {

// What stands over something else, or past the page's edge: "\"K1\" stands over \"7\"". Empty for a good page.
std::string crowded(Page const& page, TextWidth const& widths);

} // namespace legwork
