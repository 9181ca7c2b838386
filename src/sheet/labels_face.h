// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What one die-cut label looks like.
#pragma once

#include "page/page.h"
#include "page/text_width.h"
#include "sheet/common.h"
#include "sheet/form.h"
#include "sheet/labels_list.h"

#include <span>
#include <vector>

namespace legwork {

// What of a label's words it shows whole.
struct LabelShows {
    std::vector<bool> feeds; // each
    bool mark = true, ends = true, cable = true;
};

// `area` is where text may stand. The mark runs along the top as often as it fits, so that one is in sight on any side
// of a wrap; then what it feeds; then, small, the ends and the cable.
LabelShows add_cable_label(Pen const& pen, Rect area, CableLabel const& label);

// Labels so low have room for the mark alone.
bool has_mark_alone(Rect area);

// Not to be stuck anywhere: something to know about the labels.
void add_notice(Pen const& pen, Rect area, std::string const& words);

// How many of these markers, from the first, stand whole on one label of this width; at least one.
std::size_t strips(TextWidth const& widths, Mm label_width, std::span<Marker const> wanted);
// Markers side by side with a line to cut along between them. A conductor is thin: the words come again every few
// millimetres down the strip. True when each shows its words whole.
bool add_markers(Pen const& pen, Rect area, std::span<Marker const> markers);

} // namespace legwork
