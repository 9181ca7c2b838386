// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/marks.h"

#include "draw/fonts.h"
#include "units/failure.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace legwork {

namespace {

void set_ink(cairo_t* cairo, Ink ink) { cairo_set_source_rgb(cairo, ink.red, ink.green, ink.blue); }

void set_pen(cairo_t* cairo, Mm width, Ink ink, bool dashed) {
    set_ink(cairo, ink);
    cairo_set_line_width(cairo, width);
    auto const dashes = dash_lengths(width);
    cairo_set_dash(cairo, dashes.data(), dashed ? 2 : 0, 0);
}

void rounded(cairo_t* cairo, Box const& b) {
    double const r = std::min({b.radius, b.width / 2, b.height / 2});
    if (r <= 0) return cairo_rectangle(cairo, b.x, b.y, b.width, b.height);
    double const quarter = std::numbers::pi / 2;
    cairo_new_sub_path(cairo);
    cairo_arc(cairo, b.x + b.width - r, b.y + r, r, -quarter, 0);
    cairo_arc(cairo, b.x + b.width - r, b.y + b.height - r, r, 0, quarter);
    cairo_arc(cairo, b.x + r, b.y + b.height - r, r, quarter, 2 * quarter);
    cairo_arc(cairo, b.x + r, b.y + r, r, 2 * quarter, 3 * quarter);
    cairo_close_path(cairo);
}

void draw(cairo_t* cairo, Box const& b, Fonts const&) {
    rounded(cairo, b);
    if (b.filled) {
        set_ink(cairo, b.fill);
        cairo_fill_preserve(cairo);
    }
    if (b.line > 0) {
        set_pen(cairo, b.line, b.ink, b.dashed);
        cairo_stroke_preserve(cairo);
    }
    cairo_new_path(cairo);
}

void draw(cairo_t* cairo, Line const& l, Fonts const&) {
    set_pen(cairo, l.width, l.ink, l.dashed);
    cairo_move_to(cairo, l.x1, l.y1);
    cairo_line_to(cairo, l.x2, l.y2);
    cairo_stroke(cairo);
}

// Letters and the glyphs that show them, so that the text of a PDF can be searched.
void show(cairo_t* cairo, SetLine const& line, Face const& face, double size) {
    std::vector<cairo_glyph_t> glyphs;
    std::vector<cairo_text_cluster_t> clusters;
    for (std::size_t i = 0; i < line.glyphs.size(); ++i) {
        SetGlyph const& g = line.glyphs[i];
        glyphs.push_back({g.id, static_cast<double>(g.x) / PANGO_SCALE, static_cast<double>(g.y) / PANGO_SCALE});
        if (i > 0 && g.letter == line.glyphs[i - 1].letter) {
            ++clusters.back().num_glyphs;
            continue;
        }
        if (i > 0) clusters.back().num_bytes = static_cast<int>(g.letter - line.glyphs[i - 1].letter);
        clusters.push_back({static_cast<int>(line.words.size() - g.letter), 1});
    }
    cairo_set_font_face(cairo, face.cairo_face());
    cairo_set_font_size(cairo, size);
    cairo_show_text_glyphs(cairo, line.words.data(), static_cast<int>(line.words.size()), glyphs.data(),
                           static_cast<int>(glyphs.size()), clusters.data(), static_cast<int>(clusters.size()), {});
}

void draw(cairo_t* cairo, Text const& t, Fonts const& fonts) {
    if (t.words.empty() || t.x_height <= 0) return;
    SetLine const& line = fonts.inside().line(t.words, t.weight);
    cairo_save(cairo);
    cairo_translate(cairo, t.x, t.baseline);
    cairo_rotate(cairo, t.turn * std::numbers::pi / 180);
    cairo_scale(cairo, t.x_height / kUnit, t.x_height / kUnit);
    set_ink(cairo, t.ink);
    // In the units of the line, whose width is exact, not of the page.
    cairo_translate(cairo, -static_cast<double>(line.width) / PANGO_SCALE * share_left_of_anchor(t.align), 0);
    if (line.layout) {
        cairo_move_to(cairo, 0, 0);
        pango_cairo_show_layout_line(cairo, pango_layout_get_line_readonly(line.layout.get(), 0));
    } else
        show(cairo, line, fonts.inside().face(t.weight), fonts.inside().size());
    cairo_restore(cairo);
}

} // namespace

void draw_marks(cairo_t* cairo, Page const& page, Fonts const& fonts) {
    cairo_set_font_options(cairo, unhinted().get());
    cairo_set_line_cap(cairo, CAIRO_LINE_CAP_BUTT);
    cairo_set_line_join(cairo, CAIRO_LINE_JOIN_MITER);
    for (Mark const& mark : page.marks) std::visit([&](auto const& m) { draw(cairo, m, fonts); }, mark);
}

double share_left_of_anchor(Align align) {
    switch (align) {
    case Align::left: return 0;
    case Align::centre: return 0.5;
    case Align::right: return 1;
    }
    return 0;
}

std::array<double, 2> dash_lengths(Mm width) { return {std::max(1.0, 3 * width), std::max(0.8, 2 * width)}; }

cairo_status_t append_bytes(void* bytes, unsigned char const* data, unsigned int length) {
    static_cast<std::string*>(bytes)->append(reinterpret_cast<char const*>(data), length);
    return CAIRO_STATUS_SUCCESS;
}

void require(cairo_status_t status) {
    if (status == CAIRO_STATUS_SUCCESS) return;
    // Cairo says so, too, of a typeface's file that it could not open or read.
    bool const memory = status == CAIRO_STATUS_NO_MEMORY;
    throw Failure(std::string("a page could not be drawn: ") + cairo_status_to_string(status) +
                  (memory ? ", or a typeface could not be read" : ""));
}

double clamped(Mm edge) { return std::isfinite(edge) ? std::clamp(edge, 1.0, 2000.0) : 1.0; }

} // namespace legwork
