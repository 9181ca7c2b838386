// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/session.h"
#include "sheet/sheets.h"

namespace fuzz {

// Composes a sheet of the job on the form and draws it in memory. Promised: whole PDFs, well-formed SVGs.
void draw_sheet(legwork::Session const& session, legwork::SheetKind const& kind, legwork::Form const& form);

} // namespace fuzz
