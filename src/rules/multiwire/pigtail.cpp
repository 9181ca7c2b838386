// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_note.h"

#include <fmt/format.h>

namespace legwork {

namespace {
void say(Finding& f, std::string const& marks) {
    f.message = fmt::format("{}: at every box the shared neutral must stay joined when a device is taken off", marks);
    f.fix = "Splice the neutrals in the box and run one short wire (a pigtail) to each device; no neutral through the "
            "device's terminals";
}

Verdict judge(Case const& c) { return note_of_pairs(c, mw_pigtail, say); }
} // namespace

constinit Rule const mw_pigtail{
    .id = "mw-pigtail",
    .asks = "The neutral of a multiwire pair does not run through a device.",
    .why = "If the neutral goes in at one terminal of a receptacle and out at another, taking that receptacle off "
           "opens the neutral for everything beyond, and the two circuits stand in series across 240 V.",
    .remedy = "Splice the neutrals together in the box and bring one short wire from the splice to the device.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
