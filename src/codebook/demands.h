// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the families of codes part ways on what a rule demands; the number tables are elsewhere.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

struct Demands {
    // Both hots of every multiwire circuit open together; else only where a split receptacle, a load between the
    // hots or a fixed appliance hangs on it.
    bool every_pair_off_together;
    // Two one-pole breakers tied on site count as a device that opens both poles.
    bool tied_singles_count;
    // A directory may not name a circuit by who lives there now.
    bool names_outlive_people;
    // A handle that moves up and down is on when up.
    bool up_is_on;
    // Two one-pole breakers that count all the same, where `tied_singles_count` is false; empty: none are known.
    std::string_view singles_that_count = {};
};

// Sources: NEC 210.4(B), 240.15(B) and 408.4(A) as trade pages on the 2008 to 2023 editions tell them; CE 14-010(b) and
// 14-302(b) as trade articles of 2018 tell them, the two conditions of 14-302(b) as notes on 2021 do; CE 2-100 says
// nothing of occupants (from memory); NEC 240.81 by texts of all three editions, no such rule is known of the CE Code.
inline Demands const& demands(CodeBook const& book) { return book.demands; }

} // namespace legwork
