// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Many outlets on a circuit whose load nobody has reckoned.
#include "codebook/outlet_count.h"
#include "reckon/draw.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
int outlets_of(Circuit const& c) { return c.outlet_count.value_or(static_cast<int>(c.outlets.size())); }

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        int const outlets = outlets_of(circuit);
        if (is_draw_known(circuit) || outlets == 0 || circuit.poles != 1 || circuit.on_dc()) continue;
        OutletCount const* limit = circuit.breaker ? outlet_count(c.book, *circuit.breaker) : nullptr;
        if (!limit) continue;
        seen.looked();
        if (outlets <= limit->most) {
            seen.margin(static_cast<double>(outlets) / limit->most,
                        [&] { return fmt::format("{} of {} outlets on {}", outlets, limit->most, circuit.mark); });
            continue;
        }
        Finding f = finding(c, wire_outlet_count, Gravity::usual, about(circuit, "outlet_count"));
        f.reference.source = limit->source;
        f.message = fmt::format("{} has {} on a {} breaker and its load is not known; {} are the most then.",
                                circuit.mark, plural(static_cast<std::size_t>(outlets), "outlet"),
                                amps(value(*circuit.breaker)), limit->most);
        f.fix = fmt::format("Add up what hangs on it and write `load`, or put {} of them on another circuit.",
                            outlets - limit->most);
        seen.found(std::move(f));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_outlet_count{
    .id = "wire-outlet-count",
    .asks = "A circuit whose load is not known has no more outlets than the code lets it.",
    .why = "Nobody knows what will be plugged in. With a dozen outlets on 15 A, sixteen on 20 A, the breaker mostly "
           "holds; beyond that the CE Code wants the load known (before 2021 twelve on 20 A too; a triplex receptacle "
           "counts as one and a half, a quadruplex as two). The NEC sets no number in dwellings.",
    .remedy = "Reckon the load and write it down, or divide the outlets between two circuits.",
    .gravity = {.ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
