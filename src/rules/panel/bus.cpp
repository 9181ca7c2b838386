// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The bus of a panel against the breakers that stand before it.
#include "reckon/say.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
struct Protector {
    Amps amps;
    std::string words; // "its main of 200 A"
    Where where;
};

void keep_smaller(std::optional<Protector>& least, Protector other) {
    if (!least || other.amps < least->amps) least = std::move(other);
}

// The smallest breaker before the bus: in the panel, or anywhere ahead of it on what feeds it. What is not known may be
// smaller still, and is not taken for it.
std::optional<Protector> protector_of(Panel const& panel) {
    std::optional<Protector> least;
    if (panel.main)
        least = {*panel.main, fmt::format("its main of {}", amps(value(*panel.main))), {panel.name, {}, "main"}};
    for (Circuit const* circuit : panel.circuits)
        if (circuit->is(PanelPart::main) && circuit->breaker)
            keep_smaller(least, {*circuit->breaker,
                                 fmt::format("its main {} of {}", circuit->mark, amps(value(*circuit->breaker))),
                                 about(*circuit, "breaker")});
    std::vector<Panel const*> passed; // a ring of feeders is told elsewhere
    for (Panel const* p = &panel; p && p->feeder && std::ranges::find(passed, p) == passed.end(); p = p->above) {
        passed.push_back(p);
        if (!p->feeder->breaker) continue;
        auto words = fmt::format("the breaker of its feeder {}, {}", p->feeder->mark, amps(value(*p->feeder->breaker)));
        keep_smaller(least, {*p->feeder->breaker, std::move(words), about(*p->feeder, "breaker")});
        if (p->above && p->above->main)
            keep_smaller(least,
                         {*p->above->main,
                          fmt::format("the main of panel \"{}\", {}", p->above->name, amps(value(*p->above->main))),
                          {p->above->name, {}, "main"}});
    }
    return least;
}

Finding too_large(Case const& c, Panel const& panel, std::string const& words, Where where) {
    auto f = finding(c, panel_bus, Gravity::usual, std::move(where), {}, panel.existing);
    f.message = fmt::format("Panel \"{}\": its bus is good for {}, and the smallest breaker before it is {}",
                            panel.name, amps(value(*panel.bus)), words);
    f.fix =
        fmt::format("Fit a main of {0} or less in the panel, feed it from a breaker of {0} or less, or take a panel "
                    "with a larger bus; read both on their labels first",
                    amps(value(*panel.bus)));
    return f;
}

// A generator feeds the bus alone, so its breaker is the one before it then.
void judge_inlets(Case const& c, Panel const& panel, Inspection& seen) {
    for (Circuit const* circuit : panel.circuits) {
        if (!circuit->is(PanelPart::generator_inlet) || !circuit->breaker || *circuit->breaker <= *panel.bus) continue;
        seen.found(too_large(
            c, panel, fmt::format("{} of {} while the generator runs", circuit->mark, amps(value(*circuit->breaker))),
            about(*circuit, "breaker")));
    }
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (panel.is_dc() || !panel.bus) continue;
        auto const before = protector_of(panel);
        if (!before) continue;
        seen.looked();
        if (before->amps > *panel.bus) seen.found(too_large(c, panel, before->words, before->where));
        seen.margin(value(before->amps) / value(*panel.bus), [&] {
            return fmt::format("{} of bus in panel \"{}\"", used_of(value(before->amps), *panel.bus), panel.name);
        });
        judge_inlets(c, panel, seen);
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_bus{
    .id = "panel-bus",
    .asks = "The main of a panel, or without one the breaker of its feeder, is within the rating of its bus.",
    .why = "The bus bars carry everything that the panel feeds. Behind a main larger than they are made for they heat "
           "for hours, with the breakers that are clipped to them, and nothing trips.",
    .remedy =
        "Read bus and main on the label in the door. Fit the smaller main, or a panel with the larger bus. An old "
        "service panel without one main may be let off by its code: ask.",
    .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work}},
    .accept = {},
    .judge = judge,
};

} // namespace legwork
