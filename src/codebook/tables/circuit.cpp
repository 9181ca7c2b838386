// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit of a size may feed, and where its cable may run.
#include "codebook/branch_limits.h"
#include "codebook/cable_places.h"
#include "codebook/tables/tables.h"

#include <fmt/format.h>

namespace legwork {

namespace {
using Rows = std::vector<TableRow>;

void add_amperes(Rows& rows, std::string what, std::optional<Figure> const& figure) {
    if (figure) rows.push_back({{std::move(what), fmt::format("{} A", figure->value)}, figure->source});
}
void add_depth(Rows& rows, std::string what, std::optional<Figure> const& figure) {
    if (figure) rows.push_back({{std::move(what), fmt::format("{} mm", figure->value)}, figure->source});
}

std::string word(MayRun may) {
    switch (may) {
    case MayRun::yes: return "yes";
    case MayRun::ask: return "as marked";
    case MayRun::no: break;
    }
    return "no";
}
} // namespace

std::vector<TablePart> branch_table() {
    return by_edition({"what hangs on the circuit", "its breaker"}, "wire-branch", [](CodeBook const& book) {
        auto const& b = branch_limits(book);
        Rows rows;
        add_amperes(rows, "luminaires of a dwelling, at most", b.lights);
        add_amperes(rows, "receptacles of a dwelling's rooms, at most", b.receptacles);
        add_amperes(rows, "elsewhere lampholders that are not of the heavy-duty kind, at most", b.heavy_duty_above);
        add_amperes(rows, "lights and little else, no receptacles, up to", b.small);
        add_amperes(rows, "taps to cooking appliances, at most", b.tap.breaker);
        add_amperes(rows, "such a tap carries, at least", b.tap.least);
        return rows;
    });
}

std::vector<TablePart> cable_place_table() {
    return by_edition({"cable", "damp", "wet", "outdoors", "buried"}, "wire-place", [](CodeBook const& book) {
        Rows rows;
        for (CablePlaceRow const& r : cable_places(book).rows) {
            auto const type = type_name(r.type);
            rows.push_back({{type.empty() ? "G/N" : fmt::format("G/N {}", type), word(r.damp), word(r.wet),
                             word(r.outdoors), word(r.buried)},
                            r.source});
        }
        return rows;
    });
}

std::vector<TablePart> burial_table() {
    return by_edition({"what is buried", "cover, at least"}, "wire-place/burial", [](CodeBook const& book) {
        auto const& d = cable_places(book).burial;
        Rows rows;
        add_depth(rows, "cable", d.cable);
        add_depth(rows, "plastic conduit", d.conduit);
        add_depth(rows, "a 120 V circuit of 20 A or less behind a GFCI breaker", d.circuit);
        return rows;
    });
}

} // namespace legwork
