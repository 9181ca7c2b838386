// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// wire-breaker-size: ratings that breakers are made in.
#include "check/say.h"
#include "check/wire.h"
#include "check/wire_rating.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
// Above the largest size of the table nothing is said: the table ends there, breakers do not.
bool is_standard(CodeBook const& book, Amps rating) {
    auto const size = standard_breaker_at_or_above(book, rating);
    return !size || *size == rating;
}

// "45 A and 50 A": the standard sizes on either side.
std::string beside(CodeBook const& book, Amps rating, std::string_view between) {
    std::string words;
    if (auto const below = standard_breaker_at_or_below(book, rating))
        words = fmt::format("{} {} ", amps(value(*below)), between);
    return words + amps(value(*standard_breaker_at_or_above(book, rating)));
}

Finding odd_size(Case const& c, Where where, std::string const& whose, Amps rating) {
    Finding f = finding(c, "wire-breaker-size", Severity::warning, std::move(where));
    f.reference.source = c.book.standard_breakers_source;
    bool const smallest = !standard_breaker_at_or_below(c.book, rating);
    f.message = fmt::format("{} is given as {}, which is no standard size; {} {}.", whose, amps(value(rating)),
                            smallest ? "the smallest is" : "beside it stand", beside(c.book, rating, "and"));
    f.fix = fmt::format("Read the number on the handle again; for a new one choose {}, as the wire allows.",
                        beside(c.book, rating, "or"));
    return f;
}

// One two-pole breaker of a pair is one breaker.
bool told_with_first(Case const& c, typed::Circuit const& circuit) {
    typed::Circuit const* p = partner(c.job, circuit);
    return p && p < &circuit && p->breaker == circuit.breaker;
}
} // namespace

Findings wire_breaker_size(Case const& c) {
    Findings found;
    for (typed::Panel const& panel : c.job.panels)
        if (panel.main && !has_fuses(c, panel) && !is_standard(c.book, *panel.main))
            found.push_back(odd_size(c, {panel.name, {}, "main"}, fmt::format("The main of panel \"{}\"", panel.name),
                                     *panel.main));
    for (typed::Circuit const& circuit : c.job.circuits) {
        if (!circuit.breaker || on_dc(c, circuit) || is_standard(c.book, *circuit.breaker)) continue;
        if (told_with_first(c, circuit)) continue;
        typed::Circuit const* p = partner(c.job, circuit);
        bool const both_alike = p && p->breaker == circuit.breaker;
        Where where = about(circuit, "breaker");
        if (both_alike) where.circuits.push_back(p->mark);
        auto const whose = fmt::format("The breaker of {}", listed(where.circuits));
        found.push_back(odd_size(c, std::move(where), whose, *circuit.breaker));
    }
    return found;
}

} // namespace legwork
