// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "codebook/drop_limits.h"
#include "codebook/sections.h"
#include "codebook/stock/wire_data.h"
#include "codebook/tables/tables.h"
#include "units/text.h"

#include <fmt/format.h>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

std::string number(int n) { return n == 0 ? "-" : std::to_string(n); }
std::string number(double n) { return n == 0 ? "-" : fmt::format("{:.3g}", n); }
std::string name_of(Metal m) { return m == Metal::copper ? "copper" : "aluminium"; }
std::string size(std::optional<Gauge> g) { return g ? std::string(name(*g)) : "-"; }
std::string percent(Figure f) { return fmt::format("{} %", f.value); }

// NEC Chapter 9 Table 8 is in ohms per 1000 ft.
double per_km(double ohms) { return ohms / 0.3048; }
} // namespace

std::vector<TablePart> ampacity_table() {
    return by_edition({"AWG", "copper 60 °C", "75 °C", "90 °C", "aluminium 60 °C", "75 °C", "90 °C"},
                      "wire-breaker-fits/large", [](CodeBook const& book) {
                          Rows rows;
                          for (AmpacityRow const& r : book.ampacities)
                              rows.push_back({{std::string(name(r.gauge)), number(r.copper_60), number(r.copper_75),
                                               number(r.copper_90), number(r.aluminium_60), number(r.aluminium_75),
                                               number(r.aluminium_90)},
                                              book.ampacities_source});
                          return rows;
                      });
}

std::vector<TablePart> small_wire_table() {
    return by_edition({"AWG", "metal", "largest breaker"}, "wire-breaker-fits", [](CodeBook const& book) {
        Rows rows;
        for (SmallWireRow const& r : book.small_wires)
            rows.push_back({{std::string(name(r.gauge)), name_of(r.metal), text(r.breaker)}, r.source});
        return rows;
    });
}

std::vector<TablePart> breaker_table() {
    return by_edition({"ratings"}, "", [](CodeBook const& book) {
        std::string all;
        for (int const a : book.standard_breakers) all += (all.empty() ? "" : ", ") + std::to_string(a);
        return Rows{{{all}, book.standard_breakers_source}};
    });
}

std::vector<TablePart> dwelling_feeder_table() {
    return by_edition({"breaker", "copper AWG", "aluminium AWG"}, "wire-breaker-fits/dwelling-feeder",
                      [](CodeBook const& book) {
                          Rows rows;
                          for (DwellingFeederRow const& r : book.dwelling_feeders)
                              rows.push_back({{text(r.breaker), size(r.copper), size(r.aluminium)}, r.source});
                          auto const& says = section_of(book, "wire-breaker-fits/dwelling-feeder");
                          if (says.is_silent()) rows.push_back({{"any", "as other feeders", "the same"}, says.source});
                          return rows;
                      });
}

std::vector<TablePart> wire_size_table() {
    Rows rows;
    for (GaugeName const& g : kGauges)
        rows.push_back({{std::string(g.name), fmt::format("{:.4f}", diameter_inches(g.gauge)),
                         fmt::format("{:.3f}", diameter_mm(g.gauge)), fmt::format("{:.2f}", area_mm2(g.gauge)),
                         fmt::format("{:.0f}", circular_mils(g.gauge))},
                        Source::seen});
    return {{{}, "ASTM B258", {"AWG", "diameter in", "diameter mm", "area mm²", "circular mils"}, std::move(rows)}};
}

std::vector<TablePart> resistance_table() {
    Rows rows;
    for (ResistanceRow const& r : resistances())
        rows.push_back({{std::string(name(r.gauge)), number(per_km(r.copper_solid)), number(per_km(r.copper_stranded)),
                         number(per_km(r.aluminium_solid)), number(per_km(r.aluminium_stranded)),
                         number(r.copper_solid), number(r.copper_stranded)},
                        Source::seen});
    return {{{},
             text(resistance_reference()),
             {"AWG", "copper solid Ω/km", "stranded", "aluminium solid Ω/km", "stranded", "copper solid Ω/1000 ft",
              "stranded"},
             std::move(rows)}};
}

std::vector<TablePart> drop_table() {
    return by_edition({"of what", "figure"}, "wire-drop", [](CodeBook const& book) {
        auto const& d = drop_limits(book);
        Rows rows{
            {{"a feeder or a branch circuit by itself", "at most " + percent(d.part_percent)}, d.part_percent.source},
            {{"from the source to the far end", "at most " + percent(d.total_percent)}, d.total_percent.source},
            {{"load taken where it is not known", percent(d.unknown_percent) + " of the breaker"},
             d.unknown_percent.source},
            {{"how it is said", d.demanded ? "demanded" : "advised"}, {}}};
        if (!d.dwelling_lengths.empty())
            rows.push_back(
                {{"a dwelling's lighting and general-use circuits may go by", std::string(d.dwelling_lengths)},
                 d.dwelling_lengths_source});
        return rows;
    });
}

} // namespace legwork
