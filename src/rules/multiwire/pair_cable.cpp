// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire/pair_cable.h"

#include "reckon/leg_amps.h"
#include "reckon/wire_rating.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
CableKind const* kind_of_home_run(Circuit const& c) { return c.run.empty() ? nullptr : c.run.front().kind; }

// Both currents with everything on, under the source that drives most.
double most_of_both(Pair const& p) {
    double most = 0;
    if (Panel const* panel = p.first->panel)
        for (Feed const& f : panel->feeds)
            most = std::max(most, amps_of(*p.first, nullptr, f) + amps_of(*p.second, nullptr, f));
    return most;
}
} // namespace

std::optional<HomeRun> home_run(Circuit const& c) {
    CableKind const* kind = kind_of_home_run(c);
    if (!kind) return std::nullopt;
    auto const& colors = c.colors.empty() && c.pair ? c.partner()->colors : c.colors;
    if (!colors.empty()) return HomeRun{kind->name, static_cast<int>(colors.size())};
    return HomeRun{kind->name, kind->power ? kind->insulated : 0};
}

std::optional<Gauge> shared_gauge(Pair const& p) {
    CableKind const* kind = kind_of_home_run(*p.first);
    return kind ? kind->gauge : std::nullopt;
}

std::optional<Amps> neutral_ampacity(Case const& c, Pair const& p) {
    auto const gauge = shared_gauge(p);
    if (!gauge) return std::nullopt;
    auto const rating = wire_rating(c, *p.first, *gauge);
    return rating ? std::optional(rating->base) : std::nullopt;
}

std::string neutral_carries_the_sum(Case const& c, Pair const& p) {
    std::string words = "the shared neutral carries both currents added up";
    if (p.first->breaker && p.second->breaker)
        words = fmt::format("the shared neutral can carry {} before a breaker trips",
                            amps(value(*p.first->breaker + *p.second->breaker)));
    if (double const sum = most_of_both(p); sum > 0) words += fmt::format(", {} at the loads given", amps(sum));
    auto const gauge = shared_gauge(p);
    auto const limit = neutral_ampacity(c, p);
    if (gauge && limit) words += fmt::format(", on {} AWG good for {}", name(*gauge), amps(value(*limit)));
    return words;
}

} // namespace legwork
