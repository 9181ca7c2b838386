// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder sheet/: what is hung in the panel's door, stuck on cables and taken along. A sheet takes what the
// building, the plan, the rules and the reckoning say and a form (form.h: paper and margins), and composes pages of
// plain marks. It judges nothing: what it cannot say in the room there is, a rule tells.
//
// All sheets, by name. A new sheet is one file and one row.
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "codebook/code_book.h"
#include "page/page.h"
#include "page/text_width.h"
#include "rules/directory/printed.h"
#include "sheet/form.h"

#include <span>
#include <string_view>
#include <vector>

namespace legwork {

struct SheetInput {
    Building const& building;
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

// How the job's words stand on the sheets, for the rules that ask: which names the directory's form takes whole, and
// which letters no face has.
Printed printed_words(Building const& building, Plan const& plan, Form const& directory, TextWidth const& widths);

} // namespace legwork
