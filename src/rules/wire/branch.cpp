// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit of a size may feed. The ratings of receptacles against their circuit are wire-outlet's.
#include "codebook/branch_limits.h"
#include "reckon/say.h"
#include "rules/need/named_things.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr auto heavy_duty = Gravity::second; // not in a dwelling: it may be right

using enum RoomPlace;
constexpr RoomPlaces kRooms{kitchen, counter, dining,  living,   bedroom,  loft,  hall, stair,
                            closet,  laundry, utility, bathroom, basement, house, sink};

struct Fed {
    Circuit const& circuit;
    std::vector<Use const*> things; // as its use and name list them
    bool lights = false;            // by its use
    bool lights_named = false;      // only its name says so
};

Fed fed_by(Circuit const& circuit) {
    Fed fed{circuit, things_of(circuit)};
    fed.lights = circuit.use && circuit.use->lighting;
    bool const own = circuit.use && circuit.use->dedicated; // "Range and its hood light"
    fed.lights_named = !fed.lights && !own && circuit.poles == 1 && std::ranges::any_of(fed.things, &Use::lighting);
    return fed;
}

// In the rooms where people live, as far as building and words tell.
bool in_dwelling(Case const& c, Circuit const& circuit) {
    return c.building.dwelling && (circuit.stands_in().empty() || circuit.places.any_of(kRooms));
}

bool above(Circuit const& circuit, std::optional<Figure> const& limit) {
    return limit && *circuit.breaker > Amps{limit->value * 1000};
}
std::string limit_words(Figure const& limit) { return amps(static_cast<double>(limit.value)); }

std::optional<Finding> lights_too_large(Case const& c, Fed const& fed) {
    auto const& limit = branch_limits(c.book).lights;
    Circuit const& circuit = fed.circuit;
    if (!above(circuit, limit)) return std::nullopt;
    // By their names alone, or outside: whether they count as the dwelling's is not known.
    bool const sure = fed.lights && (circuit.places.empty() || circuit.places.any_of(kRooms));
    auto f = finding(c, wire_branch, sure ? Gravity::usual : Gravity::doubtful, about(circuit, "breaker"));
    f.reference.source = limit->source;
    f.message = fmt::format("{}: lights of a dwelling on a {} breaker; they are on {} at most", circuit.mark,
                            amps(value(*circuit.breaker)), limit_words(*limit));
    f.fix = fed.lights ? fmt::format("Fit a {} breaker, or two where the load asks for more", limit_words(*limit))
                       : fmt::format("Put the lights on a circuit of {}; if none hang here, correct the name",
                                     limit_words(*limit));
    return f;
}

// Whoever has no list of types, and more than one outlet, plugs in what a house plugs in.
bool feeds_plain_receptacles(Circuit const& circuit) {
    return circuit.use && circuit.use->receptacle && circuit.poles == 1 && circuit.outlets.empty() && !circuit.single &&
           circuit.outlet_count.value_or(2) > 1;
}

std::optional<Finding> receptacles_too_large(Case const& c, Circuit const& circuit) {
    auto const& limit = branch_limits(c.book).receptacles;
    if (!feeds_plain_receptacles(circuit) || !above(circuit, limit)) return std::nullopt;
    bool const sure = circuit.places.any_of(kRooms);
    auto f = finding(c, wire_branch, sure ? Gravity::usual : Gravity::doubtful, about(circuit, "breaker"));
    f.reference.source = limit->source;
    f.message = fmt::format("{}: receptacles of a dwelling's rooms on a {} breaker; they are on {} at most",
                            circuit.mark, amps(value(*circuit.breaker)), limit_words(*limit));
    f.fix = fmt::format("Fit a {} breaker; if it is one receptacle for one thing, write its type: outlets = "
                        "[\"TT-30R\"]",
                        limit_words(*limit));
    return f;
}

std::optional<Finding> heavy_lights(Case const& c, Fed const& fed) {
    auto const& limit = branch_limits(c.book).heavy_duty_above;
    if (!fed.lights || !above(fed.circuit, limit)) return std::nullopt;
    auto f = finding(c, wire_branch, heavy_duty, about(fed.circuit, "breaker"), "wire-branch/heavy-duty");
    f.reference.source = limit->source;
    f.message =
        fmt::format("{}: lights on a {} breaker; above {} only lampholders of the heavy-duty kind may hang there",
                    fed.circuit.mark, amps(value(*fed.circuit.breaker)), limit_words(*limit));
    f.fix = fmt::format("Read the rating on the lampholders; ordinary ones go on {} or less", limit_words(*limit));
    return f;
}

// Fastened in place, and not a fan that hangs on the lights of its room.
bool is_barred_from_small(Use const& use) {
    bool const fan = use.place == UsePlace::bathroom && use.motor;
    return use.receptacle || ((use.fixed || use.dedicated) && !fan);
}

std::optional<Finding> on_small(Case const& c, Fed const& fed) {
    auto const& limit = branch_limits(c.book).small;
    Circuit const& circuit = fed.circuit;
    if (!limit || *circuit.breaker > Amps{limit->value * 1000}) return std::nullopt;
    Use const* use = circuit.use;
    bool const receptacles = !circuit.outlets.empty() || (use && use->receptacle);
    if (!receptacles && !(use && is_barred_from_small(*use))) return std::nullopt;
    auto f = finding(c, wire_branch, Gravity::usual, about(circuit, "breaker"), "wire-branch/small");
    f.reference.source = limit->source;
    f.message = fmt::format("{}: {} on a {} circuit, which is for lights and little else", circuit.mark,
                            receptacles ? std::string("receptacles") : thing_name(*use), amps(value(*circuit.breaker)));
    f.fix = "Give it a breaker of 15 A or 20 A, and wire for it";
    return f;
}

bool is_judged(Circuit const& circuit) {
    return !circuit.on_dc() && circuit.breaker && !circuit.fed_panel() && !circuit.is_source() &&
           !circuit.is(PanelPart::feeder) && !circuit.is_spare();
}

std::optional<Finding> fault_of(Case const& c, Fed const& fed) {
    if (auto f = on_small(c, fed)) return f;
    if (!in_dwelling(c, fed.circuit)) return heavy_lights(c, fed);
    if (fed.lights || fed.lights_named)
        if (auto f = lights_too_large(c, fed)) return f;
    return receptacles_too_large(c, fed.circuit);
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        if (!is_judged(circuit)) continue;
        auto const fed = fed_by(circuit);
        auto fault = fault_of(c, fed);
        if (!fault && !fed.lights && !fed.lights_named && !feeds_plain_receptacles(circuit)) continue;
        seen.looked();
        seen.found(std::move(fault));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_branch{
    .id = "wire-branch",
    .asks = "Lights and receptacles are on circuits no larger, and no smaller, than they may be.",
    .why = "The cord of a lamp and the wires in a fixture are thin: a large breaker lets them glow and never trips. So "
           "lights and receptacles of the rooms of a home stand on 15 A or 20 A, under the CE Code lights on 15 A; the "
           "10 A circuit of the NEC from 2023 is for lights and little else. Larger circuits are for one appliance.",
    .remedy = "Fit the smaller breaker, or split what hangs there; what needs more gets a circuit and a receptacle of "
              "its own.",
    .gravity = {.nec = {Grade::error_on_new_work, Grade::note},
                .ce = {Grade::error_on_new_work, Grade::note},
                .doubt = "whether it hangs in the rooms of the dwelling is told by a name alone, or not at all"},
    .judge = judge,
};

} // namespace legwork
