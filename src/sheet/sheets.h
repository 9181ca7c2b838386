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
#include "words/catalogue.h"

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
    std::string file;                       // the job file's name as the person typed it, for "how to reprint"
    Catalogue const& catalogue = english(); // what the sheet speaks
    std::string words(Phrase const& phrase) const { return catalogue.words(phrase); } // words/phrase.h
    SheetInput in(Catalogue const& language) const { return {building, plan, findings, book, widths, file, language}; }
};

struct SheetKind {
    std::string_view name;         // "directory"
    std::string_view default_form; // "directory-letter"
    // A sheet for each panel, or one for the whole job. Deterministic: same input, same marks.
    std::vector<Sheet> (*compose)(SheetInput const&, Form const&);
    // How names stand on it; null where every word is shown whole, on as many lines as it takes.
    std::vector<Printed::Name> (*names)(SheetInput const&, Form const&) = nullptr;
    std::string_view room = {}, if_cut = {}; // see Printed::OnForm
};

// What a sheet of this building speaks: the first language of the job, where all that the sheet may say has words of
// it; else English, so that no sheet speaks two.
Catalogue const& language_of(SheetKind const& kind, Building const& building);

std::span<SheetKind const> sheet_kinds();
SheetKind const* sheet_kind(std::string_view name); // null when there is none

// A sheet that is to be printed, and on what.
struct SheetOrder {
    SheetKind const* kind;
    Form form;
};
// How the job's words stand on these sheets, for the rules that ask: which names each form takes whole, and which
// letters of the job no face has. Measures no more than it must: of most jobs nothing. Findings of `input` stand for
// the bands that take their room.
Printed printed_words(SheetInput const& input, std::span<SheetOrder const> orders);

} // namespace legwork
