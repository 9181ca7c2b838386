// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Writes one letter page with one line of text to the file named: the least that any program pays which draws text
// with Cairo and Pango.

#include <pango/pangocairo.h>

#include <cairo-pdf.h>

int main(int count, char** words) {
    if (count != 2) return 2;
    cairo_surface_t* surface = cairo_pdf_surface_create(words[1], 612, 792);
    cairo_t* cr = cairo_create(surface);
    PangoLayout* line = pango_cairo_create_layout(cr);
    pango_layout_set_text(line, "Ferry Landing boathouse", -1);
    pango_cairo_show_layout(cr, line);
    g_object_unref(line);
    cairo_destroy(cr);
    cairo_surface_finish(surface);
    bool const drawn = cairo_surface_status(surface) == CAIRO_STATUS_SUCCESS;
    cairo_surface_destroy(surface);
    return drawn ? 0 : 3;
}
