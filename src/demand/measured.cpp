// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Adding to a service whose peak is known: NEC 220.87, CE 8-106(8).
#include "demand/climate.h"
#include "demand/methods.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

void measured(Work& w, PeakLoads const& p, Dwelling::Peak const& peak) {
    auto const volts = w.q.facts.volts;
    auto const va = whole_va(volts * peak.amps);
    auto const source = p.percent.source;
    auto const drawn = say("load/amps-by-volts", said(peak.amps), said(volts), figure(va));
    auto const share = p.percent.value == 100 ? Phrase() : as_share(va, p.percent.value);
    w.steps.counted(say("load/peak", figure(peak.days)), "measured", one_by_one({drawn, share}),
                    share_of(va, p.percent.value), {}, source);
    auto const added = only(w.loads.items, [](LoadItem const& i) { return i.is_new; });
    add_unknown(w.unknown, added);
    for (LoadItem const& i : only(added, [](LoadItem const& n) { return !is_climate(n); }))
        w.steps.counted(say("load/new", i.label), "measured", i.how, i.va, i.marks(), source);
    ClimateShares shares;
    shares.topic = shares.rest_topic = shares.cooling_topic = "measured";
    add_climate(w.steps, w.q.building, added, shares);
    if (std::ranges::any_of(w.loads.managed, &LoadItem::is_new)) add_managed(w, LoadStep::Kind::counted);
    w.notes.push_back(say("load/peak-holds"));
}

} // namespace legwork
