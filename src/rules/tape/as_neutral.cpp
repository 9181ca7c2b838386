// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/tape/list.h"
#include "rules/tape/remarked.h"
#include "words/catalogue.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// The plain fault is that it must not be; of a large wire it may, and readings of one code differ.
constexpr auto marked_at_ends = Gravity::second, readings_differ = Gravity::third;
Gravity::Of gravity(Remark remark) {
    if (remark == Remark::forbidden) return Gravity::usual;
    return remark == Remark::ask_first ? readings_differ : marked_at_ends;
}

std::string neutral_fix(Remarked const& r) {
    Conductor const& wire = *r.wire;
    bool const white = std::ranges::any_of(r.run->conductors, is_white, &Conductor::insulation);
    if (wire.remark == Remark::forbidden)
        return white ? "Make the white wire the neutral."
                     : fmt::format("Pull {} with a white wire in it.", r.run->kind);
    if (wire.remark == Remark::tape) return wrap(wire);
    return "Ask the inspector before it is pulled, and get it in writing; safest is a cable with a white wire. If it "
           "may "
           "be taped: white tape all round, at both ends and in every box.";
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const runs = cable_runs(c.building, c.book);
    seen.looked(pieces_with(runs, is_neutral));
    for (auto const& r : remarked(runs, [](Conductor const& w) { return is_neutral(w) && !is_ground_color(w); })) {
        Finding f = about_wire(c, tape_as_neutral, gravity(r.wire->remark), r);
        f.message = fmt::format("{}: in its {} the {} wire would be the neutral. {}", r.run->mark, kind_of(*r.run),
                                r.wire->color, english().words(r.wire->why));
        f.fix = neutral_fix(r);
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const tape_as_neutral{
    .id = "tape-as-neutral",
    .asks = "The neutral is white or grey as it is made.",
    .why = "A red or black wire with a bit of white tape looks hot again as soon as the tape is gone. The NEC forbids "
           "it for 6 AWG and smaller in conduit, and in a cable up to 2017; from 2020 on, and of the CE Code, readings "
           "differ in a cable, and many inspectors refuse it.",
    .remedy = "Use a cable with a white wire. Red and black cable is made for 240 V loads that need no neutral.",
    .gravity = {.nec = {Grade::error, Grade::note, Grade::warning}, .ce = {Grade::error, Grade::note, Grade::warning}},
    .stops_cables = false,
    .judge = judge,
};

} // namespace legwork
