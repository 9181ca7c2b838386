// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the tape notes say, card by card, before anybody asks how large it is.
#pragma once

#include "cable/run.h"
#include "sheet/sheets.h"

#include <string>
#include <vector>

namespace legwork {

// One conductor at one end of its cable.
struct WireNote {
    std::string color;       // as the job or the kind of cable names it: what it is drawn in
    std::string color_words; // the same in the sheet's language
    std::string job;         // "hot of K1"
    std::string lands;       // "breaker 8"; empty when it must not land anywhere
    Remark remark = Remark::as_made;
    std::string tape;       // colour of the tape; empty for as_made and forbidden
    std::string tape_words; // "red tape", "as made", "no tape"
    std::string ask_words;  // "ask first"; empty but for ask_first
    std::string why;        // sentences, with the code's reference
};

struct CableNote {
    std::string mark;               // "K1+K2"
    std::string about;              // "12/3 from panel Main"
    std::vector<std::string> stops; // errors that stand against landing these wires; framed, before them
    std::vector<WireNote> wires;
    std::vector<std::string> remarks; // tie, first split, meter check, what changes here
    std::vector<std::string> faults;  // what the cable lacks; framed
};

struct BoxCard {
    std::string title; // name of the box or panel
    bool is_panel = false;
    std::string heading; // "Panel Main"; of a box its name
    std::string under;   // "box end, Kitchen"; may be empty
    std::vector<CableNote> cables;
    std::vector<std::string> missing; // what the job would have to say for the rest to be told
    bool dc_only = false;             // nothing of alternating current ends here
};

// Panels first, then the boxes as the cables reach them, each in the file's order.
std::vector<BoxCard> tape_cards(SheetInput const& input);
// Marks of the cables that these cards leave out, since no circuit is on them.
std::vector<std::string> other_cables(Building const& building);
// [[cable]]s that say whose they are, "K1a (of K1)": live, and not wired here.
std::vector<std::string> live_between_boxes(SheetInput const& input);

} // namespace legwork
