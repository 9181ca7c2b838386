// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/line.h"

#include "units/failure.h"

#include <harfbuzz/hb.h>

namespace legwork {

namespace {

using Buffer = std::unique_ptr<hb_buffer_t, Freed<hb_buffer_destroy>>;

// Letters that stand for themselves wherever they stand, left to right: Latin, punctuation, currency, arrows, figures.
// Not the soft hyphen, marks that combine, or signs that steer direction and joining.
bool is_plain(gunichar c) {
    return (c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c < 0x300 && c != 0xAD) || (c >= 0x2010 && c <= 0x2027) ||
           (c >= 0x2030 && c <= 0x205E) || (c >= 0x2070 && c < 0x20D0) || (c >= 0x2150 && c <= 0x22FF);
}

} // namespace

Face::Face(PangoContext* context, PangoFontDescription const* description)
    : font_(pango_context_load_font(context, description)) {
    if (!font_ || !outlines()) throw Failure("the bundled typeface cannot be read; install legwork again");
}

hb_font_t* Face::outlines() const { return pango_font_get_hb_font(font_.get()); }

cairo_font_face_t* Face::cairo_face() const {
    return cairo_scaled_font_get_font_face(pango_cairo_font_get_scaled_font(PANGO_CAIRO_FONT(font_.get())));
}

bool Face::sets(std::string_view words) const {
    char const* const end = words.data() + words.size();
    for (char const* at = words.data(); at < end; at = g_utf8_next_char(at)) {
        gunichar const c = g_utf8_get_char(at);
        hb_codepoint_t glyph = 0;
        if (!is_plain(c) || !hb_font_get_nominal_glyph(outlines(), c, &glyph)) return false;
    }
    return true;
}

SetLine Face::set(std::string_view words) const {
    Buffer const buffer{hb_buffer_create()};
    hb_buffer_add_utf8(buffer.get(), words.data(), static_cast<int>(words.size()), 0, -1);
    hb_buffer_set_direction(buffer.get(), HB_DIRECTION_LTR);
    hb_buffer_set_script(buffer.get(), HB_SCRIPT_LATIN);
    hb_buffer_set_language(buffer.get(), hb_language_from_string("en", -1)); // not the machine's
    hb_shape(outlines(), buffer.get(), nullptr, 0);

    SetLine line;
    line.words = words;
    unsigned count = 0;
    hb_glyph_info_t const* const infos = hb_buffer_get_glyph_infos(buffer.get(), &count);
    hb_glyph_position_t const* const places = hb_buffer_get_glyph_positions(buffer.get(), &count);
    for (unsigned i = 0; i < count; ++i) {
        line.glyphs.push_back(
            {infos[i].codepoint, line.width + places[i].x_offset, -places[i].y_offset, infos[i].cluster});
        line.width += places[i].x_advance;
    }
    return line;
}

} // namespace legwork
