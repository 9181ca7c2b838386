// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "draw/marks.h"

#include <cairo-pdf.h>

namespace legwork {

std::string draw_pdf(std::vector<Page> const& pages, DocumentInfo const& info, Fonts const& fonts) {
    std::string bytes;
    CairoSurface const surface{cairo_pdf_surface_create_for_stream(append_bytes, &bytes, 72, 72)};
    // Without a date of the job a fixed one: the clock would change the bytes.
    std::string const date = (info.date.empty() ? "2000-01-01" : info.date) + "T00:00:00Z";
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATE_DATE, date.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_TITLE, info.title.c_str());
    cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_CREATOR, "legwork");
    if (!info.mark.empty())
        cairo_pdf_surface_set_metadata(surface.get(), CAIRO_PDF_METADATA_KEYWORDS, info.mark.c_str());

    Cairo const cairo{cairo_create(surface.get())};
    for (Page const& page : pages) {
        cairo_pdf_surface_set_size(surface.get(), clamped(page.width) * kPointsPerMm,
                                   clamped(page.height) * kPointsPerMm);
        cairo_save(cairo.get());
        cairo_scale(cairo.get(), kPointsPerMm, kPointsPerMm);
        draw_marks(cairo.get(), page, fonts);
        cairo_restore(cairo.get());
        cairo_show_page(cairo.get());
    }
    cairo_surface_finish(surface.get());
    require(cairo_status(cairo.get()));
    require(cairo_surface_status(surface.get()));
    return bytes;
}

} // namespace legwork
