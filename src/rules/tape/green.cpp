// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/tape/list.h"
#include "rules/tape/remarked.h"
#include "words/catalogue.h"

#include <fmt/format.h>

namespace legwork {

namespace {
Verdict judge(Case const& c) {
    Inspection seen;
    auto const runs = cable_runs(c.building, c.book);
    seen.looked(pieces_with(runs, is_any));
    for (auto const& r : remarked(runs, is_ground_color)) {
        Finding f = about_wire(c, tape_green, Gravity::usual, r);
        f.message =
            fmt::format("{}: in its {} the {} wire would be {}. {}", r.run->mark, kind_of(*r.run), r.wire->color,
                        is_neutral(*r.wire) ? "the neutral" : "hot", english().words(r.wire->why));
        f.fix = "Pull a cable with enough black, red and white wires; leave the green to the ground.";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const tape_green{
    .id = "tape-green",
    .asks = "A green or bare wire is the ground and never anything else.",
    .why = "People touch green and bare wires, and the metal they are bonded to. Current in them makes frames, boxes "
           "and covers live.",
    .remedy = "Pull a cable with enough insulated wires. No tape makes a green wire hot or neutral.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, "Whoever touches a green or bare wire takes it for ground."},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
