// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// All sheets, by name. A new sheet is one file and one row.
#pragma once

#include "balance/plan.h"
#include "check/finding.h"
#include "codebook/code_book.h"
#include "job/job.h"
#include "page/page.h"
#include "page/text_width.h"
#include "sheet/form.h"

#include <span>
#include <string_view>
#include <vector>

namespace legwork {

struct SheetInput {
    typed::Job const& job;
    Plan const& plan;         // as filed
    Findings const& findings; // all of them, the sheets' own included
    CodeBook const& book;
    TextWidth const& widths;
    std::string file; // the job file's name as the person typed it, for "how to reprint"
};

struct SheetKind {
    std::string_view name;         // "directory"
    std::string_view default_form; // "directory-letter"
    // A sheet for each panel, or one for the whole job. Deterministic: same input, same marks.
    std::vector<Sheet> (*compose)(SheetInput const&, Form const&);
};

std::span<SheetKind const> sheet_kinds();
SheetKind const* sheet_kind(std::string_view name); // null when there is none

// What only the sheets can tell: names too long for the directory's form (dir-name-too-long), letters that no face
// has (dir-no-letter).
Findings sheet_findings(typed::Job const& job, Plan const& plan, Form const& directory, TextWidth const& widths);

} // namespace legwork
