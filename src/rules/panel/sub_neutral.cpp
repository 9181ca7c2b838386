// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/source_words.h"
#include "panel/feeds.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
std::string fed_by(Panel const& panel) {
    return panel.feeder_said ? fmt::format("panel \"{}\"", panel.above_called) : fmt::format("\"{}\"", panel.fed_from);
}

// What brings it power without a service: in words, and the key that tells; empty where a service does, as far as the
// job tells.
struct NoService {
    std::string words;
    std::string_view key;
};
NoService no_service(Panel const& panel) {
    std::vector<std::string> sources;
    for (Feed const& f : panel.feeds)
        if (named_source(f.source) != NamedSource::unsaid) sources.push_back(fmt::format("\"{}\"", f.source));
    if (!sources.empty()) return {listed(sources), "supplies"};
    if (named_source(panel.fed_from) != NamedSource::unsaid || is_on_wheels(panel.fed_from))
        return {fmt::format("\"{}\"", panel.fed_from), "fed_from"};
    bool const bridged = !panel.feeds.empty() && std::ranges::all_of(panel.feeds, [](Feed const& f) {
        return f.kind == SupplyKind::bridged_120;
    });
    if (bridged) return {"one hot on both legs, as by a cord, an inverter or a generator", "supply"};
    return {};
}

// A house with a grid keeps its bond at the service, whatever else can feed it.
bool has_grid(Panel const& panel) {
    return std::ranges::any_of(
        panel.feeds, [](Feed const& f) { return !f.source.empty() && named_source(f.source) == NamedSource::unsaid; });
}

Finding one_bond(Case const& c, Panel const& panel, NoService const& by) {
    auto f = finding(c, panel_sub_neutral, Gravity::usual, {panel.name, {}, std::string(by.key)});
    f.message =
        fmt::format("Panel \"{}\" is fed by {}: neutral and ground are joined in one place of all this, and the "
                    "job does not tell where",
                    panel.name, by.words);
    f.fix = "Find out where the one bond is before it is fed. On shore power or a cord from a building it is at that "
            "building's service, and this panel keeps neutral and ground apart. A generator or an inverter that feeds "
            "alone has it inside, or it is made at the first panel: its papers say which, and whether a relay opens it "
            "when shore power comes";
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        bool const below = panel.feeder_said || panel.above_named == Above::panel;
        if (panel.is_dc()) continue;
        if (auto const by = no_service(panel); !below && !by.words.empty() && !has_grid(panel)) {
            seen.looked();
            seen.found(one_bond(c, panel, by));
        }
        if (!below) continue;
        seen.looked();
        auto f =
            finding(c, panel_sub_neutral, Gravity::usual, {panel.name, {}, panel.feeder_said ? "feeder" : "fed_from"});
        f.message = fmt::format("Panel \"{}\" is fed from {}: neutral and ground are joined at the service only, and "
                                "kept apart here",
                                panel.name, fed_by(panel));
        f.fix =
            "Take out the bonding screw or strap; land white on the neutral bar, which stands off the box, and bare "
            "and green on a ground bar screwed to the box";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_sub_neutral{
    .id = "panel-sub-neutral",
    .asks =
        "Neutral and ground are joined in one place: not in a panel below another, and in a known one of what a cord "
        "or a source alone feeds.",
    .why = "Joined again in a sub-panel they share the neutral's current: it flows in ground wires, pipes and boxes, "
           "and GFCI breakers ahead trip. They are joined once, at the service. What hangs on a cord, an inverter or a "
           "generator has its one bond in any of several places; joined nowhere, a fault trips no breaker.",
    .remedy = "Take out the bonding screw or strap, and give the grounds a bar of their own.",
    .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
    .judge = judge,
};

} // namespace legwork
