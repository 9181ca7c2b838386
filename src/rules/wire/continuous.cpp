// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A load that runs for hours, against its share of breaker and wire.
#include "rules/wire/list.h"
#include "rules/wire/load_words.h"

#include <fmt/format.h>

namespace legwork {

namespace {
constexpr auto presumed = Gravity::second; // continuous since nobody showed that it rests

// The share of breaker and wire that a load for hours may take; nothing for what is taken in full or not known.
struct Shares {
    std::optional<Amps> of_breaker, of_wire;
};
Shares shares(Case const& c, Sides const& s, Continuous const& why) {
    auto const share = c.book.continuous_percent.value;
    Shares most;
    if (s.circuit.breaker && why.breaker != Continuous::Breaker::no)
        most.of_breaker = percent(*s.circuit.breaker, share);
    if (s.wire && !wire_in_full(c, s)) most.of_wire = percent(s.wire->ampacity, share);
    return most;
}

std::string over_words(Sides const& s, Shares const& most) {
    std::string over;
    if (most.of_breaker && s.draw.current > *most.of_breaker)
        over = fmt::format("the {} breaker ({})", amps(value(*s.circuit.breaker)), amps(value(*most.of_breaker)));
    if (most.of_wire && s.draw.current > *most.of_wire)
        over +=
            fmt::format("{}{} good for {} ({})", over.empty() ? "" : " and ", wire_name(s.wire->gauge, s.wire->metal),
                        amps(value(s.wire->ampacity)), amps(value(*most.of_wire)));
    return over;
}

Finding say(Case const& c, Sides const& s, Continuous const& why, Shares const& most, std::string const& over) {
    bool const of_wire = most.of_wire && s.draw.current > *most.of_wire;
    bool const may_rest = why.presumed || (why.breaker == Continuous::Breaker::perhaps && !of_wire);
    Finding f = finding(c, wire_continuous, may_rest ? presumed : Gravity::usual, about(s.circuit, "load"), why.topic);
    f.message =
        fmt::format("{}, {}: more than {} % of {}.", drawn(c, s), why.words, c.book.continuous_percent.value, over);
    f.fix = larger(c, s) + (may_rest ? ", or say continuous = false if it never runs for hours." : or_split(s));
    return f;
}

void tell_margin(Sides const& s, Shares const& most, Inspection& seen) {
    for (auto const& limit : {most.of_breaker, most.of_wire})
        if (limit)
            seen.margin(value(s.draw.current) / value(*limit), [&] {
                return fmt::format("{} on {}", used_of(value(s.draw.current), *limit), s.circuit.mark);
            });
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Circuit const& circuit : c.building.circuits) {
        auto const s = sides(c, circuit);
        auto const why = s ? continuous(c, circuit) : std::nullopt;
        if (!why || over_breaker(*s) || over_wire(c, *s)) continue; // wire-load-fits speaks
        auto const most = shares(c, *s, *why);
        auto const over = over_words(*s, most);
        if (over.empty() && !are_known(*s)) continue;
        seen.looked();
        if (over.empty())
            tell_margin(*s, most, seen);
        else
            seen.found(say(c, *s, *why, most, over));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_continuous{
    .id = "wire-continuous",
    .asks = "A load that runs for three hours or more takes at most 80 % of breaker and wire.",
    .why =
        "A breaker in a warm panel trips below its rating after hours of full load, and its terminals age. Storage "
        "water heaters, heating and vehicle chargers are continuous by use; the CE Code presumes it of every load "
        "that is not shown to rest. From 2020 on the NEC gives the wire of fixed heating its quarter, and its breaker "
        "only where it runs for hours.",
    .remedy = "Go one breaker and wire size up, or say continuous = false for a load that never runs for hours.",
    .gravity = {.nec = {Grade::error, Grade::warning}, .ce = {Grade::error, Grade::warning}},
    .judge = judge,
};

} // namespace legwork
