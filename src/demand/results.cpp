// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/results.h"

#include "codebook/cite.h"
#include "codebook/demand_factors.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdlib>

namespace legwork {

namespace {
constexpr std::string_view kNotKnown = "not known";

// To the hundredth of an ampere.
std::string shown(Amps a) { return text(Amps{(a.count + 5) / 10 * 10}); }

Reference section(LoadQuestion const& q, std::string_view topic) {
    return cite(q.book, "load-service/" + std::string(topic));
}

std::string_view what_it_is(LoadQuestion const& q) { return q.panel.feeder_said ? "feeder" : "service"; }

void add_amps(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    all.push_back({"Calculated load",
                   load.unknown.empty() ? "" : "without what is missing",
                   fmt::format("{} VA", load.total_va),
                   {},
                   true});
    all.push_back({"Amperes", fmt::format("{} VA ÷ {} = {}", load.total_va, text(q.facts.volts), shown(size.amps)),
                   shown(size.amps), section(q, "volts"), true});
    if (!size.lines) return;
    auto const& l = *size.lines;
    all.push_back({fmt::format("Amperes of leg {}, the heavier{}", l.a_is_heavier() ? 'A' : 'B',
                               l.other_season ? ", while the other of heating and cooling runs" : ""),
                   l.arithmetic,
                   shown(l.heavier()),
                   {},
                   true});
}

std::string metals(ServiceWire const& w) {
    auto const one = [](std::optional<Gauge> g, std::string_view metal) {
        return g ? fmt::format("{} AWG {}", name(*g), metal) : fmt::format("{} larger than 4/0 AWG", metal);
    };
    return one(w.copper, "copper") + " or " + one(w.aluminium, "aluminium");
}

void add_size(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    if (size.floor)
        all.push_back({"Least for this dwelling", size.floor_is_load ? "whatever its load" : "of its disconnect",
                       text(*size.floor), size.floor_reference});
    auto const what = fmt::format("Smallest standard {}", what_it_is(q));
    if (!size.service) {
        all.push_back({what, "", std::string(kNotKnown), size.size_reference, true});
        return;
    }
    auto const least = std::max(size.to_carry, size.floor.value_or(0_A));
    auto const& optional = demand_factors(q.book).optional;
    bool const by_method =
        load.method == LoadMethod::optional && optional && least < Amps{optional->least_amps.value * 1000};
    bool const dropped = size.to_carry < (size.lines ? size.lines->heavier() : size.amps);
    all.push_back(
        {what,
         fmt::format("the standard size at or above {}{}{}",
                     size.floor && least == *size.floor ? "the least for this dwelling, " : "", shown(least),
                     by_method ? fmt::format(", and the {} A from which this method holds", optional->least_amps.value)
                     : dropped && least == size.to_carry
                         ? fmt::format(", the part of an ampere left out ({})", text(section(q, "half-amps")))
                         : ""),
         text(*size.service), size.size_reference, true});
    for (ServiceWire const& w : size.wires)
        all.push_back({"Its wire",
                       w.celsius > 0 ? fmt::format("at terminals of {} °C", w.celsius) : "of a whole dwelling",
                       metals(w), w.reference});
}

void add_present(LoadResults& all, LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    auto const what = fmt::format("Present {}", what_it_is(q));
    if (!q.facts.rating) {
        all.push_back({what, "no main, feeder or supply says its amperes", std::string(kNotKnown), {}});
        return;
    }
    auto const volts = text(q.facts.volts);
    auto const all_va = whole_va(q.facts.volts * *q.facts.rating);
    all.push_back({what,
                   fmt::format("{}: {} × {} = {} VA", q.facts.rated_by, text(*q.facts.rating), volts, all_va),
                   text(*q.facts.rating),
                   {}});
    if (!size.left_va) {
        all.push_back({"Left on it", "", std::string(kNotKnown), {}, true});
        return;
    }
    auto const used = size.lines ? size.lines->as_total_va : load.total_va;
    auto const words =
        *size.left_va < 0 || used <= all_va
            ? fmt::format("{} − {} = {}{} VA{}", all_va, used, used > all_va ? "−" : "", std::abs(all_va - used),
                          size.lines ? ", with what the heavier leg carries taken for both" : "")
            : "nothing: only the left-out part of an ampere is above it";
    all.push_back({size.left_va < 0 ? "Too much by" : "Left on it",
                   words,
                   fmt::format("{} VA", *size.left_va < 0 ? -*size.left_va : *size.left_va),
                   {},
                   true});
    constexpr std::string_view largest = "Largest circuit that still fits";
    auto const filled = [&](Amps breaker) {
        auto const drawn = percent(breaker, q.book.continuous_percent.value);
        return fmt::format("{} × {} % = {}; {} × {} = {} VA", text(breaker), q.book.continuous_percent.value,
                           text(drawn), text(drawn), volts, whole_va(q.facts.volts * drawn));
    };
    if (!size.largest_circuit) {
        auto const smallest = standard_breaker_at_or_above(q.book, 1_A);
        all.push_back({std::string(largest),
                       *size.left_va > 0 && smallest ? filled(*smallest) + ", more than is left" : "",
                       "none",
                       {}});
        return;
    }
    all.push_back({std::string(largest),
                   filled(*size.largest_circuit) +
                       ", all of it for hours and counted in full; a motor, heat or cooling may count for more",
                   fmt::format("{}{}", text(*size.largest_circuit), q.facts.three_wire ? ", two poles" : ""),
                   {},
                   true});
}
} // namespace

LoadResults load_results(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    LoadResults all;
    add_amps(all, q, load, size);
    if (size.neutral_amps)
        all.push_back({"Neutral", size.neutral_words, shown(*size.neutral_amps), section(q, "neutral"), true});
    add_size(all, q, load, size);
    add_present(all, q, load, size);
    return all;
}

std::string verdict(LoadQuestion const& q, LoadCalculation const& load, ServiceSize const& size) {
    if (!q.facts.rating) return {};
    auto const rating = fmt::format("{} of {}", q.facts.rated_by, text(*q.facts.rating));
    auto const heaviest = size.lines ? size.lines->heavier() : size.amps;
    auto const of_leg = size.lines ? fmt::format(" on leg {}", size.lines->a_is_heavier() ? 'A' : 'B') : std::string();
    if (!size.fits && load.all_at_once)
        return fmt::format("All of it at once would be more than {} carries: {}{}, {} too much.", rating,
                           shown(heaviest), of_leg, shown(heaviest - *q.facts.rating));
    if (!size.fits)
        return fmt::format("Too much for {}: {}{}, {} more than it is good for.", rating, shown(heaviest), of_leg,
                           shown(heaviest - *q.facts.rating));
    if (!load.unknown.empty()) return {};
    if (size.floor && *q.facts.rating < *size.floor)
        return fmt::format("Within {}: {}{}. But a dwelling like this must have {} or more ({}).", rating,
                           shown(heaviest), of_leg, text(*size.floor), text(size.floor_reference));
    return fmt::format("Within {}: {}{}.", rating, shown(heaviest), of_leg);
}

} // namespace legwork
