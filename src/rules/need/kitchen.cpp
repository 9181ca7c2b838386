// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits of the kitchen counter: enough of them, each of the right rating, and split where they are small.
#include "rules/need/list.h"
#include "rules/need/part.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr WantedPart kPart{need_kitchen, Household::kitchen, "at the kitchen counter", "kitchen counter", ""};

// How many receptacles a circuit has, where that is known.
std::optional<int> receptacle_count(Circuit const& c) {
    if (c.outlet_count) return c.outlet_count;
    return c.single && c.outlets.size() == 1 ? std::optional(1) : std::nullopt;
}

// Both halves of a counter receptacle on one small circuit.
void judge_unsplit(Case const& c, HomeCircuit const& h, Inspection& seen) {
    auto const& least = counter_circuit(c.book).unsplit_amps;
    Circuit const& circuit = *h.circuit;
    if (!least || !is_named(h, "kitchen counter") || circuit.pair || circuit.split) return;
    if (!circuit.breaker) return;
    seen.looked();
    if (*circuit.breaker >= Amps{least->value * 1000}) return;
    auto f = finding(c, need_kitchen, Gravity::usual, about(circuit, "breaker"), "need-kitchen/split");
    f.message =
        fmt::format("{} feeds counter receptacles from a {} breaker; that is right only where each receptacle is "
                    "split between two hots of a three-wire cable, else it takes {} A",
                    circuit.mark, amps(value(*circuit.breaker)), least->value);
    if (circuit.existing) f.message += " (asked of new work; this was there before)";
    f.fix =
        fmt::format("Use a {} A breaker, wire for it and {} A receptacles, or a three-wire cable on a two-pole breaker "
                    "and `split = true` on both circuits",
                    least->value, least->value);
    seen.found(std::move(f));
}

std::vector<ServingCircuit> counter_servers(Case const& c, Home const& home) {
    auto servers = serving(home, Household::kitchen, household_circuits(c.book, Household::kitchen));
    auto const at_counter = [](ServingCircuit const& s) { return s.home->places.has(RoomPlace::counter); };
    if (!counter_circuit(c.book).wall_receptacles_count && std::ranges::any_of(servers, at_counter))
        std::erase_if(servers, [&](ServingCircuit const& s) { return !at_counter(s); });
    return servers;
}

// A counter circuit of the wrong rating beside enough right ones.
std::optional<Finding> odd_one(Case const& c, ServingCircuit const& s) {
    if (s.fault.empty() || !is_named(*s.home, "kitchen counter")) return std::nullopt;
    auto const& need = household_circuits(c.book, Household::kitchen);
    auto f = finding(c, need_kitchen, Gravity::usual, about(*s.home->circuit, "breaker"));
    f.message =
        fmt::format("{}; every circuit of the receptacles at the kitchen counter has {} A", s.fault, need.amps->value);
    if (s.home->circuit->existing) f.message += " (asked of new work; this was there before)";
    f.fix = mend(s, need);
    return f;
}

// One receptacle is served by one circuit, where the code says so.
bool one_will_do(Case const& c, std::vector<ServingCircuit> const& servers) {
    return counter_circuit(c.book).one_receptacle_circuits && servers.size() == 1 &&
           receptacle_count(*servers.front().home->circuit) == 1;
}

Verdict judge(Case const& c) {
    Inspection seen;
    auto const home = home_of(c);
    if (!home) return seen.verdict();
    auto const servers = counter_servers(c, *home);
    if (one_will_do(c, servers))
        seen.looked();
    else
        judge_part(c, *home, kPart, servers, seen);
    if (seen.silent())
        for (ServingCircuit const& s : servers) {
            auto odd = odd_one(c, s);
            if (odd) seen.looked();
            seen.found(std::move(odd));
        }
    for (HomeCircuit const& h : home->circuits) judge_unsplit(c, h, seen);
    return seen.verdict();
}
} // namespace

constinit Rule const need_kitchen{
    .id = "need-kitchen",
    .asks = "The receptacles at a dwelling's kitchen counter have two circuits at least.",
    .why = "Kettle, toaster and coffee maker draw 1500 W each, and two of them run at breakfast. On one circuit they "
           "trip it, and people reach for an extension cord.",
    .remedy = "Run two circuits to the counter, as two cables or as a multiwire pair. Where they are there under "
              "another name, write `use = \"kitchen counter\"` on each.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
