// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Owners for what the drawing libraries hand out.
#pragma once

#include <cairo.h>
#include <fontconfig/fontconfig.h>
#include <pango/pangocairo.h>

#include <memory>

namespace legwork {

template <auto free>
struct Freed {
    template <class T>
    void operator()(T* held) const {
        free(held);
    }
};

using CairoSurface = std::unique_ptr<cairo_surface_t, Freed<cairo_surface_destroy>>;
using Cairo = std::unique_ptr<cairo_t, Freed<cairo_destroy>>;
using CairoFontOptions = std::unique_ptr<cairo_font_options_t, Freed<cairo_font_options_destroy>>;
using FontConfig = std::unique_ptr<FcConfig, Freed<FcConfigDestroy>>;
using FontDescription = std::unique_ptr<PangoFontDescription, Freed<pango_font_description_free>>;
template <class T>
using GOwned = std::unique_ptr<T, Freed<g_object_unref>>;

} // namespace legwork
