// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit draws against its breaker and the smallest wire of its run.
#include "rules/wire/list.h"
#include "rules/wire/load_words.h"

#include <fmt/format.h>

namespace legwork {

namespace {
std::string_view load_topic(Case const& c, Sides const& s) {
    if (s.draw.demand) return "wire-load-fits/range";
    return !over_breaker(s) && on_the_wire(c, s) > s.draw.current ? "wire-load-fits/motor" : "wire-load-fits";
}

Finding overloaded(Case const& c, Sides const& s) {
    Finding f = finding(c, wire_load_fits, Gravity::usual, about(s.circuit, "load"), load_topic(c, s));
    std::string over;
    if (over_breaker(s)) over = fmt::format("its {} breaker", amps(value(*s.circuit.breaker)));
    if (over_wire(c, s))
        over += fmt::format("{}its {} good for {}", over.empty() ? "" : " and ",
                            wire_name(s.wire->gauge, s.wire->metal), amps(value(good_for(c, s, *s.wire))));
    f.message = fmt::format("{}, more than {}.", drawn(c, s), over);
    f.fix = larger(c, s) + or_split(s);
    return f;
}

std::optional<Finding> small_breaker_for_range(Case const& c, Sides const& s) {
    auto const least = least_for_range(c, s.circuit);
    if (!least || !s.circuit.breaker || *s.circuit.breaker >= *least) return std::nullopt;
    Finding f = finding(c, wire_load_fits, Gravity::usual, about(s.circuit, "breaker"), "wire-load-fits/large-range");
    f.message = fmt::format("{}: a range of {} VA on a {} breaker; from {} VA it has at least {}.", s.circuit.mark,
                            whole_va(*s.circuit.load), amps(value(*s.circuit.breaker)),
                            c.book.range.large_from_va->value, amps(value(*least)));
    f.fix = larger(c, s) + ".";
    return f;
}

void tell_margin(Case const& c, Sides const& s, Inspection& seen) {
    auto const tell = [&](Amps drawn, Amps limit, std::string_view of) {
        seen.margin(value(drawn) / value(limit), [&] {
            return fmt::format("{} on the {} of {}", used_of(value(drawn), limit), of, s.circuit.mark);
        });
    };
    tell(s.draw.current, *s.circuit.breaker, "breaker");
    tell(on_the_wire(c, s), good_for(c, s, *s.wire), "wire");
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        auto const s = sides(c, circuit);
        if (!s) continue;
        auto fault = over_breaker(*s) || over_wire(c, *s) ? overloaded(c, *s) : small_breaker_for_range(c, *s);
        if (!fault && !are_known(*s)) continue;
        seen.looked();
        if (!fault) tell_margin(c, *s, seen);
        seen.found(std::move(fault));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_load_fits{
    .id = "wire-load-fits",
    .asks = "What the circuit draws is within its breaker and its wire.",
    .why = "A load above the breaker trips it on the coldest evening; a load above the wire heats it. A range is "
           "reckoned at its branch demand, since all its elements never run together for long, a motor's wire at 125 % "
           "of its current.",
    .remedy = "Give the circuit a larger breaker and wire together, or move part of the load to another circuit.",
    .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
    .judge = judge,
};

} // namespace legwork
