// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need/list.h"
#include "rules/need/sharing.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// "nothing else", or what may be there.
std::string may_share(CounterCircuit const& counter) {
    return counter.with_uses.empty()
               ? "such a circuit feeds counter receptacles and nothing else"
               : "such a circuit feeds the receptacles of kitchen, dining room and pantry and nothing else, no lights "
                 "and nothing fastened in place";
}

std::optional<Finding> too_many(Case const& c, HomeCircuit const& h, CounterCircuit const& counter) {
    Circuit const& circuit = *h.circuit;
    auto const count =
        std::max<std::int64_t>(circuit.outlet_count.value_or(0), static_cast<std::int64_t>(circuit.outlets.size()));
    if (!counter.receptacles_most || !is_named(h, "kitchen counter") || count <= counter.receptacles_most->value)
        return std::nullopt;
    auto f = finding(c, need_kitchen_share, Gravity::usual, about(circuit, "outlet_count"));
    f.reference.source = counter.receptacles_most->source;
    f.message = fmt::format("{} feeds {} counter receptacles; one circuit takes {} at most", circuit.mark, count,
                            counter.receptacles_most->value);
    say_if_existing(f, circuit);
    f.fix = fmt::format("Put {} of them on another counter circuit", count - counter.receptacles_most->value);
    return f;
}

Finding shared(Case const& c, Circuit const& circuit, std::vector<std::string> const& strangers) {
    auto const& counter = counter_circuit(c.book);
    auto f = finding(c, need_kitchen_share, Gravity::usual, about(circuit, "name"));
    f.reference.source = counter.source;
    f.message = fmt::format("{}: {} on a circuit of kitchen receptacles; {}", circuit.mark, listed(strangers),
                            may_share(counter));
    say_if_existing(f, circuit);
    f.fix = fmt::format("Move {} to another circuit", listed(strangers));
    return f;
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const home = home_of(c);
    if (!home) return seen.verdict();
    auto const& counter = counter_circuit(c.book);
    for (HomeCircuit const& h : home->circuits) {
        if (!is_counter_circuit(h, counter) && !is_named(h, "kitchen counter")) continue;
        seen.looked();
        if (auto const strangers = strangers_at_counter(h, counter); !strangers.empty())
            seen.found(shared(c, *h.circuit, strangers));
        else
            seen.found(too_many(c, h, counter));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const need_kitchen_share{
    .id = "need-kitchen-share",
    .asks = "A kitchen counter circuit feeds no more than the code lets it.",
    .why = "What hangs on it besides takes from what the counter needs. The CE Code lets two counter receptacles be on "
           "a circuit and nothing else; the NEC lets the circuit serve all receptacles of kitchen, dining room and "
           "pantry, but no lights and nothing fastened in place.",
    .remedy = "Move lights, dishwasher, disposer and the like to other circuits; split the counter over more circuits.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
