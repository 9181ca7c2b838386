// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/code_book.h"

#include <algorithm>

namespace legwork {

namespace {
std::optional<Amps> made(int amps) { return amps > 0 ? std::optional(Amps{amps * 1000}) : std::nullopt; }
} // namespace

CodeBook const* code_book(std::string_view edition) {
    auto const all = code_books();
    auto const at = std::ranges::find(all, edition, &CodeBook::edition);
    return at == all.end() ? nullptr : *at;
}

std::vector<std::string> editions() {
    std::vector<std::string> all;
    for (CodeBook const* book : code_books()) all.emplace_back(book->edition);
    return all;
}

std::vector<CodeBook const*> books_of(Family family) {
    std::vector<CodeBook const*> some;
    for (CodeBook const* book : code_books())
        if (book->family == family) some.push_back(book);
    return some;
}

std::optional<Amps> ampacity(CodeBook const& book, Gauge gauge, Metal metal, int celsius) {
    auto const row = std::ranges::find(book.ampacities, gauge, &AmpacityRow::gauge);
    if (row == book.ampacities.end()) return std::nullopt;
    bool const copper = metal == Metal::copper;
    if (celsius >= 90) return made(copper ? row->copper_90 : row->aluminium_90);
    if (celsius >= 75) return made(copper ? row->copper_75 : row->aluminium_75);
    return made(copper ? row->copper_60 : row->aluminium_60);
}

std::optional<SmallWireRow> small_wire(CodeBook const& book, Gauge gauge, Metal metal) {
    auto const row = std::ranges::find_if(book.small_wires,
                                          [&](SmallWireRow const& r) { return r.gauge == gauge && r.metal == metal; });
    return row == book.small_wires.end() ? std::nullopt : std::optional(*row);
}

std::optional<DwellingFeederRow> dwelling_feeder(CodeBook const& book, Amps breaker) {
    auto const row = std::ranges::find(book.dwelling_feeders, breaker, &DwellingFeederRow::breaker);
    return row == book.dwelling_feeders.end() ? std::nullopt : std::optional(*row);
}

std::optional<Amps> standard_breaker_at_or_above(CodeBook const& book, Amps amps) {
    for (int const size : book.standard_breakers)
        if (Amps{size * 1000} >= amps) return Amps{size * 1000};
    return std::nullopt;
}

std::optional<Amps> standard_breaker_at_or_below(CodeBook const& book, Amps amps) {
    std::optional<Amps> found;
    for (int const size : book.standard_breakers)
        if (Amps{size * 1000} <= amps) found = Amps{size * 1000};
    return found;
}

VoltAmperes range_demand(CodeBook const& book, VoltAmperes nameplate) {
    RangeDemand const& r = book.range;
    VoltAmperes const base{r.base_va.value * 1000}, base_up_to{r.base_up_to_va.value * 1000};
    VoltAmperes demand = base;
    if (nameplate > base_up_to) {
        VoltAmperes const excess = nameplate - base_up_to;
        demand += r.per_kilowatt ? percent(base, r.excess_percent.value) * ((excess.count + 500'000) / 1'000'000)
                                 : percent(excess, r.excess_percent.value);
    }
    if (r.small_up_to_va && nameplate <= VoltAmperes{r.small_up_to_va->value * 1000})
        demand = std::min(demand, percent(nameplate, r.small_percent->value));
    return std::min(demand, nameplate);
}

} // namespace legwork
