// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "codebook/tables/tables.h"

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;
using Words = std::vector<std::string>;

std::string mark(bool is) { return is ? "yes" : "-"; }

std::string poles(Poles p) {
    if (p == Poles::either) return "1 or 2";
    return p == Poles::one ? "1" : "2";
}

Words traits(Use const& u) {
    struct Trait {
        bool is;
        std::string_view words;
    };
    Words all;
    for (Trait const t :
         {Trait{u.continuous, "continuous"}, Trait{u.intermittent, "not continuous"}, Trait{u.motor, "motor"},
          Trait{u.duty_cycle, "duty cycle"}, Trait{u.receptacle, "receptacles"}, Trait{u.lighting, "lighting"},
          Trait{u.heating, "fixed heating"}, Trait{u.branch_demand, "range demand"}, Trait{u.cooking, "cooking"},
          Trait{u.dedicated, "own circuit"}, Trait{u.keep_on, "keep on"},
          Trait{u.uses_neutral_at_240, "neutral at 240 V"},
          Trait{u.may_use_neutral_at_240, "perhaps a neutral at 240 V"}, Trait{u.source, "feeds the panel"},
          Trait{u.fixed, "fastened in place"}})
        if (t.is) all.emplace_back(t.words);
    return all;
}

TableRow cable_row(std::string const& named) {
    auto const kind = cable_kind(named);
    if (!kind) return {{named, "-", "-", "-", "-"}, Source::practice};
    return {{kind->name, kind->gauge ? std::string(name(*kind->gauge)) : "-",
             kind->colors.empty() ? "-" : fmt::format("{}", fmt::join(names(kind->colors), ", ")), mark(kind->ground),
             kind->jacket.empty() ? "-" : kind->jacket},
            Source::practice};
}
} // namespace

std::vector<TablePart> receptacle_table() {
    Rows rows;
    for (Receptacle const& r : receptacles())
        rows.push_back({{std::string(r.name), fmt::format("{} V", r.volts), fmt::format("{} A", r.amps),
                         std::to_string(r.hots), mark(r.neutral), mark(r.ground), mark(r.locking), mark(r.single)},
                        Source::seen});
    return {
        {{}, "", {"type", "volts", "amperes", "hots", "neutral", "ground", "locking", "one a yoke"}, std::move(rows)}};
}

std::vector<TablePart> cable_table() {
    Rows rows;
    for (GaugeName const& g : kGauges)
        for (int insulated = 2; g.gauge >= Gauge::awg14 && insulated <= 4; ++insulated)
            rows.push_back(cable_row(fmt::format("{}/{}", g.name, insulated)));
    for (CableTypeName const& t : kCableTypes) rows.push_back(cable_row(fmt::format("12/3 {}", t.name)));
    for (auto const& named : named_cable_kinds()) rows.push_back(cable_row(named));
    return {{{}, "", {"kind", "AWG", "insulated conductors", "ground", "jacket"}, std::move(rows)}};
}

std::vector<TablePart> use_table() {
    Rows rows;
    for (Use const& u : uses())
        rows.push_back({{std::string(u.name), poles(u.poles), std::string(name(u.place)),
                         fmt::format("{}", fmt::join(traits(u), ", "))},
                        {}});
    return {{{}, "", {"use", "poles", "place", "what it says"}, std::move(rows)}};
}

} // namespace legwork
