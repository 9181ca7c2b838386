// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the formats share: a page's marks onto a Cairo surface (PDF, PNG), and bytes gathered in memory.
#pragma once

#include "draw/draw.h"
#include "draw/owned.h"

#include <array>
#include <string>

namespace legwork {

inline constexpr double kPointsPerMm = 72.0 / 25.4;

// Draws every mark; the surface's units are millimetres by then.
void draw_marks(cairo_t* cairo, Page const& page, Fonts const& fonts);

// Part of a text's width that stands left of its x: 0, a half or 1.
double share_left_of_anchor(Align align);
// A dash and a gap: long against the pen's width, so that they stay dashes on a photocopy.
std::array<double, 2> dash_lengths(Mm width);

// For Cairo's stream functions: appends to the std::string behind `bytes`.
cairo_status_t append_bytes(void* bytes, unsigned char const* data, unsigned int length);

// Throws Failure naming the status, unless it is a success.
void require(cairo_status_t status);

// A page's edge in the units of a surface: pages without a size, or beyond all paper, get a least and a largest one,
// so that any Page draws.
double clamped(Mm edge);

} // namespace legwork
