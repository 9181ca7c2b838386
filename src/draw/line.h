// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// One line of text, set. Nearly every line of a sheet is Latin letters of the bundled face, left to right: HarfBuzz
// alone sets those, many times faster than Pango, which sets the rest (other scripts, both directions, emoji).
#pragma once

#include "draw/owned.h"
#include "page/page.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A line is set at an x-height of kUnit pixels and scaled when drawn: so its width is exactly proportional to its size.
inline constexpr double kUnit = 16;

struct SetGlyph {
    unsigned id = 0;
    int x = 0, y = 0;       // in Pango units from the line's left end, y downwards
    std::size_t letter = 0; // byte where its letter begins; equal for all glyphs of one letter
};

struct SetLine {
    std::string words;            // printable
    int width = 0;                // in Pango units
    std::vector<SetGlyph> glyphs; // of the bundled face; empty when Pango has set the line
    GOwned<PangoLayout> layout;   // null when it has not
};

// One bundled face.
class Face {
public:
    Face() = default;
    Face(PangoContext* context, PangoFontDescription const* description);

    // True when HarfBuzz alone sets these words right: Latin letters and signs that the face has.
    bool sets(std::string_view printable_words) const;
    SetLine set(std::string_view printable_words) const; // of words that it sets
    cairo_font_face_t* cairo_face() const;
    hb_font_t* outlines() const; // in Pango units

private:
    GOwned<PangoFont> font_;
};

} // namespace legwork
