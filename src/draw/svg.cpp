// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/marks.h"

#include <cairo-svg.h>

#include <map>

namespace legwork {

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_small_letter(char c) { return c >= 'a' && c <= 'z'; }

// Cairo counts the ids "surface7", "image3" over the whole process. Numbers each kind from 1 within this file, where
// they are given (id="...") and where they are used (#...).
std::string renumbered(std::string_view svg) {
    std::map<std::string, std::string, std::less<>> names;
    std::map<std::string, int, std::less<>> counts;
    std::string out;
    out.reserve(svg.size());
    for (std::size_t at = 0; at < svg.size();) {
        bool const starts = svg[at] == '#' || svg.substr(0, at).ends_with(" id=\"");
        auto letters_end = at + (svg[at] == '#' ? 1 : 0);
        auto const begin = letters_end;
        while (letters_end < svg.size() && is_small_letter(svg[letters_end])) ++letters_end;
        auto end = letters_end;
        while (end < svg.size() && is_digit(svg[end])) ++end;
        bool const is_whole = end < svg.size() && (svg[end] == '"' || svg[end] == ')');
        if (!starts || letters_end == begin || end == letters_end || !is_whole) {
            out += svg[at++];
            continue;
        }
        auto [name, added] = names.try_emplace(std::string(svg.substr(begin, end - begin)));
        if (added) {
            std::string const kind(svg.substr(begin, letters_end - begin));
            name->second = kind + std::to_string(++counts[kind]);
        }
        out += svg.substr(at, begin - at);
        out += name->second;
        at = end;
    }
    return out;
}

} // namespace

std::string draw_svg(Page const& page, Fonts const& fonts) {
    std::string bytes;
    CairoSurface const surface{cairo_svg_surface_create_for_stream(
        append_bytes, &bytes, clamped(page.width) * kPointsPerMm, clamped(page.height) * kPointsPerMm)};
    Cairo const cairo{cairo_create(surface.get())};
    cairo_scale(cairo.get(), kPointsPerMm, kPointsPerMm);
    draw_marks(cairo.get(), page, fonts);
    cairo_show_page(cairo.get());
    cairo_surface_finish(surface.get());
    require(cairo_status(cairo.get()));
    require(cairo_surface_status(surface.get()));
    return renumbered(bytes);
}

} // namespace legwork
