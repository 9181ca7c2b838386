// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/marks.h"

#include <algorithm>
#include <cmath>
#include <cstdint>

namespace legwork {

namespace {

std::string big_endian(std::uint32_t n) {
    std::string bytes;
    for (int shift = 24; shift >= 0; shift -= 8) bytes += static_cast<char>(n >> shift & 0xFF);
    return bytes;
}

// Of a PNG chunk (ISO/IEC 15948 annex D).
std::uint32_t crc(std::string const& bytes) {
    std::uint32_t c = 0xFFFFFFFF;
    for (char const byte : bytes) {
        c ^= static_cast<unsigned char>(byte);
        for (int bit = 0; bit < 8; ++bit) c = c & 1 ? c >> 1 ^ 0xEDB88320 : c >> 1;
    }
    return ~c;
}

// Says how large the picture is, so that it prints at real size; Cairo does not. The chunk goes behind the header,
// which is the first 33 bytes of any PNG.
void add_resolution(std::string& png, double dots_per_mm) {
    auto const dots_per_metre = static_cast<std::uint32_t>(std::lround(dots_per_mm * 1000));
    std::string const chunk = "pHYs" + big_endian(dots_per_metre) + big_endian(dots_per_metre) + '\1';
    png.insert(33, big_endian(static_cast<std::uint32_t>(chunk.size()) - 4) + chunk + big_endian(crc(chunk)));
}

} // namespace

std::string draw_png(Page const& page, Fonts const& fonts, double dots_per_inch) {
    double const dots_per_mm = std::clamp(dots_per_inch, 10.0, 1200.0) / 25.4;
    auto const dots = [&](Mm edge) {
        return std::min(20000, static_cast<int>(std::lround(clamped(edge) * dots_per_mm)));
    };
    CairoSurface const surface{
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, std::max(1, dots(page.width)), std::max(1, dots(page.height)))};
    Cairo const cairo{cairo_create(surface.get())};
    cairo_set_source_rgb(cairo.get(), 1, 1, 1);
    cairo_paint(cairo.get());
    cairo_scale(cairo.get(), dots_per_mm, dots_per_mm);
    draw_marks(cairo.get(), page, fonts);
    require(cairo_status(cairo.get()));

    std::string bytes;
    require(cairo_surface_write_to_png_stream(surface.get(), append_bytes, &bytes));
    add_resolution(bytes, dots_per_mm);
    return bytes;
}

} // namespace legwork
