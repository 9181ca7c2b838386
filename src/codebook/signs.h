// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The signs that a code asks for at a panel, and what they say: in capitals the words that a code gives itself, the
// rest in our own. Which edition asks for which: the rows "panel-sign/ID" of cite.h; an edition without a section does
// not ask.
#pragma once

#include "codebook/code_book.h"

namespace legwork {

// What about a panel calls for the sign.
enum class SignFor {
    service,          // the panel that a service ends in
    dwelling_service, // of a dwelling
    other_service,    // of no dwelling
    feeder,           // fed by a feeder, in no dwelling
    outbuilding,      // the panel of a building apart
    fed_dwelling,     // the same, of a job that is a dwelling
    several_sources,  // one at a time: an interlock or transfer switch chooses
    inlet,            // a cord inlet for a generator
    single_120_volt,  // one 120 V source bridged to both legs
    interactive,      // solar or a battery runs beside the main
    far_source,       // its breaker stands at the end away from the main because it must
    ground_fault_tub, // a tub or a pool's pump behind a ground-fault breaker or receptacle
    lesser_wire,      // the breaker is larger than its wire, so less continuous load is allowed than its handle says
};

enum class SignPlace { panel, main, breaker, inlet, outdoor_disconnect, tub_switch };
std::string_view words(SignPlace place); // "on the panel's door", "beside the main"

// Named places between braces are filled in: {panel}, {building}, {sources}, {source}, {marks}, {main}, {amps},
// and {off}, a whole sentence or nothing.
struct SignText {
    std::string_view en, fr, es;
};

struct Sign {
    std::string_view id;
    std::string_view name; // in a sentence: "service disconnect"
    SignFor reason;
    SignPlace place;
    SignText text;
    // Two texts of which one holds: what the first and the other are for, and the other. Empty: there is one text.
    std::string_view first_for{}, other_for{};
    SignText other{};
    bool of_the_panel = false; // asked when the panel was fitted, not again for what is added to it
    bool advised = false;      // people are hurt without it, so it is named where no section asks, too
};

std::span<Sign const> signs();
// What a sentence calls a source that has no name.
SignText const& unnamed_supply();
// Before {source} is used, switch off {marks}.
SignText const& off_first();
// "en", "fr" or "es"; English for any other.
std::string_view in_language(SignText const& text, std::string_view language);

} // namespace legwork
