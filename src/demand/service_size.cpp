// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "demand/service_size.h"

#include "codebook/cite.h"
#include "codebook/demand_factors.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>

namespace legwork {

namespace {
constexpr Volts kToNeutral = 120_V;
constexpr int kUsualTerminals = 60, kMarkedTerminals = 75;

Amps amps_of(std::int64_t va, Volts volts) { return {(va * 1000 + volts.count / 2) / volts.count}; }

Amps without_fraction(Amps a, bool drops) {
    auto const part = a.count % 1000;
    return drops && part < 500 ? Amps{a.count - part} : a;
}

std::optional<Amps> floor_of(LoadQuestion const& q, LoadCalculation const& load, ServiceFloor const& f) {
    if (q.facts.stands_alone) return std::nullopt;
    if (!load.whole_dwelling || (q.panel.feeder_said && !f.of_feeders)) return std::nullopt;
    auto const& area = q.building.dwelling->area;
    if (f.large_from_m2 && !area) return std::nullopt; // nobody knows which
    bool const large = f.large_from_m2 && area && area->count >= f.large_from_m2->value * 1'000'000;
    return Amps{(large ? f.large_amps->value : f.amps.value) * 1000};
}

std::optional<Gauge> wire_for(CodeBook const& book, Amps amps, Metal metal, int celsius) {
    for (AmpacityRow const& row : book.ampacities) {
        auto const least = small_wire(book, row.gauge, metal);
        auto const a = ampacity(book, row.gauge, metal, celsius);
        if (a && *a >= amps && (!least || least->breaker >= amps)) return row.gauge;
    }
    return std::nullopt;
}

ServiceWire by_terminals(LoadQuestion const& q, Amps size, int celsius) {
    return {wire_for(q.book, size, Metal::copper, celsius), wire_for(q.book, size, Metal::aluminium, celsius), celsius,
            cite(q.book, "load-service/wire")};
}

std::vector<ServiceWire> wires_for(LoadQuestion const& q, LoadCalculation const& load, Amps size) {
    std::vector<ServiceWire> wires;
    if (load.whole_dwelling && q.facts.three_wire)
        if (auto const row = dwelling_feeder(q.book, size); row && row->copper && row->aluminium)
            return {{row->copper, row->aluminium, 0, cite(q.book, "load-service/dwelling-wire")}};
    constexpr Amps most_at_60 = 100_A;
    // Terminals up to 100 A hold for 60 °C unless they are marked; larger ones for 75 °C.
    if (size <= most_at_60) wires.push_back(by_terminals(q, size, kUsualTerminals));
    wires.push_back(by_terminals(q, size, kMarkedTerminals));
    return wires;
}

std::optional<Amps> circuit_for(CodeBook const& book, std::int64_t va, Volts volts) {
    if (va <= 0) return std::nullopt;
    // A continuous load of so much wants a breaker that it fills to the continuous share.
    Amps const load{va * 1000 / volts.count};
    return standard_breaker_at_or_below(book, Amps{load.count * 100 / book.continuous_percent.value});
}

Phrase half_of(std::int64_t va) { return va % 2 == 0 ? figure(va / 2) : Phrase::figure(fmt::format("{}.5", va / 2)); }

// To the hundredth of an ampere.
Phrase shown(Amps a) { return said(Amps{(a.count + 5) / 10 * 10}); }

// On 120/240 V each hot has half the volts and half of what is shared. Of a wye what is shared is taken at the volts
// between the hots and what stands alone at the volts to neutral, added as if they were in phase: a little high, never
// low.
void reckon_lines(LineAmps& lines, ServiceFacts const& facts) {
    auto const alone = std::max(lines.a_va, lines.b_va);
    auto const of_line = [&](std::int64_t va) {
        return facts.wye ? amps_of(lines.even_va, facts.volts) + amps_of(va, kToNeutral)
                         : amps_of(lines.even_va + 2 * va, facts.volts);
    };
    lines.a = of_line(lines.a_va);
    lines.b = of_line(lines.b_va);
    auto const amps = shown(lines.heavier());
    if (facts.wye) {
        lines.as_total_va = lines.even_va + (alone * facts.volts.count + kToNeutral.count / 2) / kToNeutral.count;
        lines.arithmetic =
            say("load/line-wye", figure(lines.even_va), said(facts.volts), figure(alone), said(kToNeutral), amps);
    } else {
        lines.as_total_va = lines.even_va + 2 * alone;
        lines.arithmetic = say("load/line", half_of(lines.even_va), figure(alone), said(kToNeutral), amps);
    }
}

LineAmps lines_of(ServiceFacts const& facts, std::int64_t total_va, std::vector<LineLoad> const& one_line) {
    LineAmps lines;
    lines.even_va = total_va;
    for (LineLoad const& l : one_line) {
        auto const at = facts.legs.find(l.mark);
        if (at == facts.legs.end()) continue;
        lines.even_va -= l.va;
        (at->second == Leg::a ? lines.a_va : lines.b_va) += l.va;
    }
    reckon_lines(lines, facts);
    return lines;
}

// The heavier hot in the season in which it is heaviest; nothing where it carries no more than its half of the total.
std::optional<LineAmps> heaviest_lines(LoadQuestion const& q, LoadCalculation const& load, Amps even) {
    if (!q.facts.three_wire) return std::nullopt;
    auto lines = lines_of(q.facts, load.total_va, load.one_line);
    if (load.other_season) {
        auto other = lines_of(q.facts, load.other_season->total_va, load.other_season->one_line);
        other.other_season = true;
        if (other.heavier() > lines.heavier()) lines = std::move(other);
    }
    if (lines.heavier() <= even) return std::nullopt;
    return lines;
}

void reckon_neutral(LoadQuestion const& q, LoadCalculation const& load, ServiceSize& size) {
    auto const& factors = demand_factors(q.book).neutral;
    if (!load.neutral_va || !factors) return;
    auto const volts = q.facts.three_wire ? (q.facts.wye ? kToNeutral + kToNeutral : q.facts.volts) : kToNeutral;
    auto amps = amps_of(*load.neutral_va, volts);
    size.neutral_words = say("load/va-by-volts", figure(*load.neutral_va), said(volts), shown(amps));
    Amps const above{factors->above_amps.value * 1000};
    if (amps > above && q.facts.three_wire && !q.facts.wye) {
        auto const less = above + percent(amps - above, factors->above_percent.value);
        size.neutral_words =
            say("list/semicolon", size.neutral_words,
                say("load/neutral-above", said(above), said(amps), figure(factors->above_percent.value), said(less)));
        amps = less;
    }
    size.neutral_amps = amps;
}
} // namespace

bool carries(LoadQuestion const& q, std::int64_t va, Amps rating) {
    return without_fraction(amps_of(va, q.facts.volts), demand_factors(q.book).drops_half_amps) <= rating;
}

ServiceSize service_size(LoadQuestion const& q, LoadCalculation const& load) {
    auto const& f = demand_factors(q.book);
    ServiceSize size;
    size.amps = amps_of(load.total_va, q.facts.volts);
    size.lines = heaviest_lines(q, load, size.amps);
    size.to_carry = without_fraction(size.lines ? size.lines->heavier() : size.amps, f.drops_half_amps);
    size.floor = floor_of(q, load, f.floor);
    size.floor_is_load = f.floor.is_load;
    size.floor_reference = cite(q.book, "load-service/minimum");
    size.size_reference = cite(q.book, "load-service/size");
    reckon_neutral(q, load, size);
    bool const known = load.unknown.empty();
    if (known) {
        // No service or feeder is smaller; and the optional method holds from its least size on only.
        auto const smallest =
            load.method == LoadMethod::optional && f.optional ? Amps{f.optional->least_amps.value * 1000} : 15_A;
        size.service =
            standard_breaker_at_or_above(q.book, std::max({size.to_carry, size.floor.value_or(0_A), smallest}));
        if (size.service) size.wires = wires_for(q, load, *size.service);
    }
    if (q.facts.rating) {
        size.fits = size.to_carry <= *q.facts.rating;
        auto const heavier = size.lines ? size.lines->as_total_va : load.total_va;
        auto const left = whole_va(q.facts.volts * *q.facts.rating) - heavier;
        if (known) size.left_va = size.fits ? std::max<std::int64_t>(left, 0) : left;
        if (known && size.fits) size.largest_circuit = circuit_for(q.book, *size.left_va, q.facts.volts);
    }
    return size;
}

} // namespace legwork
