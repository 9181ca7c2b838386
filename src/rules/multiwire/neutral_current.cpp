// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The current of the shared neutral in every situation and under every source, against the wire it runs in.
#include "balance/loads.h"
#include "panel/feeds.h"
#include "reckon/draw.h"
#include "reckon/leg_amps.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

namespace legwork {

namespace {
struct NeutralWorst {
    double amperes = 0;
    std::string_view situation;
    std::string source;
};
NeutralWorst worst_neutral(Case const& c, Pair const& p) {
    NeutralWorst worst;
    for (Feed const& feed : p.first->panel->feeds)
        for (Situation const* s : situations(c.building)) {
            if (s && !is_judged_on(*s, *p.first->panel, feed)) continue;
            double const n =
                neutral_amps(amps_of(*p.first, s, feed), amps_of(*p.second, s, feed), phase_degrees(feed.kind));
            if (n > worst.amperes) worst = {n, name_of(s), feed.source};
        }
    return worst;
}

Finding say(Case const& c, Pair const& p, NeutralWorst const& worst, Amps limit) {
    auto f = finding(c, mw_neutral_current, Gravity::usual, about(p, "load"));
    f.message = fmt::format("{} of current in the neutral that {} share {}{}, on {} AWG good for {}",
                            amps(worst.amperes), both(p), in_situation(worst.situation),
                            worst.source.empty() ? "" : fmt::format(" from \"{}\"", worst.source),
                            name(*shared_gauge(p)), amps(value(limit)));
    f.fix = "Move part of the larger load to another circuit, or pull a larger cable";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        auto const limit = neutral_ampacity(c, p);
        if (!limit || !p.first->panel || place_fault(c, p)) continue;
        auto const worst = worst_neutral(c, p);
        bool const over = is_over(worst.amperes, *limit);
        if (!over && !(is_draw_known(*p.first) && is_draw_known(*p.second))) continue;
        seen.looked();
        if (over) seen.found(say(c, p, worst, *limit));
        seen.margin(worst.amperes / value(*limit), [&] {
            return fmt::format("{} in the neutral of {}", used_of(worst.amperes, *limit), p.first->cable_mark());
        });
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_neutral_current{
    .id = "mw-neutral-current",
    .asks = "The current in a shared neutral stays within what its wire is good for.",
    .why = "Nothing trips on the neutral's current. It is worked out for every situation and every source: the "
           "difference of the two currents on opposite legs; on two phases of a wye they do not cancel, and two equal "
           "currents leave the same current again.",
    .remedy = "Move part of the larger load to another circuit, or pull a larger cable.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .accept = {Acceptance::Of::none, kUnseen},
    .judge = judge,
};

} // namespace legwork
