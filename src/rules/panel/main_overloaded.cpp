// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What each leg carries, in every situation and from every source, against the main, the feeder and the source.
#include "reckon/leg_amps.h"
#include "reckon/run_drop.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto everything_on = Gravity::second; // and not in a named situation

// What limits a panel's current while one source feeds the house.
struct Limit {
    Amps most;
    std::string what; // "the main", "the feeder" (its neutral too)
    bool of_source = false;
};
std::optional<Limit> limit_of(Panel const& panel, Feed const& feed) {
    std::optional<Limit> least;
    auto const add = [&](std::optional<Amps> a, std::string what, bool of_source = false) {
        if (a && (!least || *a < least->most)) least = Limit{*a, std::move(what), of_source};
    };
    add(panel.main, "the main");
    if (panel.feeder_said) {
        if (panel.feeder) add(panel.feeder->breaker, "the feeder");
    } else {
        add(feed.amps, feed.source.empty() ? "the supply" : fmt::format("\"{}\"", feed.source), !feed.source.empty());
    }
    return least;
}

struct DrawnAmps {
    double amperes = 0;
    std::string what; // "Leg A of panel \"Main\" draws"
    std::string when;
};
DrawnAmps drawn(Panel const& panel, InUse const& use, Feed const& feed) {
    auto const [a, b] = use.legs;
    std::string const when = words(use), where = fmt::format("panel \"{}\"", panel.name);
    if (is_dc(feed.kind)) return {a, fmt::format("The bus of {} draws", where), when};
    if (phase_degrees(feed.kind) == 0 && energizes(feed, Leg::a) && energizes(feed, Leg::b)) // one hot feeds both
        return {a + b, fmt::format("Both legs of {} together draw", where), when};
    return {std::max(a, b), fmt::format("Leg {} of {} draws", a >= b ? 'A' : 'B', where), when};
}

Finding overload(Case const& c, Panel const& panel, Feed const& feed, Limit const& limit, DrawnAmps const& worst,
                 bool runs) {
    auto f = finding(c, panel_main_overloaded, runs ? Gravity::usual : everything_on, {panel.name, {}, "main"});
    f.message = fmt::format("{} {} {}{}, more than {} carries, {}", worst.what, amps(worst.amperes), worst.when,
                            feed.source.empty() ? "" : fmt::format(" from \"{}\"", feed.source), limit.what,
                            amps(value(limit.most)));
    bool const is_named =
        std::ranges::any_of(c.building.situations, [&](Situation const& s) { return is_judged_on(s, panel, feed); });
    // One hot feeds both legs of it, or there is one: nothing moves to another.
    bool const has_other_leg = !is_dc(feed.kind) && phase_degrees(feed.kind) != 0;
    if (runs)
        f.fix = fmt::format("Leave something off then, {}or have {} reckoned: it may have to grow",
                            has_other_leg ? "move load to the other leg (`legwork balance`), " : "",
                            limit.of_source ? "the source" : "the service");
    else if (!is_named)
        f.fix = "It need not matter, since not everything runs at once: name the situations that do happen" +
                (feed.source.empty() ? std::string(", and they are judged")
                                     : fmt::format(" (supply = \"{}\"), and they are judged", feed.source));
    else
        f.fix = "Hold to the named situations: each of them stays within it";
    return f;
}

void judge_source(Case const& c, Panel const& panel, Feed const& feed, Inspection& seen) {
    auto const limit = limit_of(panel, feed);
    if (!limit) return;
    DrawnAmps connected = drawn(panel, {leg_amps(c, panel, nullptr, feed), nullptr, nullptr, true}, feed), named;
    for (InUse const& use : in_use(c, panel, feed))
        if (!use.everything)
            if (auto d = drawn(panel, use, feed); d.amperes > named.amperes) named = std::move(d);
    auto const over = [&](DrawnAmps const& d) { return is_over(d.amperes, limit->most); };
    bool const runs = over(named), is_fault = runs || over(connected);
    double const most = std::max(connected.amperes, named.amperes);
    if (!is_fault && (most <= 0 || !loads_known(panel))) return; // nothing is on it, or more than is known
    seen.looked();
    if (is_fault) return seen.found(overload(c, panel, feed, *limit, runs ? named : connected, runs));
    seen.margin(most / value(limit->most), [&] {
        return fmt::format("{} on {} of panel \"{}\"", used_of(most, limit->most), limit->what, panel.name);
    });
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels)
        for (Feed const& feed : panel.feeds) judge_source(c, panel, feed, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const panel_main_overloaded{
    .id = "panel-main-overloaded",
    .asks = "Each leg stays within the main and the source in every named situation.",
    .why = "A leg that draws more than the main carries trips it on the coldest evening. Everything on at once may "
           "well be more than the main: that is only a note, since whether the service is large enough is a question "
           "of the load calculation.",
    .remedy = "Leave something off in that situation, even out the legs, or enlarge the service.",
    .gravity = {.nec = {Grade::warning, Grade::note}, .ce = {Grade::warning, Grade::note}},
    .judge = judge,
};

} // namespace legwork
