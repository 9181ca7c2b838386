// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a card of the tape notes looks like.
#pragma once

#include "sheet/common.h"
#include "sheet/pen.h"
#include "sheet/tape_notes_cards.h"

#include <string>
#include <vector>

namespace legwork {

// Said on every card, since it is cut out of its page.
struct CardFoot {
    std::string band;          // "DRAFT: 2 errors"; may be empty
    std::string care, care_dc; // of a card with nothing but direct current
    std::string widest_part;   // "99 of 99": what stands behind the title where a card has parts
    std::string imprint;       // job, revision, date, code: one line
};

inline constexpr Mm kCardRule = 1.8; // height that the rule between two cables adds

struct CardShows {
    Mm height = 0;
    bool title = true;        // whole
    std::vector<bool> cables; // each: all its words whole
};

// Draws the card with its top left corner at (x, y). `part` stands behind the title ("2 of 3").
CardShows add_card(Pen const& pen, Mm x, Mm y, Mm width, BoxCard const& card, std::string const& part,
                   CardFoot const& foot);
Mm card_height(TextWidth const& widths, Mm width, BoxCard const& card, CardFoot const& foot);

} // namespace legwork
