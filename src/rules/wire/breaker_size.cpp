// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Ratings that breakers are made in.
#include "reckon/wire_rating.h"
#include "rules/wire/list.h"

#include <fmt/format.h>

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
    Finding f = finding(c, wire_breaker_size, Gravity::usual, std::move(where));
    f.reference.source = c.book.standard_breakers_source;
    bool const smallest = !standard_breaker_at_or_below(c.book, rating);
    f.message = fmt::format("{} is given as {}, which is no standard size; {} {}.", whose, amps(value(rating)),
                            smallest ? "the smallest is" : "beside it stand", beside(c.book, rating, "and"));
    f.fix = fmt::format("Read the number on the handle again; for a new one choose {}, as the wire allows.",
                        beside(c.book, rating, "or"));
    return f;
}

// One two-pole breaker of a pair is one breaker.
bool told_with_first(Circuit const& circuit) {
    Circuit const* p = circuit.partner();
    return p && p->number < circuit.number && p->breaker == circuit.breaker;
}

Verdict judge(Case const& c) {
    Inspection seen;
    for (Panel const& panel : c.building.panels) {
        if (!panel.main || panel.is_dc()) continue;
        seen.looked();
        if (!is_standard(c.book, *panel.main))
            seen.found(odd_size(c, {panel.name, {}, "main"}, fmt::format("The main of panel \"{}\"", panel.name),
                                *panel.main));
    }
    for (Circuit const& circuit : c.building.circuits) {
        if (!circuit.breaker || circuit.on_dc() || told_with_first(circuit)) continue;
        seen.looked();
        if (is_standard(c.book, *circuit.breaker)) continue;
        Circuit const* p = circuit.partner();
        bool const both_alike = p && p->breaker == circuit.breaker;
        Where where = about(circuit, "breaker");
        if (both_alike) where.circuits.push_back(p->mark);
        auto const whose = fmt::format("The breaker of {}", listed(where.circuits));
        seen.found(odd_size(c, std::move(where), whose, *circuit.breaker));
    }
    return seen.verdict();
}
} // namespace

constinit Rule const wire_breaker_size{
    .id = "wire-breaker-size",
    .asks = "The breaker is of a size that breakers are made in.",
    .why = "Breakers are made in steps: 15 A, 20 A, 25 A, 30 A and so on. A number between them is mostly a slip of "
           "the pen or a fuse, and what is reckoned from it is wrong too.",
    .remedy = "Read the handle again. Above the ampacity of a wire the next standard size is often allowed; below its "
              "load it never is.",
    .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
    .judge = judge,
};

} // namespace legwork
