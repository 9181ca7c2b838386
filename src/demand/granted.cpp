// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a calculation takes for granted, whatever its method.
#include "demand/methods.h"
#include "words/say.h"

namespace legwork {

void add_granted(LoadCalculation& load, LoadQuestion const& q) {
    auto const loads = loads_of(q);
    Phrases guessed;
    for (LoadItems const* some : {&loads.items, &loads.managed})
        for (LoadItem const& i : *some)
            if (i.circuit->use_guessed)
                guessed.push_back(say("load/mark-and-use", i.circuit->mark, as_is(i.use->name)));
    if (!guessed.empty()) load.notes.push_back(say("load/taken-from-names", joined("list/comma", guessed)));
    if (!load.whole_dwelling) return;
    for (Panel const& p : q.building.panels)
        if (!p.feeder_said && p.number != q.panel.number && !q.panel.feeder_said && !p.is_dc() &&
            !circuits_under(p).empty())
            load.notes.push_back(say("load/fed-by-itself", p.name));
}

} // namespace legwork
