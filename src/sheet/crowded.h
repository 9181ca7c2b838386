// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Whether a form is too small for what was composed on it, and what would do.
#pragma once

#include "page/page.h"
#include "page/text_width.h"
#include "sheet/sheets.h"

#include <optional>
#include <string>

namespace legwork {

// What stands over something else, or past the page's edge: "\"K1\" stands over \"7\"". Empty for a good page.
std::string crowded(Page const& page, TextWidth const& widths);

// The form with the least page from its own upwards, in steps of 10 mm, on which nothing of this sheet is crowded.
// Nothing where no page that a form may have does, and of labels, which no page makes larger.
std::optional<Form> uncrowded(SheetInput const& input, SheetKind const& kind, Form const& form);

} // namespace legwork
