// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/circuit_place.h"
#include "rules/need/named_things.h"
#include "rules/protection/lacks.h"
#include "rules/protection/list.h"

#include <fmt/format.h>

namespace legwork {

namespace {
constexpr ProtectionKind kArc{afci_needed, "afci", "AFCI", &Circuit::afci, false};

struct Gravest {
    Outlets outlets;
    Asks asks;
};
// Of the things on it the one that most is asked of.
Gravest gravest(Case const& c, Circuit const& circuit) {
    std::optional<Gravest> most;
    for (Outlets& o : outlets_by_thing(c.building, circuit, things_of(circuit))) {
        auto const asks = afci_asked(c.book, o);
        if (!most || asks > most->asks) most = Gravest{std::move(o), asks};
    }
    return *most;
}

Verdict judge(Case const& c) {
    Inspection seen;
    std::vector<Lack> lacks;
    for (Circuit const& circuit : c.building.circuits) {
        if (circuit.on_dc() || circuit.fed_panel()) continue;
        auto const [outlets, asks] = gravest(c, circuit);
        if (asks == Asks::no) continue;
        seen.looked();
        if (is_protected(circuit, kArc)) continue;
        AfciTable const& table = afci_table(c.book);
        auto places = outlets.places.of(table.rooms);
        if (places.has(RoomPlace::kitchen)) places = places.without({RoomPlace::counter});
        auto const rooms = names(places);
        Lack lack{&circuit, asks, afci_needed.id, table.what, outlets.breaker ? table.hangs_on : table.no_breaker, {}};
        if (!rooms.empty()) lack.place = fmt::format(" ({})", listed(rooms));
        if (!rooms.empty() && asks == Asks::yes) lack.what = table.there;
        lacks.push_back(std::move(lack));
    }
    seen.found(told(c, lacks, kArc));
    return seen.verdict();
}
} // namespace

constinit Rule const afci_needed{
    .id = "afci-needed",
    .asks = "In a dwelling, the circuits that the code names have arc-fault protection.",
    .why = "A nail through a cable or a worn cord arcs at a current that no ordinary breaker notices, and sets what is "
           "round it on fire. An arc-fault interrupter (AFCI) knows the pattern of such an arc.",
    .remedy = "Fit an AFCI breaker, or one that senses arc and ground faults both where both are asked; on a pair that "
              "shares a neutral a two-pole one. Write afci = \"breaker\".",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::note},
                .ce = {Grade::error_on_new_work, Grade::note},
                .doubt = "what it hangs on is not said"},
    .judge = judge,
};

} // namespace legwork
