// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Draws on a page, and knows how wide words are. What is drawn in a place that lies turned on the page is drawn
// upright, as who reads it sees it; the pen turns it.
#pragma once

#include "page/page.h"
#include "page/text_width.h"
#include "sheet/common_text.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A place whose reader holds the page turned. Unturned, its coordinates are the page's; else they begin in the place's
// own upper left corner as it is read.
struct Turned {
    Rect on_page;
    int degrees = 0; // clockwise: 0, 90, 180, 270
    friend bool operator==(Turned const&, Turned const&) = default;

    Rect read() const;            // the place itself in its own coordinates
    Rect read(Rect part) const;   // a part of the page in its own coordinates
    Rect on_page_of(Rect) const;  // and back
    Mark placed(Mark mark) const; // a mark in its own coordinates, put on the page
};

class Pen {
public:
    Pen(Page& page, TextWidth const& widths) : Pen(page.marks, widths) {}
    Pen(std::vector<Mark>& marks, TextWidth const& widths) : marks_(&marks), widths_(&widths) {}
    // Of the same page, in the coordinates of this place.
    Pen in(Turned place) const;

    // Of the same page; it tells what it adds that is not whole.
    Pen telling(std::vector<std::string>& cut) const;
    Pen untold() const; // and it does not

    TextWidth const& widths() const { return *widths_; }
    Mm width(std::string_view words, Mm x_height, Weight weight) const {
        return widths_->width(words, x_height, weight);
    }

    void add(Mark mark) const;
    // Lines below one another, the first on `baseline`; x is their left, middle or right. Returns the last baseline;
    // an empty line takes its place and leaves no mark.
    Mm add_lines(Fitted const& text, Mm x, Mm baseline, Weight weight, Align align = Align::left,
                 Ink ink = kBlack) const;

private:
    std::vector<Mark>* marks_;
    TextWidth const* widths_;
    Turned place_{};
    std::vector<std::string>* cut_ = nullptr;
};

} // namespace legwork
