// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-load-fits and wire-continuous: what a circuit draws against its breaker and the smallest wire of its run.
#include "check/say.h"
#include "check/wire.h"
#include "check/wire_need.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
bool over_breaker(Sides const& s) { return s.circuit.breaker && s.draw.current > *s.circuit.breaker; }
bool over_wire(Case const& c, Sides const& s) { return s.wire && on_the_wire(c, s) > good_for(c, s, *s.wire); }

std::string drawn(Case const& c, Sides const& s) {
    auto words = fmt::format("{} draws {}", s.circuit.mark, amps(value(s.draw.current)));
    if (s.draw.demand)
        words += fmt::format(" ({} VA demand of {} VA)", whole_va(s.draw.load), whole_va(*s.circuit.load));
    if (on_the_wire(c, s) > s.draw.current)
        words += fmt::format(", its motor needs a wire for {} ({} %)", amps(value(on_the_wire(c, s))),
                             c.book.motor_wire_percent.value);
    return words;
}

std::string_view load_topic(Case const& c, Sides const& s) {
    if (s.draw.demand) return "wire-load-fits/range";
    return !over_breaker(s) && on_the_wire(c, s) > s.draw.current ? "wire-load-fits/motor" : "wire-load-fits";
}

// "Fit a 40 A breaker on 8 AWG": never a smaller breaker than today's.
std::string larger(Case const& c, typed::Circuit const& circuit, Needed const& n) {
    auto const size = standard_breaker_at_or_above(c.book, std::max(n.breaker, circuit.breaker.value_or(0_A)));
    auto const gauge = size ? gauge_for(c, circuit, *size, n.wire) : std::nullopt;
    if (!size || !gauge) return "split the load over two circuits";
    bool const keep = circuit.breaker && *size == *circuit.breaker;
    return keep ? fmt::format("pull {} all the way", wire_name(*gauge, circuit.metal))
                : fmt::format("fit a {} breaker on {}", amps(value(*size)), wire_name(*gauge, circuit.metal));
}

std::string capital(std::string words) {
    words.front() = static_cast<char>(words.front() - 'a' + 'A');
    return words;
}

// One appliance is not split over two circuits.
std::string or_split(Sides const& s) {
    bool const one_thing = s.use && s.use->dedicated && !s.use->heating;
    return one_thing ? "." : ", or move part of the load to another circuit.";
}

Finding overloaded(Case const& c, Sides const& s) {
    Finding f = finding(c, "wire-load-fits", Severity::error, about(s.circuit, "load"), load_topic(c, s));
    std::string over;
    if (over_breaker(s)) over = fmt::format("its {} breaker", amps(value(*s.circuit.breaker)));
    if (over_wire(c, s))
        over += fmt::format("{}its {} good for {}", over.empty() ? "" : " and ",
                            wire_name(s.wire->gauge, s.wire->metal), amps(value(good_for(c, s, *s.wire))));
    f.message = fmt::format("{}, more than {}.", drawn(c, s), over);
    f.fix = capital(larger(c, s.circuit, needed(c, s))) + or_split(s);
    return f;
}

std::optional<Finding> small_breaker_for_range(Case const& c, Sides const& s) {
    auto const least = least_for_range(c, s.circuit);
    if (!least || !s.circuit.breaker || *s.circuit.breaker >= *least) return std::nullopt;
    Finding f =
        finding(c, "wire-load-fits", Severity::error, about(s.circuit, "breaker"), "wire-load-fits/large-range");
    f.message = fmt::format("{}: a range of {} VA on a {} breaker; from {} VA it has at least {}.", s.circuit.mark,
                            whole_va(*s.circuit.load), amps(value(*s.circuit.breaker)),
                            c.book.range.large_from_va->value, amps(value(*least)));
    f.fix = capital(larger(c, s.circuit, needed(c, s))) + ".";
    return f;
}

std::optional<Finding> too_continuous(Case const& c, Sides const& s) {
    auto const why = continuous(c, s.circuit);
    if (!why || over_breaker(s) || over_wire(c, s)) return std::nullopt; // wire-load-fits speaks
    auto const share = c.book.continuous_percent;
    std::string over;
    if (s.circuit.breaker && s.draw.current > percent(*s.circuit.breaker, share.value))
        over = fmt::format("the {} breaker ({})", amps(value(*s.circuit.breaker)),
                           amps(value(percent(*s.circuit.breaker, share.value))));
    if (s.wire && !wire_in_full(c, s) && s.draw.current > percent(s.wire->ampacity, share.value))
        over +=
            fmt::format("{}{} good for {} ({})", over.empty() ? "" : " and ", wire_name(s.wire->gauge, s.wire->metal),
                        amps(value(s.wire->ampacity)), amps(value(percent(s.wire->ampacity, share.value))));
    if (over.empty()) return std::nullopt;
    Finding f = finding(c, "wire-continuous", why->severity, about(s.circuit, "load"), why->topic);
    f.message = fmt::format("{}, {}: more than {} % of {}.", drawn(c, s), why->words, share.value, over);
    f.fix = capital(larger(c, s.circuit, needed(c, s)));
    f.fix +=
        why->severity == Severity::warning ? ", or say continuous = false if it never runs for hours." : or_split(s);
    return f;
}
} // namespace

Findings wire_load_fits(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits) {
        auto const s = sides(c, circuit);
        if (!s) continue;
        if (over_breaker(*s) || over_wire(c, *s))
            found.push_back(overloaded(c, *s));
        else if (auto f = small_breaker_for_range(c, *s))
            found.push_back(std::move(*f));
    }
    return found;
}

Findings wire_continuous(Case const& c) {
    Findings found;
    for (typed::Circuit const& circuit : c.job.circuits)
        if (auto const s = sides(c, circuit))
            if (auto f = too_continuous(c, *s)) found.push_back(std::move(*f));
    return found;
}

} // namespace legwork
