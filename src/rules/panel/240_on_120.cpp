// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel/list.h"
#include "rules/panel/places.h"

#include <fmt/format.h>

namespace legwork {

namespace {
constexpr auto kept_off = Gravity::second; // by hand, under every source of one phase

std::string source_of(Feed const& f) {
    return f.source.empty() ? fmt::format("The supply ({})", name(f.kind))
                            : fmt::format("\"{}\" ({})", f.source, name(f.kind));
}

// A load between the hots; a source, a feeder, a breaker without a wire is none.
bool is_240_load(Circuit const& c) {
    return c.poles == 2 && !c.fed_panel() && !c.is_source() && !c.is(PanelPart::feeder) && !c.is_spare();
}

bool one_phase(Feed const& f) { return !is_dc(f.kind) && !has_two_hots(f.kind); }

std::optional<Finding> no_240(Case const& c, Panel const& panel, Circuit const& circuit) {
    std::vector<std::string> bad, bad_but_off;
    for (Feed const& f : panel.feeds) {
        if (!one_phase(f)) continue;
        (is_off(f, circuit) ? bad_but_off : bad).push_back(source_of(f));
    }
    if (bad.empty() && bad_but_off.empty()) return std::nullopt;
    bool const sure = !bad.empty();
    auto f = finding(c, panel_240_on_120, sure ? Gravity::usual : kept_off, about(circuit, "poles"));
    auto const& which = sure ? bad : bad_but_off;
    f.message =
        fmt::format("{} {} no voltage between the hots: {} needs both legs and gets nothing useful{}", listed(which),
                    which.size() == 1 ? "has" : "have", circuit.mark, sure ? "" : ", and is kept off by hand only");
    f.fix =
        sure ? fmt::format("Feed {} from a source of 120/240 V, replace it by a 120 V load, or list it under `off` of "
                           "that source and switch it off there",
                           circuit.mark)
             : "Hang the printed list beside the panel and lock the breaker off before the source is switched over";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (panel.feeds.empty()) continue;
        for (Circuit const* circuit : panel.circuits) {
            if (!is_240_load(*circuit)) continue;
            if (!all_live(panel, slots_of(c, circuit->mark))) continue; // panel-dead-space speaks
            seen.looked();
            seen.found(no_240(c, panel, *circuit));
        }
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_240_on_120{
    .id = "panel-240-on-120",
    .asks = "No 240 V load is fed by a supply of one phase.",
    .why = "A 120 V source bridged to both legs puts nothing between the two hots of a 240 V load, so it stays cold. "
           "From a source on one leg the load even passes its voltage on to the dead leg, where 120 V loads in series "
           "with it get what they are not made for.",
    .remedy = "Feed it from 120/240 V, choose a 120 V load, or list it under `off` of that source and keep it switched "
              "off there; the list is printed beside the panel.",
    .gravity = {.nec = {Grade::error, Grade::warning}, .ce = {Grade::error, Grade::warning}},
    .accept = {Acceptance::Of::none, kDead},
    .judge = judge,
};

} // namespace legwork
