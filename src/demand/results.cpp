// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/results.h"

#include "codebook/cite.h"
#include "codebook/demand_factors.h"
#include "codebook/reference_phrase.h"
#include "demand/steps.h"
#include "words/say.h"

#include <algorithm>
#include <cstdlib>

namespace legwork {

namespace {
// To the hundredth of an ampere.
Phrase shown(Amps a) { return said(Amps{(a.count + 5) / 10 * 10}); }

Reference section(LoadQuestion const& q, std::string_view topic) {
    return cite(q.book, "load-service/" + std::string(topic));
}

Phrase va_phrase(std::int64_t va) { return say("load/va", figure(va)); }

LoadResult not_known(Phrase item) {
    LoadResult r{std::move(item), {}, say("load/not-known")};
    r.known = false;
    return r;
}

void add_amps(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    all.push_back({say("load/calculated"),
                   load.unknown.empty() ? Phrase() : say("load/without-missing"),
                   va_phrase(load.total_va),
                   {},
                   true});
    all.push_back({say("load/amperes"),
                   say("load/va-by-volts", figure(load.total_va), said(q.facts.volts), shown(size.amps)),
                   shown(size.amps), section(q, "volts"), true});
    if (!size.lines) return;
    auto const& l = *size.lines;
    std::string const leg(1, letter(l.a_is_heavier() ? Leg::a : Leg::b));
    all.push_back({l.other_season ? say("load/amperes-of-leg-other", leg) : say("load/amperes-of-leg", leg),
                   l.arithmetic,
                   shown(l.heavier()),
                   {},
                   true});
}

Phrase metals(ServiceWire const& w) {
    auto const gauge = [](Gauge g) { return as_is(name(g)); };
    return say("list/or", w.copper ? say("load/copper", gauge(*w.copper)) : say("load/copper-larger"),
               w.aluminium ? say("load/aluminium", gauge(*w.aluminium)) : say("load/aluminium-larger"));
}

Phrase chosen_by(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    auto const least = std::max(size.to_carry, size.floor.value_or(0_A));
    auto const from = size.floor && least == *size.floor ? say("load/size-from-least", shown(least))
                                                         : say("load/size-from", shown(least));
    auto const& optional = demand_factors(q.book).optional;
    if (load.method == LoadMethod::optional && optional)
        if (Amps const holds{optional->least_amps.value * 1000}; least < holds)
            return say("load/size-by-method", from, said(holds));
    bool const dropped = size.to_carry < (size.lines ? size.lines->heavier() : size.amps);
    return dropped && least == size.to_carry ? say("load/size-dropped", from, reference_phrase(section(q, "half-amps")))
                                             : from;
}

void add_size(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    if (size.floor)
        all.push_back({.item = say("load/least"),
                       .arithmetic = size.floor_is_load ? say("load/whatever-load") : say("load/of-disconnect"),
                       .value = said(*size.floor),
                       .reference = size.floor_reference,
                       .in_words = true});
    auto const what = q.panel.feeder_said ? say("load/smallest-feeder") : say("load/smallest-service");
    if (!size.service) {
        auto& r = all.emplace_back(not_known(what));
        r.reference = size.size_reference;
        r.wanted = true;
        return;
    }
    all.push_back({what, chosen_by(q, load, size), said(*size.service), size.size_reference, true});
    for (ServiceWire const& w : size.wires)
        all.push_back(
            {.item = say("load/its-wire"),
             .arithmetic = w.celsius > 0 ? say("load/at-terminals", figure(w.celsius)) : say("load/of-dwelling"),
             .value = metals(w),
             .reference = w.reference,
             .in_words = true});
}

Phrase left_words(std::int64_t all_va, std::int64_t used, std::int64_t left_va, bool of_heavier_line) {
    if (left_va >= 0 && used > all_va) return say("load/fraction-above");
    auto const both = of_heavier_line ? say("load/heavier-for-both") : Phrase();
    return one_by_one({used > all_va ? say("load/minus-below", figure(all_va), figure(used), figure(used - all_va))
                                     : say("load/minus", figure(all_va), figure(used), figure(all_va - used)),
                       both});
}

void add_largest(LoadResults& all, LoadQuestion const& q, ServiceSize const& size) {
    auto const filled = [&](Amps breaker) {
        auto const drawn = percent(breaker, q.book.continuous_percent.value);
        return say("load/filled", said(breaker), figure(q.book.continuous_percent.value), said(drawn),
                   said(q.facts.volts), figure(whole_va(q.facts.volts * drawn)));
    };
    auto const what = say("load/largest-circuit");
    if (!size.largest_circuit) {
        auto const smallest = standard_breaker_at_or_above(q.book, 1_A);
        all.push_back(
            {what,
             *size.left_va > 0 && smallest ? one_by_one({filled(*smallest), say("load/more-than-left")}) : Phrase(),
             say("load/none")});
        return;
    }
    auto const amps = said(*size.largest_circuit);
    all.push_back({what,
                   one_by_one({filled(*size.largest_circuit), say("load/for-hours")}),
                   q.facts.three_wire ? say("load/two-poles", amps) : amps,
                   {},
                   true});
}

void add_present(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    auto const what = q.panel.feeder_said ? say("load/present-feeder") : say("load/present-service");
    if (!q.facts.rating) {
        auto& r = all.emplace_back(not_known(what));
        r.arithmetic = say("load/no-rating");
        r.in_words = true;
        return;
    }
    auto const all_va = whole_va(q.facts.volts * *q.facts.rating);
    all.push_back({what,
                   say("load/present", q.facts.rated_by,
                       say("load/amps-by-volts", said(*q.facts.rating), said(q.facts.volts), figure(all_va))),
                   said(*q.facts.rating)});
    if (!size.left_va) {
        all.emplace_back(not_known(say("load/left"))).wanted = true;
        return;
    }
    auto const used = size.lines ? size.lines->as_total_va : load.total_va;
    all.push_back({*size.left_va < 0 ? say("load/too-much-by") : say("load/left"),
                   left_words(all_va, used, *size.left_va, size.lines.has_value()),
                   va_phrase(std::abs(*size.left_va)),
                   {},
                   true});
    add_largest(all, q, size);
}
} // namespace

LoadResults load_results(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    LoadResults all;
    add_amps(all, q, load, size);
    if (size.neutral_amps)
        all.push_back(
            {say("load/neutral"), size.neutral_words, shown(*size.neutral_amps), section(q, "neutral"), true});
    add_size(all, q, load, size);
    add_present(all, q, load, size);
    return all;
}

Phrase verdict(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    if (!q.facts.rating) return {};
    auto const rating = say("load/rated", q.facts.rated_by, said(*q.facts.rating));
    auto const heaviest = size.lines ? size.lines->heavier() : size.amps;
    auto amps = shown(heaviest);
    if (size.lines)
        amps = say("load/on-leg", amps, std::string(1, letter(size.lines->a_is_heavier() ? Leg::a : Leg::b)));
    if (!size.fits) {
        auto const more = shown(heaviest - *q.facts.rating);
        return load.all_at_once ? say("load/verdict-at-once", rating, amps, more)
                                : say("load/verdict-too-much", rating, amps, more);
    }
    if (!load.unknown.empty()) return {};
    if (size.floor && *q.facts.rating < *size.floor)
        return say("load/verdict-below-least", rating, amps, said(*size.floor), reference_phrase(size.floor_reference));
    return say("load/verdict-within", rating, amps);
}

} // namespace legwork
