// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How many supplies lead from elsewhere into a building that the job names. A pair is one.
#include "codebook/outbuilding.h"
#include "rules/panel/list.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace legwork {

namespace {
// Where a panel stands. When it does not say, but each of its many circuits names one building, it stands there and
// they all stay inside.
std::string house_of(Panel const& panel) {
    if (!panel.building.empty()) return panel.building;
    std::set<std::string> named;
    std::size_t circuits = 0;
    for (Circuit const* c : panel.circuits) {
        if (c->fed_panel()) continue;
        named.insert(c->building);
        ++circuits;
    }
    return circuits > 3 && named.size() == 1 ? *named.begin() : std::string();
}

struct Supplies {
    std::vector<Circuit const*> circuits; // of a pair the first
    std::vector<std::string> marks;       // both of a pair
    std::vector<std::string> words;       // "the feeder SP and"
    bool own_service = false;             // a panel in the building has a source of its own
    int total() const { return static_cast<int>(circuits.size()) + own_service; }
};

// The building that a circuit leads into; empty when it stays where its panel is, or leads nowhere that is named.
std::string led_into(Circuit const& c) {
    auto const into_panel = c.fed_panel() ? house_of(*c.fed_panel()) : std::string();
    auto const into = into_panel.empty() ? c.building : into_panel;
    return c.panel && house_of(*c.panel) == into ? std::string() : into;
}

bool is_supply(Circuit const& c) { return !c.is_spare() && !c.is_source() && !c.on_dc(); }

Supplies supplies_of(Building const& building, std::string const& house) {
    Supplies found;
    for (Circuit const& circuit : building.circuits) {
        if (!is_supply(circuit) || led_into(circuit) != house) continue;
        found.marks.push_back(circuit.mark);
        if (std::ranges::count(found.circuits, circuit.partner()) > 0) continue;
        found.circuits.push_back(&circuit);
        found.words.push_back(fmt::format("{} {} of panel \"{}\"", circuit.fed_panel() ? "feeder" : "circuit",
                                          circuit.cable_mark(), panel_name(circuit)));
    }
    for (Panel const& panel : building.panels) {
        if (panel.feeder_said || house_of(panel) != house || panel.is_dc()) continue;
        if (!found.own_service) found.words.push_back(fmt::format("what feeds panel \"{}\"", panel.name));
        found.own_service = true; // two panels of one building may hang on one service
    }
    return found;
}

bool all_feeders_of_one_panel(Supplies const& s) {
    return !s.own_service && std::ranges::all_of(s.circuits, [&](Circuit const* one) {
        return one->fed_panel() && one->panel == s.circuits.front()->panel;
    });
}

// 120 V and 240 V branch circuits, one of each.
bool each_its_own_volts(Supplies const& s) {
    std::set<int> poles;
    for (Circuit const* one : s.circuits)
        if (one->fed_panel() || !poles.insert(one->poles).second) return false;
    return !s.own_service;
}

// An exception that may let these supplies be.
struct Doubt {
    std::string words;
    Source source;
};
std::optional<Doubt> doubt(Case const& c, Supplies const& s) {
    auto const& rule = outbuilding_supplies(c.book);
    if (all_feeders_of_one_panel(s) && s.total() <= rule.feeders_from_one_panel.value)
        return Doubt{fmt::format("up to {} feeders of one panel may do where their disconnects stand together",
                                 rule.feeders_from_one_panel.value),
                     rule.feeders_from_one_panel.source};
    if (each_its_own_volts(s) && s.total() <= rule.other_volts.value)
        return Doubt{"supplies of different voltage may do", rule.other_volts.source};
    return std::nullopt;
}

Finding too_many(Case const& c, std::string const& house, Supplies const& s) {
    auto const exception = doubt(c, s);
    bool const one_panel = !s.circuits.empty() && std::ranges::all_of(s.circuits, [&](Circuit const* one) {
        return one->panel == s.circuits.front()->panel;
    });
    auto f = finding(c, panel_outbuilding, Gravity::usual,
                     {one_panel ? panel_name(*s.circuits.front()) : "", s.marks, "building"});
    if (exception) f.reference.source = exception->source;
    f.message = fmt::format("\"{}\" has {} supplies: {}; {} one feeder or branch circuit (a multiwire pair counts as "
                            "one), so that one switch makes all of it dead",
                            house, s.total(), listed(s.words),
                            outbuilding_supplies(c.book).one_only ? "the code allows" : "good practice is");
    if (exception)
        f.message +=
            fmt::format("; {}{}", exception->source == Source::memory ? "from memory, " : "", exception->words);
    f.fix = exception
                ? "Ask the inspector, and hang a sign at each that names the other; or feed a small panel there by one "
                  "feeder"
                : "Feed a small panel there by one feeder, or put two 120 V circuits on one cable as a multiwire pair";
    return f;
}

Verdict judge(Case const& c) {
    std::set<std::string> houses;
    for (Circuit const& circuit : c.building.circuits)
        if (is_supply(circuit)) houses.insert(led_into(circuit));
    houses.erase("");
    Inspection seen;
    for (std::string const& house : houses) {
        seen.looked();
        if (auto const s = supplies_of(c.building, house); s.total() > 1) seen.found(too_many(c, house, s));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const panel_outbuilding{
    .id = "panel-outbuilding",
    .asks = "A building apart has one supply.",
    .why = "Somebody switches off the breaker they know of and reaches into a box that a second one still feeds. One "
           "feeder, one branch circuit or one multiwire pair, and one switch, make the building dead.",
    .remedy = "Feed a small panel there by one feeder.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
