// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/job/measure.h"

#include "reckon/backfeed.h"
#include "reckon/circuit_place.h"
#include "reckon/draw.h"
#include "rules/need/named_things.h"
#include "rules/protection/list.h"

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
using Keys = std::vector<std::string>;

void add(Keys& keys, std::string_view key) {
    if (std::ranges::find(keys, key) == keys.end()) keys.emplace_back(key);
}

// What hangs on the circuit decides which figures it must have.
struct FiguresNeeded {
    bool cable = true, load = true;
};
FiguresNeeded needs_of(Circuit const& c) {
    if (c.on_dc()) return {!c.is_spare(), !c.is_spare() && !c.is_source() && !c.fed_panel() && !c.off};
    bool const no_load_of_its_own = c.use && (c.use->source || c.use->demand == Demand::none);
    FiguresNeeded needs;
    if (c.is_spare() || c.is(PanelPart::main) || c.is(PanelPart::surge_protector)) needs.cable = false;
    needs.load = !no_load_of_its_own && !c.fed_panel() && !c.off;
    return needs;
}

Keys missing_keys(Circuit const& c) {
    Keys keys;
    auto const needs = needs_of(c);
    if (!c.breaker && !c.is_spare()) add(keys, c.on_dc() ? "fuse" : "breaker");
    bool const no_kind = c.run.empty() || std::ranges::any_of(c.run, [](Piece const& p) { return p.called.empty(); });
    bool const no_length = c.run.empty() || std::ranges::any_of(c.run, [](Piece const& p) { return !p.length; });
    if (needs.cable && no_kind) add(keys, "cable");
    if (needs.cable && no_length) add(keys, "length");
    if (needs.load && !is_draw_known(c)) add(keys, "load");
    for (std::string const& key : c.asked)
        if (c.on_dc() && key == "breaker")
            add(keys, "fuse");
        else if (key != "name" && key != "room" && !(key == "load" && is_draw_known(c)))
            add(keys, key);
    return keys;
}

Keys missing_keys(Run const& cable) {
    Keys keys; // one that is typed as "?" is missing too
    if (cable.piece.called.empty()) add(keys, "kind");
    if (!cable.piece.length) add(keys, "length");
    return keys;
}

// Without these nothing holds what hangs on a block of fuses against anything.
Keys dc_keys(Panel const& panel) {
    Keys keys;
    if (!panel.is_dc() || panel.circuits.empty()) return keys;
    if (!panel.output && !panel.feeder_said) add(keys, "output");
    if (!panel.bus) add(keys, "bus");
    for (std::string const& key : panel.asked) std::erase(keys, key);
    return keys;
}

// What no note tells: without the main a leg is held against nothing, and panel-backfeed speaks of its own figures.
Keys quiet_keys(Case const& c, Panel const& panel) {
    Keys keys;
    bool const on_its_own = !panel.feeder_said && !panel.main;
    if (on_its_own) add(keys, "main");
    auto const b = backfeed_of(c, panel);
    if (b.leave == BackfeedLeave::not_known) {
        if (!b.bus) add(keys, "bus");
        if (!b.ahead) add(keys, "main");
        if (!b.share.exact()) add(keys, "output");
    }
    if (b.leave == BackfeedLeave::far_end && !main_end(c, panel)) add(keys, "main_at");
    for (std::string const& key : panel.asked) std::erase(keys, key);
    return keys;
}

// What the two rules of protection found, of which old work may have what they ask for without anybody having written
// so.
struct ProtectionAsked {
    Findings ground_fault, arc_fault;
};

bool names(Findings const& found, Circuit const& c) {
    return std::ranges::any_of(found, [&](Finding const& f) { return std::ranges::count(f.where.circuits, c.mark); });
}

Keys protection_keys(Circuit const& c, ProtectionAsked const& asked) {
    Keys keys;
    if (!c.existing) return keys;
    if (c.gfci == Protection::unsaid && names(asked.ground_fault, c)) add(keys, "gfci");
    if (c.afci == Protection::unsaid && names(asked.arc_fault, c)) add(keys, "afci");
    return keys;
}

ProtectionAsked protection_asked(Case const& c) {
    return {judged(gfci_needed, c).findings(), judged(afci_needed, c).findings()};
}

// Nothing tells what hangs on it, and it stands where protection would be asked of much that may.
bool gfci_hangs_on_use(Case const& c, Circuit const& circuit) {
    if (circuit.on_dc() || circuit.fed_panel()) return false;
    auto const things = things_of(circuit);
    return things.empty() && gfci_hangs_on_use(c.book, outlets_of(c.building, circuit));
}

// The panel that a source feeds, when it is one.
std::string panel_of_supply(Building const& building, Supply const& supply) {
    std::string only;
    for (Panel const& p : building.panels) {
        if (std::ranges::find(p.supplies, &supply) == p.supplies.end()) continue;
        if (!only.empty()) return {};
        only = p.name;
    }
    return only;
}

ToMeasure one(Subject thing, std::string id, std::string panel, std::string key) {
    ToMeasure made{thing, std::move(id), std::move(panel), {}, std::move(key), true};
    auto const& rows = how_to_measure(thing);
    if (auto const at = std::ranges::find(rows, made.key, &HowToMeasure::key); at != rows.end()) made.how = *at;
    return made;
}

// Things that people plug in have no one nameplate, so their load is clamped at the panel.
void place_the_load(ToMeasure& m, Circuit const& c) {
    bool const one_thing = c.use ? !c.use->receptacle && !c.use->lighting : c.poles == 2 || c.motor.value_or(false);
    if (one_thing) return;
    m.how.at = Station::panel;
    m.how.cover = PanelCover::off_live;
    m.how.with = "a clamp meter; or paper, to add up the nameplates";
}

// What nobody has built yet has no handle and no jacket to read.
void choose_sizes(ToMeasure& m, Circuit const& c) {
    auto const& rows = how_to_choose(c.listed && !c.on_dc() && !c.is_source());
    auto const at = std::ranges::find(rows, m.key, &HowToMeasure::key);
    m.chosen = !c.existing && at != rows.end();
    if (m.chosen) m.how = *at;
}

void add_all(std::vector<ToMeasure>& list, Subject thing, std::string const& id, std::string const& panel, Keys keys,
             bool noted = true) {
    auto const& rows = how_to_measure(thing);
    std::ranges::stable_sort(keys, {}, [&](auto const& k) { return std::ranges::find(rows, k, &HowToMeasure::key); });
    for (std::string& key : keys) {
        list.push_back(one(thing, id, panel, std::move(key)));
        list.back().noted = noted;
    }
}
} // namespace

std::vector<ToMeasure> to_measure(Case const& c) {
    std::vector<ToMeasure> list;
    auto const& building = c.building;
    add_all(list, Subject::job, "", "", building.asked);
    if (building.dwelling) add_all(list, Subject::dwelling, "", "", building.dwelling->asked);
    if (building.dwelling && !building.dwelling->area && building.dwelling->asked.empty())
        add_all(list, Subject::dwelling, "", "", {"area"}, false);
    for (Supply const& s : building.supplies)
        add_all(list, Subject::supply, s.name, panel_of_supply(building, s), s.asked);
    for (Panel const& p : building.panels) {
        auto noted = p.asked;
        for (std::string& key : dc_keys(p)) noted.push_back(std::move(key));
        add_all(list, Subject::panel, p.name, p.name, std::move(noted));
        add_all(list, Subject::panel, p.name, p.name, quiet_keys(c, p), false);
    }
    auto const asked = protection_asked(c);
    for (Circuit const& circuit : building.circuits) {
        auto const first = list.size();
        auto const panel = panel_name(circuit);
        auto keys = missing_keys(circuit);
        if (gfci_hangs_on_use(c, circuit)) add(keys, "use");
        add_all(list, Subject::circuit, circuit.mark, panel, keys);
        for (auto i = first; i < list.size(); ++i) {
            if (list[i].key == "load") place_the_load(list[i], circuit);
            choose_sizes(list[i], circuit);
        }
        add_all(list, Subject::circuit, circuit.mark, panel, protection_keys(circuit, asked), false);
    }
    for (Run const& run : building.runs)
        if (!run.of_circuit) add_all(list, Subject::cable, run.mark, "", missing_keys(run));
    return list;
}

} // namespace legwork
