// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/wire/load_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

bool over_breaker(Sides const& s) { return s.circuit.breaker && s.draw.current > *s.circuit.breaker; }
bool over_wire(Case const& c, Sides const& s) { return s.wire && on_the_wire(c, s) > good_for(c, s, *s.wire); }
bool are_known(Sides const& s) { return s.circuit.breaker && s.wire; }

std::string drawn(Case const& c, Sides const& s) {
    auto const current = amps(value(s.draw.current));
    if (s.draw.by == Draw::By::nameplate) return fmt::format("{} asks for {} (mca)", s.circuit.mark, current);
    auto words = fmt::format("{} draws {}", s.circuit.mark, current);
    if (s.draw.demand)
        words += fmt::format(" ({} VA demand of {} VA)", whole_va(s.draw.load), whole_va(*s.circuit.load));
    if (on_the_wire(c, s) > s.draw.current)
        words += fmt::format(", its motor needs a wire for {} ({} %)", amps(value(on_the_wire(c, s))),
                             c.book.motor_wire_percent.value);
    return words;
}

std::string larger(Case const& c, Sides const& s) {
    Circuit const& circuit = s.circuit;
    auto const n = needed(c, s);
    auto const size = standard_breaker_at_or_above(c.book, std::max(n.breaker, circuit.breaker.value_or(0_A)));
    auto const gauge = size ? gauge_for(c, circuit, *size, n.wire) : std::nullopt;
    if (!size || !gauge) return "Split the load over two circuits";
    bool const keep = circuit.breaker && *size == *circuit.breaker;
    return keep ? fmt::format("Pull {} all the way", wire_name(*gauge, circuit.metal))
                : fmt::format("Fit a {} breaker on {}", amps(value(*size)), wire_name(*gauge, circuit.metal));
}

std::string or_split(Sides const& s) {
    bool const one_thing = s.use && s.use->dedicated && !s.use->heating;
    return one_thing ? "." : ", or move part of the load to another circuit.";
}

} // namespace legwork
