// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/panel_rules.h"
#include "codebook/uses.h"
#include "panel/feeds.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace legwork {

namespace {
std::vector<Spot> slots_of(Case const& c, std::string_view mark) {
    Placement const* p = placement_of(c.plan, mark);
    return p ? p->slots : std::vector<Spot>{};
}

std::string source_of(Feed const& f) {
    return f.source.empty() ? fmt::format("The supply ({})", name(f.kind))
                            : fmt::format("\"{}\" ({})", f.source, name(f.kind));
}

// A load between the hots; a source, a feeder, a breaker without a wire is none.
bool is_240_load(Case const& c, typed::Circuit const& circuit) {
    if (circuit.poles != 2 || fed_panel(c.job, circuit)) return false;
    Use const* use = use_named(circuit.use);
    return !use || !(use->source || use->name == "feeder" || use->name == "spare");
}

bool all_live(std::vector<Feed> const& sources, Layout const& layout, std::vector<Spot> const& slots) {
    return std::ranges::all_of(slots, [&](Spot s) { return is_live(sources, layout, s.space); });
}

bool one_phase(Feed const& f) { return !is_dc(f.kind) && !has_two_hots(f.kind); }

std::optional<Finding> no_240(Case const& c, typed::Circuit const& circuit, std::vector<Feed> const& sources) {
    std::vector<std::string> bad, bad_but_off;
    for (Feed const& f : sources) {
        if (!one_phase(f)) continue;
        bool const off = std::ranges::find(f.off, circuit.mark) != f.off.end();
        (off ? bad_but_off : bad).push_back(source_of(f));
    }
    if (bad.empty() && bad_but_off.empty()) return std::nullopt;
    bool const sure = !bad.empty();
    auto f = finding(c, "panel-240-on-120", sure ? Severity::error : Severity::warning, about(circuit, "poles"));
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

// Circuits of one panel whose breakers are half-size in spaces that take none, breakers that share a space together.
struct Halves {
    std::set<int> spaces;
    std::vector<std::string> circuits;
};
std::vector<Halves> halves_where_none_fit(Case const& c, typed::Panel const& panel) {
    Layout const layout(panel);
    std::vector<Halves> found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (circuit.panel != panel.name) continue;
        Halves one{{}, {circuit.mark}};
        for (Spot const s : slots_of(c, circuit.mark))
            if (s.half != 0 && !layout.is_tandem(s.space)) one.spaces.insert(s.space);
        if (one.spaces.empty()) continue;
        auto const same = std::ranges::find_if(found, [&](Halves const& h) {
            return std::ranges::any_of(one.spaces, [&](int s) { return h.spaces.contains(s); });
        });
        if (same == found.end()) {
            found.push_back(std::move(one));
            continue;
        }
        same->spaces.merge(one.spaces);
        same->circuits.push_back(circuit.mark);
    }
    return found;
}

template <class Numbers>
std::string space_list(Numbers const& spaces) {
    std::vector<std::string> names;
    for (int const s : spaces) names.push_back(std::to_string(s));
    return (names.size() == 1 ? "space " : "spaces ") + listed(names);
}
} // namespace

Findings panel_240_on_120(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        auto const sources = feeds(c.job, panel);
        Layout const layout(panel);
        for (typed::Circuit const& circuit : c.job.circuits) {
            if (circuit.panel != panel.name || !is_240_load(c, circuit)) continue;
            if (!all_live(sources, layout, slots_of(c, circuit.mark))) continue; // panel-dead-space speaks
            if (auto f = no_240(c, circuit, sources)) found.push_back(std::move(*f));
        }
    }
    return found;
}

Findings panel_dead_space(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        auto const sources = feeds(c.job, panel);
        Layout const layout(panel);
        for (typed::Circuit const& circuit : c.job.circuits) {
            if (circuit.panel != panel.name || circuit.use == "spare") continue;
            for (Spot const s : slots_of(c, circuit.mark)) {
                if (is_live(sources, layout, s.space)) continue;
                auto f = finding(c, "panel-dead-space", Severity::error, about(circuit, "space"));
                f.message =
                    layout.is_dead(s.space)
                        ? fmt::format("{} stands on space {}, which the bus does not reach", circuit.mark, text(s))
                        : fmt::format("{} stands on space {} of leg {}, and no source feeds that leg", circuit.mark,
                                      text(s), letter(layout.leg(s.space)));
                f.fix = circuit.poles == 2 ? "It needs two live legs: feed the panel from a source that has them, or "
                                             "replace it by a 120 V load"
                                           : "Move it to a space of the leg that is fed";
                found.push_back(std::move(f));
                break;
            }
        }
    }
    return found;
}

Findings panel_two_legs(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels) {
        auto const sources = feeds(c.job, panel);
        if (std::ranges::none_of(sources, [](Feed const& f) { return has_two_hots(f.kind); })) continue;
        Layout const layout(panel);
        for (typed::Circuit const& circuit : c.job.circuits) {
            auto const at = slots_of(c, circuit.mark);
            if (circuit.panel != panel.name || at.size() != 2 || !all_live(sources, layout, at)) continue;
            Leg const leg = layout.leg(at[0].space);
            if (leg != layout.leg(at[1].space)) continue;
            auto f = finding(c, "panel-two-legs", Severity::error, about(circuit, "space"));
            f.message = fmt::format("Both poles of {} ({}) are on leg {}: there is no voltage between them",
                                    circuit.mark, spaces_of(c, circuit.mark), letter(leg));
            f.fix = "Move it to two neighbouring spaces of one column on different legs of this panel's bus";
            found.push_back(std::move(f));
        }
    }
    return found;
}

Findings panel_no_tandem(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels)
        for (Halves const& h : halves_where_none_fit(c, panel)) {
            auto f = finding(c, "panel-no-tandem", Severity::error, {panel.name, h.circuits, "space"});
            auto const takes =
                panel.tandem.empty() ? std::string("in no space") : "only in " + space_list(panel.tandem);
            f.message =
                fmt::format("{} {} half-size in {}, but panel \"{}\" takes half-size breakers {}", listed(h.circuits),
                            h.circuits.size() == 1 ? "is" : "are", space_list(h.spaces), panel.name, takes);
            f.fix = "Move them to full-size spaces or to spaces that take half-size breakers (the label in the panel's "
                    "door says which; list them under `tandem`)";
            found.push_back(std::move(f));
        }
    return found;
}

Findings panel_no_room(Case const& c) {
    Findings found;
    for (PanelPlan const& plan : c.plan.panels) {
        if (plan.why.empty()) continue;
        Where where{plan.panel, {}, "space"};
        for (Placement const& p : plan.placements)
            if (p.slots.empty()) where.circuits.push_back(p.circuit);
        auto f = finding(c, "panel-no-room", Severity::error, std::move(where));
        f.message = fmt::format("Panel \"{}\": {}", plan.panel, plan.why);
        f.fix = plan.moves_for_room
                    ? fmt::format("{} of present circuits would make room; `legwork balance` shows which",
                                  plural(static_cast<std::size_t>(*plan.moves_for_room), "move"))
                    : "Fit a larger panel or a sub-panel, or take circuits out";
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
