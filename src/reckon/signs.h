// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The signs of one panel with their texts filled in, for the note about them and for the sheet that prints them.
#pragma once

#include "codebook/signs.h"
#include "reckon/case.h"

#include <string>
#include <vector>

namespace legwork {

struct PanelSign {
    Sign const* sign = nullptr;
    std::string circuit{}; // whose breaker it hangs beside; empty: the panel's
    // What the named places of the text are filled with, one word or a list; an empty word is the unnamed supply.
    using Words = std::vector<std::string>;
    std::vector<std::pair<std::string_view, Words>> fills{};
    struct Off {
        std::string source; // empty: the unnamed supply
        Words marks;
    };
    std::vector<Off> off{}; // fills {off}
    Reference reference{};  // no section: advised, asked by none
};

// Asked or advised for this panel, in the order of the table; none for a DC panel.
std::vector<PanelSign> signs_of(Case const& c, Panel const& panel);
// In "en", "fr" or "es": one paragraph, no full stop at its end.
std::string text(PanelSign const& sign, std::string_view language);

} // namespace legwork
