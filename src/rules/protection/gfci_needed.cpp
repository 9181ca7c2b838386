// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the code book asks of each circuit's outlets, against what the job says is there.
#include "codebook/cite.h"
#include "reckon/circuit_place.h"
#include "rules/need/named_things.h"
#include "rules/protection/lacks.h"
#include "rules/protection/list.h"

namespace legwork {

namespace {
constexpr ProtectionKind kGround{gfci_needed, "gfci", "GFCI", &Circuit::gfci, true};

std::optional<Day> today(Building const& building) {
    if (!building.date) return std::nullopt;
    return Day{building.date->year, building.date->month, building.date->day};
}

struct Gravest {
    Outlets outlets;
    GfciAsked asked;
};
// Of the things on it the one that most is asked of.
Gravest gravest(Case const& c, Circuit const& circuit) {
    std::optional<Gravest> most;
    for (Outlets& o : outlets_by_thing(c.building, circuit, things_of(circuit))) {
        auto const asked = gfci_asked(c.book, o, today(c.building));
        if (!most || asked.asks > most->asked.asks) most = Gravest{std::move(o), asked};
    }
    return *most;
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::vector<Lack> lacks;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc() || circuit.fed_panel()) continue;
        auto const [outlets, asked] = gravest(c, circuit);
        if (asked.asks == Asks::no || (asked.asks == Asks::relieved && circuit.existing)) continue;
        seen.looked();
        if (is_protected(circuit, kGround)) continue;
        Lack lack{&circuit, asked.asks, asked.row->topic, asked.row->what, asked.hangs_on, asked.until};
        lack.wired_in = plugged(outlets) != Plugged::surely;
        lack.not_of_a_dwelling = !c.building.dwelling && asked.row->of == GfciRow::Of::receptacles &&
                                 !cite(c.book, "gfci-needed/elsewhere").section.empty();
        lacks.push_back(std::move(lack));
    }
    seen.found(told(c, lacks, kGround));
    return seen.verdict();
}
} // namespace

constinit Rule const gfci_needed{
    .id = "gfci-needed",
    .asks = "Receptacles near water or earth, and what else the code names, have ground-fault protection.",
    .why = "A person who touches something live with wet hands, or standing on earth or concrete, carries a current "
           "that no ordinary breaker notices and that stops a heart. A ground-fault interrupter (GFCI) senses 5 mA "
           "going astray and opens within a few hundredths of a second.",
    .remedy = "Fit a GFCI breaker, or a GFCI receptacle as the first outlet with the others on its load side; on a "
              "pair that shares a neutral a two-pole GFCI breaker. Write gfci = \"breaker\" or \"outlet\".",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::note},
                .ce = {Grade::error_on_new_work, Grade::note},
                .doubt = "what it hangs on is not said, as how far a receptacle is from a sink"},
    .judge = judge,
};

} // namespace legwork
