// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/marks.h"
#include "draw/png_bytes.h"

#include <algorithm>
#include <cmath>

namespace legwork {

std::string draw_png(Page const& page, Fonts const& fonts, double dots_per_inch, std::string_view mark) {
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

    cairo_surface_flush(surface.get());
    return png_bytes({cairo_image_surface_get_data(surface.get()), cairo_image_surface_get_width(surface.get()),
                      cairo_image_surface_get_height(surface.get()), cairo_image_surface_get_stride(surface.get())},
                     dots_per_mm, mark);
}

} // namespace legwork
