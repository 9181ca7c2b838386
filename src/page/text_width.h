// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How wide a text is in the bundled face. An interface, so that composing pages needs no drawing library.
#pragma once

#include "page/page.h"

#include <string_view>
#include <vector>

namespace legwork {

class TextWidth {
public:
    virtual ~TextWidth() = default;
    virtual Mm width(std::string_view words, Mm x_height, Weight weight) const = 0;
    // The letters of the text that no face has, each as UTF-8; empty when all can be drawn.
    virtual std::vector<std::string> missing(std::string_view words) const = 0;
};

} // namespace legwork
