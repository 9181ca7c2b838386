// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What every sheet carries around its contents: head, bands, foot.
#pragma once

#include "sheet/sheets.h"
#include "words/phrase.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct Frame {
    std::string title;             // largest: "Main", "Wire labels"
    std::string subtitle;          // "Panel directory"; may be empty
    std::vector<std::string> foot; // lines of the sheet's own above the caution, each wrapped as needed
    std::string panel;             // whose spaces it shows; empty: those of all panels
    bool shows_spaces = false;     // spaces that are not in the file then want a band
    bool strip = false;            // a blank strip at the top for changes by hand
};

// The page left between head and foot, the same on every page of the sheet.
Rect content_area(SheetInput const& input, Form const& form, Frame const& frame);
// It is no lower than that, whatever the face and the findings; minus infinity with letters that are not usual ones.
Mm least_content_height(SheetInput const& input, Form const& form, Frame const& frame);
// Adds head, bands and foot to the pages of a sheet whose contents stand in content_area(), and tells what it cut.
void add_frame(SheetInput const& input, Form const& form, Frame const& frame, Sheet& sheet);
// An empty page of the form.
Page blank_page(Form const& form);

// "DRAFT: 2 errors", "DRAFT: sizes missing", "PROPOSED: spaces not saved": what a sheet must not hide. For forms with
// no room for a head (die-cut stock) that print them on a carrier.
std::vector<std::string> bands(SheetInput const& input, std::string_view panel, bool shows_spaces);
// "Accepted by R. Moss: gfci-needed of K1: ...", a line for each acceptance that covers a finding of this panel (empty:
// of any), for the foot: what people have decided to live with is told there, and makes no sheet a draft.
std::vector<std::string> accepted_lines(SheetInput const& input, std::string_view panel);
// True when this plan shows a space that the file does not have; panel empty: on any panel.
bool proposes_spaces(Plan const& plan, std::string_view panel);

// "Ferry Landing boathouse, rev. B, 2026-05-02": what the job says of itself, what it lacks left out.
Phrase imprint(Building const& building);
Phrase revision_phrase(Building const& building); // "rev. B, 2026-05-02": the same without the name
Phrase date_phrase(Date const& date);             // "2026-05-02"
Phrase page_of(std::size_t number, std::size_t pages);
Phrase checked_against(Building const& building); // "checked against CE 2024"
Phrase how_to_reprint(SheetInput const& input);   // "Reprint: legwork print boathouse.toml"
bool is_all_dc(Building const& building);         // no panel of it has legs, so that its sheets speak of none
Phrase caution();                                 // design: care, in few words
// "A, B, C" of those that say something.
Phrase comma_list(Phrases words);

} // namespace legwork
