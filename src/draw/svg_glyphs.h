// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The letters of an SVG as outlines, each defined once in the file: so it looks the same wherever it is opened, with
// no typeface installed.
#pragma once

#include "draw/line.h"

#include <map>
#include <string>
#include <utility>

namespace legwork {

// At most so many decimals, no trailing zeros; the machine's language does not matter. |number| up to 1e9.
void append_number(std::string& out, double number, int decimals = 3);

// What each glyph looks like, kept from page to page.
class GlyphShapes {
public:
    // Its element, but for the id; empty when it shows nothing.
    std::string const& operator()(hb_font_t* font, unsigned glyph);

private:
    std::map<std::pair<hb_font_t*, unsigned>, std::string> shapes_;
};

class SvgGlyphs {
public:
    explicit SvgGlyphs(GlyphShapes& shapes) : shapes_(shapes) {}
    // What draws the line, in Pango units from its left end, y upwards.
    std::string uses(SetLine const& line, Face const& face);
    std::string const& definitions() const { return definitions_; }

private:
    void use_run(std::string& out, PangoGlyphItem const& run, int x);
    void use(std::string& out, hb_font_t* font, unsigned glyph, int x, int y);
    // The id of a glyph's definition; 0 when it shows nothing.
    int defined(hb_font_t* font, unsigned glyph);

    GlyphShapes& shapes_;
    std::map<std::pair<hb_font_t*, unsigned>, int> ids_;
    int last_id_ = 0;
    std::string definitions_;
};

} // namespace legwork
