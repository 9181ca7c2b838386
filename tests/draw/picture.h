// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A PNG as grey levels.
#pragma once

#include <cairo.h>

#include <cstring>
#include <memory>
#include <stdexcept>
#include <string>
#include <vector>

namespace legwork::draw_test {

struct Picture {
    int width = 0, height = 0;
    std::vector<int> levels; // 0 black to 255 white, row by row
    int at(int x, int y) const {
        return levels[static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x)];
    }
};

inline Picture read_png(std::string const& png) {
    struct Reading {
        std::string const* bytes;
        std::size_t at = 0;
    } reading{&png};
    auto const next = [](void* from, unsigned char* to, unsigned int n) {
        auto& r = *static_cast<Reading*>(from);
        if (r.at + n > r.bytes->size()) return CAIRO_STATUS_READ_ERROR;
        std::memcpy(to, r.bytes->data() + r.at, n);
        r.at += n;
        return CAIRO_STATUS_SUCCESS;
    };
    std::unique_ptr<cairo_surface_t, decltype(&cairo_surface_destroy)> const surface{
        cairo_image_surface_create_from_png_stream(next, &reading), &cairo_surface_destroy};
    if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS) throw std::runtime_error("not a PNG");
    Picture p{cairo_image_surface_get_width(surface.get()), cairo_image_surface_get_height(surface.get()), {}};
    int const stride = cairo_image_surface_get_stride(surface.get());
    unsigned char const* const data = cairo_image_surface_get_data(surface.get());
    for (int y = 0; y < p.height; ++y)
        for (int x = 0; x < p.width; ++x) {
            unsigned char const* const dot = data + y * stride + 4 * x;
            p.levels.push_back((dot[0] + dot[1] + dot[2]) / 3);
        }
    return p;
}

} // namespace legwork::draw_test
