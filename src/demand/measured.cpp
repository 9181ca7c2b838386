// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Adding to a service whose peak is known: NEC 220.87, CE 8-106(8).
#include "demand/climate.h"
#include "demand/methods.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

void measured(Work& w, PeakLoads const& p, Dwelling::Peak const& peak) {
    auto const volts = w.q.facts.volts;
    auto const va = whole_va(volts * peak.amps);
    auto const source = p.percent.source;
    auto const drawn = fmt::format("{} × {} = {} VA", text(peak.amps), text(volts), va);
    auto const words = fmt::format("Largest draw of {} days", peak.days);
    if (p.percent.value == 100)
        w.steps.counted(words, "measured", drawn, va, {}, source);
    else
        w.steps.counted(words, "measured", drawn + ", " + as_share(va, p.percent.value), share_of(va, p.percent.value),
                        {}, source);
    auto const added = only(w.loads.items, [](LoadItem const& i) { return i.is_new; });
    add_unknown(w.unknown, added);
    for (LoadItem const& i : only(added, [](LoadItem const& n) { return !is_climate(n); }))
        w.steps.counted("New: " + i.label, "measured", i.how, i.va, i.marks(), source);
    ClimateShares shares;
    shares.topic = shares.rest_topic = shares.cooling_topic = "measured";
    add_climate(w.steps, w.q.building, added, shares);
    if (std::ranges::any_of(w.loads.managed, &LoadItem::is_new)) add_managed(w, LoadStep::Kind::counted);
    w.notes.emplace_back("What stood there when the peak was read (existing = true) is within it; the rest is new and "
                         "counts in full.");
}

} // namespace legwork
