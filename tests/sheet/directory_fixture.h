// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Invented panels for the directory, and what its tests ask of pages.
#pragma once

#include "balance/balance.h"
#include "building/resolve.h"
#include "labels_fixture.h"
#include "panel/layout.h"
#include "sheet/directory.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>

namespace legwork::sheet_test {

inline typed::Circuit line(std::string mark, std::string name, std::string room, int amps, int space, int poles = 1) {
    typed::Circuit c = circuit(std::move(mark), std::move(name), std::move(room), "12/2", space);
    c.breaker = Amps{amps * 1000};
    c.poles = poles;
    c.tie = poles == 2 ? Tie::two_pole_breaker : Tie::none;
    c.load = VoltAmperes{800'000};
    return c;
}

// A tied pair, an untied one, two-pole breakers, halves, a spare, a circuit that is off, blocked spaces, a smaller wire
// downstream, a bridged second source with two things to switch off.
inline typed::Job boathouse() {
    typed::Job job;
    job.name = "Ferry Landing boathouse";
    job.code = "CE 2024";
    job.revision = "B";
    job.date = Date{2026, 5, 2};
    job.supplies = {{"Grid", SupplyKind::split_120_240, 60_A, Leg::a, {}},
                    {"Cord inlet, north wall", SupplyKind::bridged_120, 30_A, Leg::a, {"WH", "RNG"}}};
    typed::Panel p;
    p.name = "Main";
    p.spaces = 24;
    p.main = 60_A;
    p.fed_from = "Meter, north wall";
    p.main_at = PanelEnd::top;
    p.supplies = {"Grid", "Cord inlet, north wall"};
    p.tandem = {17};
    p.blocked = {23, 24};
    job.panels = {p};

    auto k1 = line("K1", "Counter, left of sink", "Kitchen", 20, 1),
         k2 = line("K2", "Counter, right of sink", "Kitchen", 20, 3);
    k1.multiwire = k2.multiwire = "K";
    k1.tie = k2.tie = Tie::two_pole_breaker;
    k1.gfci = k2.gfci = Protection::breaker;
    auto u1 = line("U1", "Bench, west wall", "Workshop", 15, 6),
         u2 = line("U2", "Bench, east wall", "Workshop", 15, 12);
    u1.multiwire = u2.multiwire = "U";
    auto d1 = line("D1", "Outlets, both sides of the walkway", "Dock", 20, 2);
    d1.gfci = Protection::outlet;
    d1.run.push_back({"14/2", from_mm(6000), ""});
    auto l2 = line("L2", "Lights and fan", "Bathroom", 15, 17), l3 = line("L3", "Smoke alarms", "All rooms", 15, 17);
    l2.space->half = 'a';
    l3.space->half = 'b';
    l3.afci = Protection::breaker;
    auto spare = line("SP1", "", "", 15, 10);
    spare.use = "spare";
    spare.run.clear();
    auto lift = line("F1", "Boat lift", "Dock", 30, 14, 2);
    lift.off = true;
    job.circuits = {k1,
                    k2,
                    u1,
                    u2,
                    d1,
                    l2,
                    l3,
                    spare,
                    lift,
                    line("WH", "Water heater, under stair", "Hall", 20, 5, 2),
                    line("RNG", "Range", "Kitchen", 40, 9, 2),
                    line("RF", "Refrigerator", "Kitchen", 15, 13)};
    return job;
}

// As many invented circuits as a seed says, everywhere on a panel of any shape.
inline typed::Job crowded(unsigned seed) {
    auto const pick = [&](unsigned n) { // a small congruential generator, the same everywhere
        seed = seed * 1664525U + 1013904223U;
        return (seed >> 16) % n;
    };
    static constexpr std::array kNames{"Lights",
                                       "Receptacles, north wall by the wash basin",
                                       "Sorting line, north conveyor",
                                       "Élévateur à bateaux & <quai> d'été",
                                       "Pump",
                                       "Heater, office",
                                       "Donaudampfschifffahrtsgesellschaftskapitänsmützenständerlampe",
                                       "A name of sixty letters that goes on and on without any end ok"};
    static constexpr std::array kRooms{"", "Loft", "Packing hall, mezzanine", "Outside, lane side, by the meter post"};
    typed::Job job;
    job.name = pick(2) ? "Quince Hollow packing shed" : "";
    job.code = pick(2) ? "NEC 2023" : "CE 2021";
    typed::Panel p;
    p.name = "Main";
    p.spaces = 2 + static_cast<int>(pick(83));
    p.numbering = pick(2) ? Numbering::across : Numbering::down;
    p.first = static_cast<Corner>(pick(4));
    p.hang = static_cast<Hang>(pick(4));
    if (pick(2)) p.main_at = pick(2) ? PanelEnd::top : PanelEnd::bottom;
    if (pick(3)) p.main = 100_A;
    p.bus_legs = pick(4) ? BusLegs::by_row : BusLegs::by_column;
    p.supply = typed::Supply{"", static_cast<SupplyKind>(pick(7)), {}, Leg::b, {}};
    job.panels = {p};
    Layout const layout(p);
    int n = 0;
    for (int space = 1; space <= p.spaces; ++space) {
        if (pick(5) == 0) continue;
        auto const next = layout.next_in_column(space);
        bool const free = std::ranges::none_of(job.circuits, [&](typed::Circuit const& c) {
            auto const s = slots(layout, *c.space, c.poles);
            return std::ranges::count(s, space, &Spot::space) > 0;
        });
        if (!free) continue;
        bool const half = pick(6) == 0, two = !half && next && *next > space && pick(4) == 0;
        for (char const h : half ? std::vector{'a', 'b'} : std::vector{'\0'}) {
            auto c = line(fmt::format("C{}", ++n), kNames[pick(kNames.size())], kRooms[pick(kRooms.size())], 20, space,
                          two ? 2 : 1);
            c.space->half = h;
            c.gfci = static_cast<Protection>(pick(4));
            c.afci = static_cast<Protection>(pick(4));
            c.off = pick(9) == 0;
            if (pick(9) == 0) c.note = "never switch off while the cold room is loaded";
            if (pick(9) == 0) c.run.push_back({"14/2", from_mm(2000), ""});
            if (two && pick(3) == 0) c.tie = Tie::none;
            job.circuits.push_back(c);
        }
    }
    for (std::size_t i = 0; i + 1 < job.circuits.size(); i += 5)
        if (job.circuits[i].poles == 1 && job.circuits[i + 1].poles == 1) {
            job.circuits[i].multiwire = job.circuits[i + 1].multiwire = fmt::format("G{}", i);
            job.circuits[i].tie = job.circuits[i + 1].tie = pick(2) ? Tie::handle_tie : Tie::none;
        }
    return job;
}

inline Form directory_letter() { return {"directory-letter", "directory", "US letter", 215.9, 279.4}; }
inline Form directory_a4() { return {"directory-a4", "directory", "A4", 210, 297}; }

inline std::vector<Sheet> directory(typed::Job const& job, Plan const& plan, TextWidth const& widths, Form const& form,
                                    Findings const& findings = {}) {
    return compose_directory({resolve(job), plan, findings, *code_book(job.code), widths, "boathouse.toml"}, form);
}
inline std::vector<Sheet> directory(typed::Job const& job, TextWidth const& widths,
                                    Form const& form = directory_letter(), Findings const& findings = {}) {
    return directory(job, as_filed(resolve(job)), widths, form, findings);
}

// Empty when every mark stands within the page's margins.
inline std::string outside(Page const& page, Form const& form, TextWidth const& widths) {
    constexpr Mm slack = 0.3; // half of the strongest line
    auto const beyond = [&](Mm left, Mm top, Mm right, Mm bottom) {
        return left < form.margin - slack || top < form.margin - slack || right > form.width - form.margin + slack ||
               bottom > form.height - form.margin + slack;
    };
    for (Mark const& mark : page.marks) {
        if (auto const* t = std::get_if<Text>(&mark)) {
            auto const e = extent(*t, widths);
            if (beyond(e.left, e.top, e.right, e.bottom)) return t->words;
        } else if (auto const* l = std::get_if<Line>(&mark)) {
            if (beyond(std::min(l->x1, l->x2), std::min(l->y1, l->y2), std::max(l->x1, l->x2), std::max(l->y1, l->y2)))
                return "a line";
        } else if (auto const* b = std::get_if<Box>(&mark)) {
            if (beyond(b->x, b->y, b->x + b->width, b->y + b->height)) return "a box";
        }
    }
    return {};
}

// The one text with these words; where there is none or more the test fails by the count.
inline std::vector<Text> said(std::vector<Sheet> const& sheets, std::string_view words) {
    std::vector<Text> found;
    for (auto const& sheet : sheets)
        for (auto const& page : sheet.pages)
            for (auto const& t : texts(page))
                if (t.words == words) found.push_back(t);
    return found;
}

} // namespace legwork::sheet_test
