// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/named_things.h"
#include "rules/need/sharing.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// What this use may not share its circuit with, among the things that the name lists.
std::vector<std::string> strangers_of(OwnCircuit const& own, Use const& use, HomeCircuit const& h) {
    bool const in_bath = h.places.has(RoomPlace::bathroom);
    std::vector<std::string> strangers;
    for (Use const* other : h.things) {
        if (other == &use || is_among(own.with, other->name) || (other->unspecific && !other->receptacle)) continue;
        bool const one_unit =
            in_bath && use.heating && (other->lighting || (other->place == UsePlace::bathroom && other->motor));
        if (!one_unit) strangers.push_back(thing_name(*other));
    }
    return strangers;
}

// What the code asks of this use on this circuit; null where it does not.
OwnCircuit const* asked_of(Case const& c, HomeCircuit const& h, Use const& use) {
    auto const* own = own_circuit(c.book, use.name, h.circuit->poles);
    if (!own || h.places.any_of(own->let_off)) return nullptr;
    auto const& load = h.circuit->load;
    bool const small = own->above_w && load && *load <= VoltAmperes{own->above_w->value * 1000};
    return small ? nullptr : own;
}

// "the oven", "a microwave in a cupboard or enclosure"
std::string wanting(OwnCircuit const& own) {
    return own.which.empty() ? fmt::format("the {}", own.use) : fmt::format("a {} {}", own.use, own.which);
}

std::optional<Finding> shared(Case const& c, HomeCircuit const& h) {
    for (Use const* use : h.things) {
        auto const* own = asked_of(c, h, *use);
        if (!own) continue;
        auto const strangers = strangers_of(*own, *use, h);
        if (strangers.empty()) continue;
        auto f = finding(c, need_dedicated, Gravity::usual, about(*h.circuit, "name"), own->topic);
        f.reference.source = own->source;
        std::vector<std::string> together{thing_name(*use)};
        together.insert(together.end(), strangers.begin(), strangers.end());
        f.message =
            fmt::format("{}: {} on one circuit; {} wants its own", h.circuit->mark, listed(together), wanting(*own));
        say_if_existing(f, *h.circuit);
        f.fix = fmt::format("Give the {} its own circuit; if it has one, correct the name and `use` of {}", use->name,
                            h.circuit->mark);
        return f;
    }
    return std::nullopt;
}

std::optional<Finding> second_outlet(Case const& c, HomeCircuit const& h) {
    Use const* use = h.circuit->use;
    auto const* own = use ? asked_of(c, h, *use) : nullptr;
    int const count = h.circuit->outlet_count.value_or(1);
    if (!own || !own->one_outlet || count <= 1) return std::nullopt;
    auto f = finding(c, need_dedicated, Gravity::usual, about(*h.circuit, "outlet_count"), own->topic);
    f.reference.source = own->source;
    f.message = fmt::format("{} has {} outlets; {} wants a circuit of its own, with one", h.circuit->mark, count,
                            wanting(*own));
    say_if_existing(f, *h.circuit);
    f.fix = "Put the others on another circuit";
    return f;
}

bool wants_its_own(Case const& c, HomeCircuit const& h) {
    return std::ranges::any_of(h.things, [&](Use const* use) { return asked_of(c, h, *use) != nullptr; });
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const home = home_of(c);
    if (!home) return seen.verdict();
    auto const& counter = counter_circuit(c.book);
    for (HomeCircuit const& h : home->circuits) {
        if (!wants_its_own(c, h) || !strangers_at_counter(h, counter).empty()) continue; // need-kitchen-share speaks
        seen.looked();
        auto f = shared(c, h);
        seen.found(f ? std::move(f) : second_outlet(c, h));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const need_dedicated{
    .id = "need-dedicated",
    .asks = "What wants a circuit of its own shares it with nothing.",
    .why = "A furnace whose breaker trips for a vacuum cleaner freezes the house, and a charger or a water heater "
           "leaves no room for anything beside it. Told only where a circuit's name or its number of outlets shows "
           "that it shares.",
    .remedy = "Give it its own circuit; or correct the name if nothing else hangs on it.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
