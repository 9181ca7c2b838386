// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours of wires and tape, and why a wire is taped.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kWireRows{
    Row{"colour/black", "black"},
    Row{"colour/red", "red"},
    Row{"colour/blue", "blue"},
    Row{"colour/white", "white"},
    Row{"colour/grey", "grey"},
    Row{"colour/gray", "gray"},
    Row{"colour/green", "green"},
    Row{"colour/bare", "bare"},
    Row{"colour/brown", "brown"},
    Row{"colour/orange", "orange"},
    Row{"colour/yellow", "yellow"},
    Row{"colour/violet", "violet"},
    Row{"colour/purple", "purple"},
    Row{"colour/pink", "pink"},
    Row{"colour/tan", "tan"},
    Row{"colour/turquoise", "turquoise"},
    Row{"colour/silver", "silver"},
    Row{"colour/gold", "gold"},
    Row{"colour/natural", "natural"},
    Row{"colours/striped", "{ground} with {stripe} stripe"},
    Row{"colours/with", "{ground} with {other}"},
    Row{"colours/two", "{ground}/{other}"},
    Row{"reference/practice", "common practice"},
    Row{"reference/unread", "{edition} (not read yet)", "of a code of which nobody has read the page"},
    Row{"reference/number", "{section} (section number from memory)"},
    Row{"reference/numbers", "{section} (section numbers from memory)"},
    Row{"reference/second-number", "{section} (second section number from memory)"},
    Row{"reference/two-numbers", "{section} (two section numbers from memory)"},
    Row{"wire/unread", "Nobody has read yet what {edition} says of this wire: ask the inspector first."},
    Row{"wire/conduit-white-hot", "In conduit a white or grey wire is never hot: pull a wire of another colour."},
    Row{"wire/switch-loop-unasked", "White feeds the switch, the other wire comes back switched. This code does not "
                                    "ask for tape here; it saves the "
                                    "next person."},
    Row{"wire/switch-loop", "White feeds the switch, the other wire comes back switched: never the other way round."},
    Row{"wire/white-hot", "White means neutral to whoever opens this box next: tape it all round."},
    Row{"wire/small-neutral",
        "A neutral smaller than {gauge} is white or grey over its whole length, tape is no cure: use a cable with a "
        "white wire."},
    Row{"wire/large-neutral", "{gauge} and larger may be marked white at its ends."},
    Row{"wire/neutral-disputed", "Readings of the code differ on taping this wire white. Ask the inspector first, in "
                                 "writing; then tape both ends "
                                 "and in every box."},
    Row{"wire/green", "Green and bare are the ground and never anything else: use another conductor."},
    Row{"wire/change", "{mark}: its hot is {before} up to this box, {now} from here on; join the two."},
};

} // namespace legwork
