// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a smaller wire follows a larger one: what the rule tells and the directory prints.
#pragma once

#include "reckon/wire_rating.h"

namespace legwork {

class Phrase; // words/phrase.h

struct SmallerWire {
    ThinnestPiece piece;
    Gauge before = Gauge::awg14; // the largest wire nearer to the panel
    // Nothing where the breaker goes by a motor, a nameplate or the table for whole dwellings, which the wire alone
    // does not tell.
    std::optional<Amps> largest_breaker;
};
// Nothing when no known piece of the run is smaller than one before it. The shared home run of a pair counts for both.
std::optional<SmallerWire> smaller_wire(Case const& c, Circuit const& circuit);
// "max 15 A: 14 AWG downstream", as the directory has it; empty when there is no such breaker.
Phrase largest_breaker_phrase(SmallerWire const& wire);
std::string largest_breaker_words(SmallerWire const& wire);

} // namespace legwork
