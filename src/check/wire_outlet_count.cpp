// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-outlet-count: many outlets on a circuit whose load nobody has reckoned.
#include "check/say.h"
#include "check/wire.h"
#include "check/wire_rating.h"
#include "codebook/outlet_count.h"

#include <fmt/format.h>

namespace legwork {

namespace {
int outlets_of(typed::Circuit const& c) { return c.outlet_count.value_or(static_cast<int>(c.outlets.size())); }
} // namespace

Findings wire_outlet_count(Case const& c) {
    Findings found;
    OutletCount const* limit = outlet_count(c.book);
    if (!limit) return found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        bool const known = circuit.load || circuit.measured;
        if (known || circuit.poles != 1 || on_dc(c, circuit)) continue;
        if (!circuit.breaker || *circuit.breaker > limit->breaker || outlets_of(circuit) <= limit->most) continue;
        Finding f = finding(c, "wire-outlet-count", Severity::warning, about(circuit, "outlet_count"));
        f.reference.source = limit->source;
        f.message = fmt::format("{} has {} on a {} breaker and its load is not known; {} are the most then.",
                                circuit.mark, plural(static_cast<std::size_t>(outlets_of(circuit)), "outlet"),
                                amps(value(*circuit.breaker)), limit->most);
        f.fix = fmt::format("Add up what hangs on it and write `load`, or put {} of them on another circuit.",
                            outlets_of(circuit) - limit->most);
        found.push_back(std::move(f));
    }
    return found;
}

} // namespace legwork
