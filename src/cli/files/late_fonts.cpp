// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/late_fonts.h"

#include "cli/files/share.h"

namespace legwork {

Fonts const& LateFonts::fonts() const {
    if (!fonts_) fonts_ = std::make_shared<Fonts const>(share_folder("fonts"));
    return *fonts_;
}

Mm LateFonts::width(std::string_view words, Mm x_height, Weight weight) const {
    return fonts().width(words, x_height, weight);
}

std::vector<std::string> LateFonts::missing(std::string_view words) const { return fonts().missing(words); }

} // namespace legwork
