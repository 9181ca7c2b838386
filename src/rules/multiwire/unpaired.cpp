// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cable/run.h"
#include "rules/multiwire/list.h"
#include "rules/multiwire/pair_cable.h"

#include <fmt/format.h>

namespace legwork {

namespace {
bool uses_a_neutral(Circuit const& circuit) {
    Use const* use = circuit.use;
    return needs_neutral(circuit) || (use && (use->uses_neutral_at_240 || use->may_use_neutral_at_240));
}

// Said to be something, or at work by what the circuit is.
bool has_work(Circuit const& circuit) {
    return circuit.third != ThirdWire::unsaid || circuit.switch_loop || (circuit.poles == 2 && uses_a_neutral(circuit));
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        auto const run = circuit.pair ? std::nullopt : home_run(circuit);
        if (!run || run->insulated < 3) continue;
        seen.looked();
        if (has_work(circuit)) continue;
        auto f = finding(c, mw_unpaired, Gravity::usual, about(circuit, "cable"));
        f.message =
            fmt::format("{} is a {} circuit on {}: two of its {} insulated wires have work; what does the third "
                        "one do?",
                        circuit.mark, circuit.poles == 2 ? "two-pole" : "one-pole", run->kind, run->insulated);
        f.fix = "If it shares its neutral with another circuit, give both the same multiwire group; else say "
                "third = \"switched\", \"traveller\", \"interconnect\", \"spare\" or \"neutral\"";
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const mw_unpaired{
    .id = "mw-unpaired",
    .asks = "Every wire of a three-conductor cable has something to do.",
    .why = "A third insulated wire on a one-pole circuit, or on a 240 V circuit that needs no neutral, is often a "
           "multiwire pair that somebody forgot to write down. Its other hot may be live.",
    .remedy = "Say what the wire does: `third = \"switched\"`, `\"traveller\"`, `\"interconnect\"` (from smoke alarm "
              "to smoke "
              "alarm), `\"spare\"` or `\"neutral\"`, or name "
              "the pair with `multiwire`.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
