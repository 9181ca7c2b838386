// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_note.h"

#include <fmt/format.h>

namespace legwork {

namespace {
void say(Finding& f, std::string const& marks) {
    f.message = fmt::format("{}: in the panel it must be plain which neutral belongs to which hots", marks);
    f.fix = "Tie each pair's hots and neutral together once in the panel, or put the printed N marker on the neutral";
}

Verdict judge(Case const& c) {
    if (cite(c.book, mw_grouping.id).section.empty()) return Inspection{}.verdict(); // this code does not ask it
    return note_of_pairs(c, mw_grouping, say);
}
} // namespace

constinit Rule const mw_grouping{
    .id = "mw-grouping",
    .asks = "In the panel it is plain which neutral belongs to which hots.",
    .why = "Among a dozen white wires nobody can see whose neutral they are about to lift. Lifting the shared one with "
           "a breaker on puts up to 240 V on the lighter load.",
    .remedy = "Tie each pair's hots and neutral together at least once in the panel, or mark the neutral with the "
              "circuits: the printed N marker does it.",
    .gravity = {.nec = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
