// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/open_neutral.h"

#include "balance/loads.h"
#include "panel/feeds.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_place.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
double most_volts(Panel const& panel) {
    double most = 0;
    for (Feed const& f : panel.feeds) most = std::max(most, value(volts_between_legs(f.kind)));
    return most;
}

std::string what_each_sees(Pair const& p, double volts) {
    auto const a = pole_va(*p.first, nullptr, 120_V), b = pole_va(*p.second, nullptr, 120_V);
    if (a <= 0 || b <= 0)
        return fmt::format("If the neutral of {} opens, the circuit with the lighter load sees up to {:.0f} V", both(p),
                           volts);
    auto const [first, second] = open_neutral(static_cast<double>(a), static_cast<double>(b), volts);
    if (a == b)
        return fmt::format("If the neutral of {} opens, each sees {:.0f} V while both draw the same, and the lighter "
                           "load up to {:.0f} V when they do not",
                           both(p), first, volts);
    return fmt::format("If the neutral of {} opens, {} sees {:.0f} V and {} sees {:.0f} V at the loads given: the "
                       "lighter load gets the higher voltage",
                       both(p), p.first->mark, first, p.second->mark, second);
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Pair const& p : c.building.pairs) {
        Panel const* panel = p.first->panel;
        if (!panel || place_fault(c, p)) continue;
        double const volts = most_volts(*panel);
        if (volts <= 0) continue;
        seen.looked();
        auto f = finding(c, mw_open_neutral, Gravity::usual, about(p));
        f.message = what_each_sees(p, volts);
        f.fix = "Tighten the neutral's splices and its terminal to the torque marked; never open it with a breaker on";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

OpenNeutral open_neutral(double first_va, double second_va, double volts_between) {
    double const sum = first_va + second_va; // resistances in series: the voltages go as 1 / VA
    return {volts_between * second_va / sum, volts_between * first_va / sum};
}

constinit Rule const mw_open_neutral{
    .id = "mw-open-neutral",
    .asks = "What each circuit of a pair would see if their neutral came loose.",
    .why = "Without the neutral the two circuits are in series across both legs and share 240 V as their resistances "
           "do. The lighter load has the higher resistance and gets the higher voltage: a phone charger beside a "
           "kettle gets nearly all of it.",
    .remedy = "Tighten neutral splices and terminals to their marked torque, check them again after a season, and "
              "never part the neutral with a breaker on.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
