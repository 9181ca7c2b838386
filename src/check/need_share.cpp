// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What hangs together on one circuit and should not, as far as names and counts tell.
#include "check/named_things.h"
#include "check/need_home.h"
#include "check/need_rules.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool has(std::span<std::string_view const> uses, std::string_view use) {
    return std::ranges::find(uses, use) != uses.end();
}

void say_if_existing(Finding& f, typed::Circuit const& c) {
    if (c.existing) f.message += " (asked of new work; this was there before)";
}

// Counter receptacles hang on it, or any of a kitchen where those count.
bool is_counter_circuit(HomeCircuit const& h, CounterCircuit const& counter) {
    if (h.circuit->poles != 1) return false;
    if (is_named(h, "kitchen counter")) return true;
    return counter.wall_receptacles_count && h.receptacles && h.places.any_of(places_of(Household::kitchen)) &&
           std::ranges::any_of(h.things, &Use::receptacle);
}

std::vector<std::string> strangers_at_counter(HomeCircuit const& h, CounterCircuit const& counter) {
    std::vector<std::string> strangers;
    if (!is_counter_circuit(h, counter)) return strangers;
    for (Use const* use : h.things)
        if (!use->receptacle && !has(counter.with_uses, use->name)) strangers.push_back(thing_name(*use));
    RoomPlaces allowed = counter.with_places;
    allowed.add({RoomPlace::house, RoomPlace::sink});
    auto const beside = places_beside(h.circuit->name, places_of(Household::kitchen));
    for (auto const& place : names_of(beside, allowed)) strangers.push_back("the " + place);
    return strangers;
}

// "nothing else", or what may be there.
std::string may_share(CounterCircuit const& counter) {
    return counter.with_uses.empty()
               ? "such a circuit feeds counter receptacles and nothing else"
               : "such a circuit feeds the receptacles of kitchen, dining room and pantry and nothing else, no lights "
                 "and nothing fastened in place";
}

std::optional<Finding> too_many(Case const& c, HomeCircuit const& h, CounterCircuit const& counter) {
    typed::Circuit const& circuit = *h.circuit;
    auto const count =
        std::max<std::int64_t>(circuit.outlet_count.value_or(0), static_cast<std::int64_t>(circuit.outlets.size()));
    if (!counter.receptacles_most || !is_named(h, "kitchen counter") || count <= counter.receptacles_most->value)
        return std::nullopt;
    auto f = finding(c, "need-kitchen-share", Severity::warning, about(circuit, "outlet_count"));
    f.reference.source = counter.receptacles_most->source;
    f.message = fmt::format("{} feeds {} counter receptacles; one circuit takes {} at most", circuit.mark, count,
                            counter.receptacles_most->value);
    say_if_existing(f, circuit);
    f.fix = fmt::format("Put {} of them on another counter circuit", count - counter.receptacles_most->value);
    return f;
}

// What this use may not share its circuit with, among the things that the name lists.
std::vector<std::string> strangers_of(OwnCircuit const& own, Use const& use, HomeCircuit const& h) {
    bool const in_bath = h.places.has(RoomPlace::bathroom);
    std::vector<std::string> strangers;
    for (Use const* other : h.things) {
        if (other == &use || has(own.with, other->name) || other->name == "appliance") continue;
        bool const one_unit = in_bath && use.heating && (other->lighting || other->name == "bath fan");
        if (!one_unit) strangers.push_back(thing_name(*other));
    }
    return strangers;
}

std::optional<Finding> shared(Case const& c, HomeCircuit const& h) {
    for (Use const* use : h.things) {
        auto const* own = own_circuit(c.book, use->name);
        if (!own) continue;
        auto const strangers = strangers_of(*own, *use, h);
        if (strangers.empty()) continue;
        auto f = finding(c, "need-dedicated", Severity::warning, about(*h.circuit, "name"), own->topic);
        f.reference.source = own->source;
        std::vector<std::string> together{thing_name(*use)};
        together.insert(together.end(), strangers.begin(), strangers.end());
        f.message =
            fmt::format("{}: {} on one circuit; the {} wants its own", h.circuit->mark, listed(together), use->name);
        say_if_existing(f, *h.circuit);
        f.fix = fmt::format("Give the {} its own circuit; if it has one, correct the name and `use` of {}", use->name,
                            h.circuit->mark);
        return f;
    }
    return std::nullopt;
}

std::optional<Finding> second_outlet(Case const& c, HomeCircuit const& h) {
    Use const* use = use_named(h.circuit->use);
    auto const* own = use ? own_circuit(c.book, use->name) : nullptr;
    int const count = h.circuit->outlet_count.value_or(1);
    if (!own || !own->one_outlet || count <= 1) return std::nullopt;
    auto f = finding(c, "need-dedicated", Severity::warning, about(*h.circuit, "outlet_count"), own->topic);
    f.reference.source = own->source;
    f.message = fmt::format("{} has {} outlets; the {} wants a circuit of its own, with one", h.circuit->mark, count,
                            use->name);
    say_if_existing(f, *h.circuit);
    f.fix = "Put the others on another circuit";
    return f;
}
} // namespace

Findings need_kitchen_share(Case const& c) {
    auto const home = home_of(c);
    if (!home) return {};
    auto const& counter = counter_circuit(c.book);
    Findings found;
    for (HomeCircuit const& h : home->circuits) {
        if (auto const strangers = strangers_at_counter(h, counter); !strangers.empty()) {
            auto f = finding(c, "need-kitchen-share", Severity::warning, about(*h.circuit, "name"));
            f.reference.source = counter.source;
            f.message = fmt::format("{}: {} on a circuit of kitchen receptacles; {}", h.circuit->mark,
                                    listed(strangers), may_share(counter));
            say_if_existing(f, *h.circuit);
            f.fix = fmt::format("Move {} to another circuit", listed(strangers));
            found.push_back(std::move(f));
        } else if (auto f = too_many(c, h, counter))
            found.push_back(std::move(*f));
    }
    return found;
}

Findings need_dedicated(Case const& c) {
    auto const home = home_of(c);
    if (!home) return {};
    auto const& counter = counter_circuit(c.book);
    Findings found;
    for (HomeCircuit const& h : home->circuits) {
        if (!strangers_at_counter(h, counter).empty()) continue; // need-kitchen-share speaks
        if (auto f = shared(c, h))
            found.push_back(std::move(*f));
        else if (auto g = second_outlet(c, h))
            found.push_back(std::move(*g));
    }
    return found;
}

} // namespace legwork
