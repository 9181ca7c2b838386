// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A picture as PNG (ISO/IEC 15948). Written here, not by Cairo: its pages take nine times the time and are larger,
// since it tries every filter on every row of three colours, while nearly all pages are black and white.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace legwork {

// Rows of pixels of Cairo's RGB24, `stride` bytes apart.
struct Pixels {
    unsigned char const* bytes = nullptr;
    int width = 0, height = 0, stride = 0;
};

// Grey where every pixel is. The resolution goes in, so that it prints at real size, and `mark` as a comment when there
// is one. Throws Failure when there is no memory for it.
std::string png_bytes(Pixels const& pixels, double dots_per_mm, std::string_view mark);

} // namespace legwork
