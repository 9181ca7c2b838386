// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "reckon/wire_need.h"

#include <algorithm>

namespace legwork {

namespace {
bool lighting_is_continuous(Case const& c) { return !c.building.dwelling || c.book.dwelling_lighting_continuous; }

std::string_view topic_of(Use const& use) {
    if (use.demand == Demand::water_heating) return "wire-continuous/water-heater";
    if (use.demand == Demand::vehicle) return "wire-continuous/vehicle-charger";
    return use.heating ? "wire-continuous/heating" : "wire-continuous";
}

std::optional<Continuous> heating_by_wire(Case const& c, Use const* use, Continuous::Breaker breaker) {
    if (!use || !use->heating || c.book.heating_is_continuous) return std::nullopt;
    return Continuous{"fixed heating", "wire-continuous/heating", false, breaker};
}
} // namespace

std::optional<Sides> sides(Case const& c, Circuit const& circuit) {
    Use const* use = circuit.use;
    if (circuit.on_dc() || circuit.feeds_loads() || (use && use->source)) return std::nullopt;
    auto const draw = draw_of(c, circuit);
    if (!draw) return std::nullopt;
    auto const piece = thinnest_piece(circuit);
    return Sides{circuit, use, *draw, piece ? wire_rating(c, circuit, piece->gauge) : std::nullopt};
}

Amps on_the_wire(Case const& c, Sides const& s) {
    bool const motor = s.circuit.is_motor() && !s.circuit.mca;
    return motor ? percent(s.draw.current, c.book.motor_wire_percent.value) : s.draw.current;
}

bool wire_in_full(Case const& c, Sides const& s) { return c.book.heating_wire_in_full && s.use && s.use->heating; }

Amps good_for(Case const& c, Sides const& s, WireRating const& wire) {
    return wire_in_full(c, s) ? wire.base : wire.ampacity;
}

std::optional<Continuous> continuous(Case const& c, Circuit const& circuit) {
    Use const* use = circuit.use;
    if (circuit.mca) return std::nullopt; // has the quarter in it
    if (circuit.continuous)
        return *circuit.continuous ? Continuous{"continuous", "wire-continuous"}
                                   : heating_by_wire(c, use, Continuous::Breaker::no);
    if (auto const heating = heating_by_wire(c, use, Continuous::Breaker::perhaps)) return heating;
    if (use && use->continuous) return Continuous{"continuous by use", topic_of(*use)};
    if (use && use->lighting)
        return lighting_is_continuous(c) ? std::optional(Continuous{"continuous by use", "wire-continuous"})
                                         : std::nullopt;
    if (!c.book.presumes_continuous || (use && use->intermittent)) return std::nullopt;
    return Continuous{"presumed continuous", "wire-continuous/presumed", true};
}

std::optional<Amps> least_for_range(Case const& c, Circuit const& circuit) {
    Use const* use = circuit.use;
    auto const& range = c.book.range;
    if (!use || !use->branch_demand || !range.large_from_va || !circuit.load) return std::nullopt;
    if (*circuit.load < VoltAmperes{range.large_from_va->value * 1000}) return std::nullopt;
    return Amps{range.large_least_breaker->value * 1000};
}

Needed needed(Case const& c, Sides const& s) {
    Needed n{s.draw.current, on_the_wire(c, s)};
    if (auto const why = continuous(c, s.circuit)) {
        auto const share = c.book.continuous_percent.value;
        Amps const with_share{(s.draw.current.count * 100 + share - 1) / share};
        if (why->breaker != Continuous::Breaker::no) n.breaker = with_share;
        if (!wire_in_full(c, s)) n.wire = std::max(n.wire, with_share);
    }
    if (auto const least = least_for_range(c, s.circuit)) n.breaker = std::max(n.breaker, *least);
    return n;
}

} // namespace legwork
