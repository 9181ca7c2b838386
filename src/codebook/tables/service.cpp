// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What counts of a load for a service or feeder.
#include "codebook/cooking_factors.h"
#include "codebook/demand_factors.h"
#include "codebook/tables/tables.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

std::string percent(std::int64_t p) { return fmt::format("{} %", p); }
std::string va(Figure f) { return fmt::format("{} VA", f.value); }

void add(Rows& rows, std::string of, std::string what, Source source) {
    rows.push_back({{std::move(of), std::move(what)}, source});
}

// "the first 3000 VA: 100 %", "up to 120000 VA: 35 %", "the rest: 25 %"
void add_bands(Rows& rows, std::string const& of, DemandBands bands) {
    for (DemandBand const& b : bands) {
        auto const part = &b == &bands.front() ? fmt::format("the first {} VA", b.up_to_va)
                          : b.up_to_va == 0    ? std::string("the rest")
                                               : fmt::format("up to {} VA", b.up_to_va);
        add(rows, fmt::format("{}: {}", of, part), percent(b.percent), b.source);
    }
}

void add_standard(Rows& rows, FloorLoads const& f) {
    add(rows, "standard: floor, each ft²", va(f.va_per_ft2), f.va_per_ft2.source);
    add(rows, "standard: floor, each m²", va(f.va_per_m2), f.va_per_m2.source);
    add(rows, fmt::format("standard: small appliance circuit, {} at least", f.small_appliance_least.value),
        va(f.small_appliance_va), f.small_appliance_va.source);
    add(rows, fmt::format("standard: laundry circuit, {} at least", f.laundry_least.value), va(f.laundry_va),
        f.laundry_va.source);
    add_bands(rows, "standard: these together", f.bands);
    add(rows,
        fmt::format("standard: appliances fastened in place, {} or more{}", f.fixed_from.value,
                    f.fixed_least_va.value > 0 ? fmt::format(" of {} VA or more", f.fixed_least_va.value) : ""),
        percent(f.fixed_percent.value), f.fixed_percent.source);
    add(rows, "standard: dryer, at least", va(f.dryer_least_va), f.dryer_least_va.source);
    if (f.vehicle_least_va)
        add(rows, "standard: vehicle charger, at least", va(*f.vehicle_least_va), f.vehicle_least_va->source);
    add(rows, "standard: largest motor, more", percent(f.motor.percent.value), f.motor.percent.source);
}

void add_optional(Rows& rows, OptionalLoads const& o) {
    add_bands(rows, "optional: all but heating and cooling", o.bands);
    add(rows, "optional: electric heat", percent(o.heat_percent.value), o.heat_percent.source);
    add(rows, fmt::format("optional: electric heat of {} rooms or more", o.many_from.value),
        percent(o.many_heat_percent.value), o.many_heat_percent.source);
    add(rows, "optional: backup heat with its heat pump", percent(o.backup_percent.value), o.backup_percent.source);
    add(rows, "optional: heat pump, cooling", percent(100), Source::seen);
}

void add_blocks(Rows& rows, BlockLoads const& b) {
    add(rows, fmt::format("standard: floor, the first {} m²", b.first_m2.value), va(b.first_w), b.first_w.source);
    add(rows, fmt::format("standard: floor, each {} m² more or part of it", b.block_m2.value), va(b.block_w),
        b.block_w.source);
    add(rows, "standard: basement", percent(b.basement_percent.value), b.basement_percent.source);
    add_bands(rows, "standard: heat controlled room by room", b.separate_heat);
    add(rows, fmt::format("standard: one range up to {} VA", b.range_up_to_w.value), va(b.range_w), b.range_w.source);
    add(rows, "standard: one range, what is above", percent(b.range_excess_percent.value),
        b.range_excess_percent.source);
    auto const large = fmt::format("standard: other loads above {} VA, ", b.small_up_to_w.value);
    add(rows, large + "beside a range", percent(b.others_with_range_percent.value), b.others_with_range_percent.source);
    add_bands(rows, large + "without a range", b.others);
}

void add_floor(Rows& rows, ServiceFloor const& f) {
    auto const amps = [](Figure a) { return fmt::format("{} A", a.value); };
    add(rows, f.is_load ? "least load of a dwelling" : "least disconnect of a dwelling", amps(f.amps), f.amps.source);
    if (f.large_amps)
        add(rows, fmt::format("the same from {} m² on, without the basement", f.large_from_m2->value),
            amps(*f.large_amps), f.large_amps->source);
}

Rows service_rows(CodeBook const& book) {
    Rows rows;
    if (book.demand_factors.is_unread()) return rows;
    auto const& d = demand_factors(book);
    if (d.by_floor) add_standard(rows, *d.by_floor);
    if (d.by_blocks) add_blocks(rows, *d.by_blocks);
    if (d.optional) add_optional(rows, *d.optional);
    if (d.existing) add_bands(rows, "existing: all, heating and cooling apart where they are new", d.existing->bands);
    add(rows, "measured: largest draw of a year", percent(d.peak.percent.value), d.peak.percent.source);
    add(rows, "other buildings: continuous loads", percent(d.listed.continuous_percent.value),
        d.listed.continuous_percent.source);
    add(rows, "other buildings: largest motor, more", percent(d.listed.motor.percent.value),
        d.listed.motor.percent.source);
    if (d.listed.outlet_va)
        add(rows, "other buildings: each outlet, at least", va(*d.listed.outlet_va), d.listed.outlet_va->source);
    if (!d.listed.outlets.empty()) add_bands(rows, "other buildings: receptacles", d.listed.outlets);
    if (d.neutral) {
        add(rows, "neutral: cooking and dryers", percent(d.neutral->appliance_percent.value),
            d.neutral->appliance_percent.source);
        add(rows, fmt::format("neutral: what is above {} A", d.neutral->above_amps.value),
            percent(d.neutral->above_percent.value), d.neutral->above_percent.source);
    }
    add_floor(rows, d.floor);
    std::ranges::move(unread_rows(book, "load-service/", 2), std::back_inserter(rows));
    return rows;
}

// A row for each number of appliances, of an edition that has such a table; one that has none says so.
template <class RowOf>
Rows by_number(CodeBook const& book, int most, std::size_t columns, RowOf row_of) {
    Rows rows;
    if (book.demand_factors.is_unread()) return rows;
    auto const& floor = demand_factors(book).by_floor;
    for (int n = 1; floor && n <= most; ++n) rows.push_back(row_of(*floor, n));
    if (!rows.empty()) return rows;
    std::vector<std::string> cells(columns, "-");
    cells.front() = "no such table";
    return {{std::move(cells), {}}};
}
} // namespace

std::vector<TablePart> service_load_table() { return by_edition({"of what", "counts"}, "", service_rows); }

std::vector<TablePart> cooking_load_table() {
    return by_edition({"how many", "column A", "column B", "column C"}, "load-service/cooking",
                      [](CodeBook const& book) {
                          return by_number(book, 25, 4, [](FloorLoads const& f, int n) {
                              auto const r = cooking_row(f.cooking, n);
                              return TableRow{{std::to_string(n), percent(r.a.value), percent(r.b.value), va(r.c)},
                                              std::max({r.a.source, r.b.source, r.c.source})};
                          });
                      });
}

std::vector<TablePart> dryer_load_table() {
    return by_edition({"how many dryers", "counts"}, "load-service/dryer", [](CodeBook const& book) {
        return by_number(book, 23, 2, [](FloorLoads const& f, int n) {
            auto const counts = dryer_percent(f.dryers, n);
            return TableRow{{std::to_string(n), percent(counts.value)}, counts.source};
        });
    });
}

} // namespace legwork
