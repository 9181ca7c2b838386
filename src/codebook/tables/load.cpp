// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/backfeed.h"
#include "codebook/outlet_count.h"
#include "codebook/tables/tables.h"
#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

std::string percent(Figure f) { return fmt::format("{} %", f.value); }
std::string yes(bool is) { return is ? "yes" : "no"; }

std::string motor_most(CodeBook const& b) {
    auto const& large = b.motor_breaker_most_above_100_a;
    return percent(b.motor_breaker_most_percent) + (large ? fmt::format("; above 100 A {}", percent(*large)) : "");
}
} // namespace

std::vector<TablePart> easement_table() {
    return by_edition({"what", "figure"}, "", [](CodeBook const& b) {
        return Rows{
            {{"a continuous load, of breaker and wire, at most", percent(b.continuous_percent)},
             b.continuous_percent.source},
            {{"a load is continuous unless shown otherwise", yes(b.presumes_continuous)}, b.continuous_percent.source},
            {{"lighting of a dwelling counts as continuous", yes(b.dwelling_lighting_continuous)},
             b.continuous_percent.source},
            {{"fixed heating: breaker, of the wire's ampacity, at most (then the next standard size)",
              percent(b.heating_breaker_percent)},
             b.heating_breaker_percent.source},
            {{"fixed heating: the continuous share is of the breaker only", yes(b.heating_wire_in_full)},
             b.heating_breaker_percent.source},
            {{"fixed heating: the breaker's share hangs on whether it runs for hours", yes(!b.heating_is_continuous)},
             b.continuous_percent.source},
            {{"a motor's wire, of its current, at least", percent(b.motor_wire_percent)}, b.motor_wire_percent.source},
            {{"a motor's breaker, of its current, at most (then the next standard size)",
              percent(b.motor_breaker_percent)},
             b.motor_breaker_percent.source},
            {{"a motor's breaker where it will not start, at most", motor_most(b)},
             b.motor_breaker_most_percent.source},
            {{"a welder's breaker, of the wire's ampacity, at most", percent(b.welder_breaker_percent)},
             b.welder_breaker_percent.source},
            {{"cable is held to the ampacity column of",
              b.cable_column ? fmt::format("{} °C", *b.cable_column) : std::string("its terminals")},
             Source::seen},
            {{"terminals above 100 A go by the column of", fmt::format("{} °C", b.terminals_above_100_a)},
             Source::seen},
            {{"the next standard breaker above the ampacity also on several receptacles",
              yes(b.next_size_up_on_receptacles)},
             Source::seen},
        };
    });
}

std::vector<TablePart> range_table() {
    return by_edition({"nameplate", "reckoned at"}, "wire-load-fits/range", [](CodeBook const& b) {
        auto const& r = b.range;
        Rows rows{{{fmt::format("up to {} VA", r.base_up_to_va.value), fmt::format("{} VA", r.base_va.value)},
                   r.base_va.source},
                  {{"above that, more by",
                    r.per_kilowatt ? fmt::format("{} of it for each kW or major part of one", percent(r.excess_percent))
                                   : fmt::format("{} of what is above", percent(r.excess_percent))},
                   r.excess_percent.source}};
        if (r.small_up_to_va && r.small_percent)
            rows.push_back({{fmt::format("up to {} VA, also", r.small_up_to_va->value),
                             fmt::format("{} of the nameplate", percent(*r.small_percent))},
                            r.small_percent->source});
        if (r.large_from_va && r.large_least_breaker)
            rows.push_back({{fmt::format("from {} VA on, breaker of at least", r.large_from_va->value),
                             fmt::format("{} A", r.large_least_breaker->value)},
                            r.large_least_breaker->source});
        rows.push_back({{"whatever it is", "never more than the nameplate"}, r.base_va.source});
        return rows;
    });
}

std::vector<TablePart> receptacle_rating_table() {
    return by_edition({"circuit", "receptacles"}, "wire-outlet/amperes", [](CodeBook const& b) {
        Rows rows;
        for (ReceptacleRow const& r : b.receptacles)
            rows.push_back({{fmt::format("{} A", r.circuit),
                             fmt::format("{}{}",
                                         r.least == r.most ? fmt::format("{} A", r.least)
                                                           : fmt::format("{} A or {} A", r.least, r.most),
                                         r.larger_disputed ? "; larger: disputed" : "")},
                            r.source});
        if (b.lone_receptacle)
            rows.push_back({{"one single receptacle on its own", "no less than the circuit"}, *b.lone_receptacle});
        return rows;
    });
}

std::vector<TablePart> outlet_count_table() {
    return by_edition({"breaker up to", "outlets at most"}, "wire-outlet-count", [](CodeBook const& b) {
        if (b.outlet_count.is_unread()) return Rows{};
        auto const* counts = b.outlet_count.get();
        if (!counts) return Rows{{{"any", "no number"}, {}}};
        Rows rows;
        for (OutletCount const& n : counts->rows) rows.push_back({{text(n.breaker), std::to_string(n.most)}, n.source});
        return rows;
    });
}

std::vector<TablePart> backfeed_table() {
    return by_edition({"what", "figure"}, "panel-backfeed", [](CodeBook const& b) {
        auto const& t = backfeed(b);
        Rows rows{{{"main and source at opposite ends of the bus, of its rating, at most", percent(t.bus_percent)},
                   t.bus_percent.source},
                  {{"the same in a dwelling", percent(t.dwelling_bus_percent)}, t.dwelling_bus_percent.source},
                  {{"what counts of the source", t.output_percent ? percent(*t.output_percent) + " of its output"
                                                                  : std::string("the rating of its breaker")},
                   t.output_percent ? t.output_percent->source : t.bus_percent.source}};
        if (t.all_breakers)
            rows.push_back({{"all breakers but the main together within the bus will do too", "yes"}, *t.all_breakers});
        return rows;
    });
}

} // namespace legwork
