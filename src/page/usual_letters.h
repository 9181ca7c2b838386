// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is known of the bundled faces without opening them: letters that they surely have, and how wide each is at most.
// What fits by these widths fits in any case, so that most jobs are judged without a typeface. tests/draw holds the
// table against the faces.
#pragma once

#include "page/text_width.h"

namespace legwork {

// Latin letters (ASCII, Latin-1, Latin Extended-A) and a few signs.
class UsualLetters : public TextWidth {
public:
    // No line of the bundled face is wider, regular or bold; infinite with a letter that is not a usual one. The sum of
    // its letters, so a part of a text is never wider than the whole.
    Mm width(std::string_view words, Mm x_height, Weight weight) const override;
    // The letters that are not usual ones. The face may have them.
    std::vector<std::string> missing(std::string_view words) const override;
};

} // namespace legwork
