// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/wire/outlet_volts.h"

#include <algorithm>

namespace legwork {

namespace {
// A neutral lies in the home run as it is made.
bool has_neutral(std::vector<CableRun> const& runs, Circuit const& c) {
    return std::ranges::any_of(runs, [&](CableRun const& run) {
        return run.segment == 0 && run.missing_hots == 0 && run.missing_neutrals == 0 &&
               std::ranges::find(run.circuits, c.mark) != run.circuits.end() &&
               std::ranges::find(run.conductors, ConductorJob::neutral, &Conductor::job) != run.conductors.end();
    });
}
} // namespace

bool volts_fit(std::vector<CableRun> const& runs, Circuit const& circuit, Receptacle const& r) {
    if (r.hots == 2) return circuit.poles == 2 || circuit.partner();
    if (circuit.poles == 1) return true;
    if (r.never_two_pole) return false;
    bool const beside_240 = std::ranges::any_of(circuit.outlets, [](Receptacle const* o) { return o->hots == 2; });
    return beside_240 || has_neutral(runs, circuit); // beside 240 V outlets wire-conductors asks for the neutral
}

} // namespace legwork
