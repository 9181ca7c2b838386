// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/svg_glyphs.h"

#include <harfbuzz/hb-ot.h>

#include <charconv>
#include <cmath>

namespace legwork {

namespace {

constexpr std::string_view kIdHere = "{}"; // where a shape's id goes: it differs from file to file

using DrawFunctions = std::unique_ptr<hb_draw_funcs_t, Freed<hb_draw_funcs_destroy>>;
using Blob = std::unique_ptr<hb_blob_t, Freed<hb_blob_destroy>>;

void append_whole(std::string& out, double number) {
    char digits[24];
    auto const end = std::to_chars(digits, digits + sizeof digits, std::lround(number)).ptr;
    // A minus parts two numbers by itself.
    if (!out.empty() && digits[0] != '-' && out.back() >= '0' && out.back() <= '9') out += ' ';
    out.append(digits, end);
}

void append_points(void* path, char command, std::initializer_list<float> numbers) {
    auto& out = *static_cast<std::string*>(path);
    out += command;
    for (float const n : numbers) append_whole(out, n);
}

DrawFunctions make_path_functions() {
    DrawFunctions made{hb_draw_funcs_create()};
    hb_draw_funcs_set_move_to_func(
        made.get(),
        [](hb_draw_funcs_t*, void* path, hb_draw_state_t*, float x, float y, void*) {
            append_points(path, 'M', {x, y});
        },
        nullptr, nullptr);
    hb_draw_funcs_set_line_to_func(
        made.get(),
        [](hb_draw_funcs_t*, void* path, hb_draw_state_t*, float x, float y, void*) {
            append_points(path, 'L', {x, y});
        },
        nullptr, nullptr);
    hb_draw_funcs_set_quadratic_to_func(
        made.get(),
        [](hb_draw_funcs_t*, void* path, hb_draw_state_t*, float cx, float cy, float x, float y, void*) {
            append_points(path, 'Q', {cx, cy, x, y});
        },
        nullptr, nullptr);
    hb_draw_funcs_set_cubic_to_func(
        made.get(),
        [](hb_draw_funcs_t*, void* path, hb_draw_state_t*, float c1x, float c1y, float c2x, float c2y, float x, float y,
           void*) {
            append_points(path, 'C', {c1x, c1y, c2x, c2y, x, y});
        },
        nullptr, nullptr);
    hb_draw_funcs_set_close_path_func(
        made.get(), [](hb_draw_funcs_t*, void* path, hb_draw_state_t*, void*) { append_points(path, 'Z', {}); },
        nullptr, nullptr);
    hb_draw_funcs_make_immutable(made.get());
    return made;
}

std::string outline(hb_font_t* font, unsigned glyph) {
    static DrawFunctions const functions = make_path_functions();
    std::string path;
#if HB_VERSION_ATLEAST(7, 0, 0)
    hb_font_draw_glyph(font, glyph, functions.get(), &path);
#else
    hb_font_get_glyph_shape(font, glyph, functions.get(), &path);
#endif
    return path.empty() ? path : "\" d=\"" + path + "\"/>\n";
}

std::string base64(std::string_view bytes) {
    constexpr std::string_view letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        unsigned three = 0;
        for (std::size_t k = 0; k < 3; ++k)
            three = three << 8 | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k) out += i + k <= bytes.size() ? letters[three >> (18 - 6 * k) & 63] : '=';
    }
    return out;
}

// Colour emoji are often pictures inside the typeface.
std::string picture(hb_font_t* font, unsigned glyph) {
    Blob const png{hb_ot_color_glyph_reference_png(font, glyph)};
    unsigned length = 0;
    char const* const bytes = hb_blob_get_data(png.get(), &length);
    hb_glyph_extents_t box{};
    if (length == 0 || !hb_font_get_glyph_extents(font, glyph, &box)) return {};
    std::string out = "\" transform=\"scale(1-1)\" x=\"";
    append_whole(out, box.x_bearing);
    out += "\" y=\"";
    append_whole(out, -box.y_bearing);
    out += "\" width=\"";
    append_whole(out, box.width);
    out += "\" height=\"";
    append_whole(out, -box.height);
    return out + "\" xlink:href=\"data:image/png;base64," + base64({bytes, length}) + "\"/>\n";
}

// For a letter that no typeface has: an empty box as wide as its place, so that something is seen to be missing.
void append_box(std::string& out, int x, int width) {
    constexpr double high = kUnit * PANGO_SCALE * 1.3;
    out += "<path d=\"M";
    append_whole(out, x + width * 0.1);
    out += " 0H";
    append_whole(out, x + width * 0.9);
    out += "V";
    append_whole(out, high);
    out += "H";
    append_whole(out, x + width * 0.1);
    out += "Z\" fill=\"none\" stroke=\"#000\" stroke-width=\"1500\"/>";
}

} // namespace

void append_number(std::string& out, double number, int decimals) {
    char digits[64];
    auto const end = std::to_chars(digits, digits + sizeof digits, number, std::chars_format::fixed, decimals).ptr;
    std::string_view text(digits, static_cast<std::size_t>(end - digits));
    if (text.find('.') != std::string_view::npos) {
        while (text.ends_with('0')) text.remove_suffix(1);
        if (text.ends_with('.')) text.remove_suffix(1);
    }
    out += text == "-0" ? "0" : text;
}

std::string const& GlyphShapes::operator()(hb_font_t* font, unsigned glyph) {
    auto [at, added] = shapes_.try_emplace({font, glyph});
    if (!added) return at->second;
    if (std::string const colored = picture(font, glyph); !colored.empty())
        at->second = "<image id=\"g" + std::string(kIdHere) + colored;
    else if (std::string const path = outline(font, glyph); !path.empty())
        at->second = "<path id=\"g" + std::string(kIdHere) + path;
    return at->second;
}

int SvgGlyphs::defined(hb_font_t* font, unsigned glyph) {
    auto [at, added] = ids_.try_emplace({font, glyph}, 0);
    if (!added) return at->second;
    std::string const& shape = shapes_(font, glyph);
    if (shape.empty()) return 0;
    at->second = ++last_id_;
    auto const id = shape.find(kIdHere);
    definitions_.append(shape, 0, id).append(std::to_string(at->second)).append(shape, id + kIdHere.size());
    return at->second;
}

void SvgGlyphs::use(std::string& out, hb_font_t* font, unsigned glyph, int x, int y) {
    int const id = defined(font, glyph);
    if (id == 0) return; // a space
    out += "<use xlink:href=\"#g";
    append_whole(out, id);
    out += "\" x=\"";
    append_whole(out, x);
    if (y != 0) {
        out += "\" y=\"";
        append_whole(out, y);
    }
    out += "\"/>";
}

void SvgGlyphs::use_run(std::string& out, PangoGlyphItem const& run, int x) {
    hb_font_t* const font = pango_font_get_hb_font(run.item->analysis.font);
    for (int i = 0; i < run.glyphs->num_glyphs; ++i) {
        PangoGlyphInfo const& g = run.glyphs->glyphs[i];
        if (g.glyph & PANGO_GLYPH_UNKNOWN_FLAG)
            append_box(out, x, g.geometry.width);
        else if (g.glyph != PANGO_GLYPH_EMPTY)
            use(out, font, g.glyph, x + g.geometry.x_offset, -g.geometry.y_offset);
        x += g.geometry.width;
    }
}

std::string SvgGlyphs::uses(SetLine const& line, Face const& face) {
    std::string out;
    if (!line.layout) {
        for (SetGlyph const& g : line.glyphs) use(out, face.outlines(), g.id, g.x, -g.y);
        return out;
    }
    int x = 0;
    PangoLayoutLine const* const set = pango_layout_get_line_readonly(line.layout.get(), 0);
    for (GSList const* at = set->runs; at; at = at->next) {
        auto const& run = *static_cast<PangoGlyphItem const*>(at->data);
        use_run(out, run, x);
        x += pango_glyph_string_get_width(run.glyphs);
    }
    return out;
}

} // namespace legwork
