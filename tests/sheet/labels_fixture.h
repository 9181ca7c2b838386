// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// An invented workshop with one of each kind of cable, and what the tests of labels and tape notes ask of pages.
#pragma once

#include "building/resolve.h"
#include "cable/run.h"
#include "job/job.h"
#include "sheet/sheets.h"

#include <string>
#include <utility>
#include <vector>

namespace legwork::sheet_test {

// Widths without a font: 1.05 x-heights a letter, about the bundled face.
class EvenWidths : public TextWidth {
public:
    Mm width(std::string_view words, Mm x_height, Weight weight) const override {
        std::size_t letters = 0;
        for (char const c : words) letters += (static_cast<unsigned char>(c) & 0xC0) != 0x80;
        return static_cast<Mm>(letters) * x_height * (weight == Weight::bold ? 1.15 : 1.05);
    }
    std::vector<std::string> missing(std::string_view) const override { return {}; }
};

inline typed::Circuit circuit(std::string mark, std::string name, std::string room, std::string cable, int space) {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.name = std::move(name);
    c.room = std::move(room);
    c.panel = "Main";
    c.breaker = Amps{20'000};
    if (!cable.empty()) c.run.push_back({std::move(cable), from_mm(9500), ""});
    if (space > 0) c.space = Spot{space, 0};
    return c;
}

// A pair that splits at box B3, a water heater on a white re-marked as hot, lights with a switch loop, a feeder with a
// sub-panel, a GFCI breaker, a red and black cable that lacks a neutral, a spare, a circuit of unsaid cable, a network
// cable.
inline typed::Job workshop(std::string code) {
    typed::Job job;
    job.name = "Mill Creek workshop";
    job.code = std::move(code);
    job.revision = "B";
    job.date = Date{2026, 5, 2};
    typed::Panel main;
    main.name = "Main";
    main.spaces = 24;
    main.supply = typed::Supply{};
    job.panels.push_back(main);
    typed::Panel loft;
    loft.name = "Loft";
    loft.spaces = 8;
    loft.feeder = typed::FeederName{"Main", "SP"};
    job.panels.push_back(loft);

    typed::Circuit k1 = circuit("K1", "Bench, left of window", "Machine room", "12/3", 8);
    typed::Circuit k2 = circuit("K2", "Bench, right of window", "Machine room", "12/3", 10);
    k1.multiwire = k2.multiwire = "K";
    k1.tie = k2.tie = Tie::two_pole_breaker;
    k1.box = "B3";
    k1.run.push_back({"12/2", from_mm(3000), ""});
    k2.run.push_back({"12/2", from_mm(5000), "B4"});
    typed::Circuit wh = circuit("WH", "Water heater, under stair", "", "12/2", 3);
    wh.poles = 2;
    wh.tie = Tie::two_pole_breaker;
    wh.use = "water heater";
    typed::Circuit l1 = circuit("L1", "Ceiling lights", "Machine room", "14/2", 1);
    l1.breaker = Amps{15'000};
    l1.switch_loop = true;
    l1.run.push_back({"14/2", from_mm(4000), "Switch at the door"});
    typed::Circuit sp = circuit("SP", "Loft panel", "Loft", "8/3", 13);
    sp.poles = 2;
    sp.tie = Tie::two_pole_breaker;
    sp.breaker = Amps{40'000};
    typed::Circuit g1 = circuit("G1", "Washroom, by the basin", "Washroom", "12/2", 0);
    g1.gfci = Protection::breaker;
    typed::Circuit o1 = circuit("O1", "Yard outlet, west post", "Yard", "12/2", 4);
    o1.colors = {"red", "black"};
    typed::Circuit spare = circuit("X9", "Spare", "", "", 12);
    spare.use = "spare";
    typed::Circuit unsaid = circuit("Q1", "Dust extractor", "Machine room", "", 6);
    typed::Circuit f1 = circuit("F1", "Desk outlets", "Loft", "14/2", 1);
    f1.panel = "Loft";
    f1.breaker = Amps{15'000};
    job.circuits = {k1, k2, wh, l1, sp, g1, o1, spare, unsaid, f1};
    job.cables.push_back({"S1", "Camera, yard", "cat6", "Network shelf", "West post", from_mm(11000), {}});
    return job;
}

// Circuits stand where the file has them; those without a space get the next even one from 14 on.
inline Plan filed(typed::Job const& job) {
    Plan plan;
    for (auto const& panel : job.panels) {
        PanelPlan p;
        p.panel = panel.name;
        int next = 14;
        for (auto const& c : job.circuits) {
            if (c.panel != panel.name) continue;
            Placement at;
            at.circuit = c.mark;
            int const space = c.space ? c.space->space : std::exchange(next, next + 2);
            at.slots = {{space, 0}};
            if (c.poles == 2) at.slots.push_back({space + 2, 0});
            if (c.space) at.from = at.slots;
            p.placements.push_back(at);
        }
        plan.panels.push_back(p);
    }
    return plan;
}

inline Form labels_letter() {
    Form f;
    f.name = "labels-letter";
    f.sheet = "labels";
    f.width = 215.9;
    f.height = 279.4;
    f.margin = 5;
    f.columns = 3;
    f.rows = 10;
    f.label_width = 66.675;
    f.label_height = 25.4;
    f.left = 4.7625;
    f.top = 12.7;
    f.pitch_x = 69.85;
    f.pitch_y = 25.4;
    return f;
}

// Stock with no margins round the labels.
inline Form labels_edge_to_edge() {
    Form f = labels_letter();
    f.width = 210;
    f.height = 297;
    f.rows = 8;
    f.label_width = f.pitch_x = 70;
    f.label_height = f.pitch_y = 36;
    f.left = 0;
    f.top = 4.5;
    return f;
}

inline Form tape_letter() {
    Form f;
    f.name = "tape-notes-letter";
    f.sheet = "tape-notes";
    f.width = 215.9;
    f.height = 279.4;
    return f;
}

struct Ask {
    typed::Job job;
    Plan plan;
    Findings findings;
    mutable std::shared_ptr<Building const> building{}; // of the job as it is when the sheet is asked for
    SheetInput input(TextWidth const& widths) const {
        building = std::make_shared<Building const>(resolve(job));
        return {*building, plan, findings, *code_book(job.code), widths, "workshop.toml"};
    }
};
inline Ask ask(std::string code) {
    typed::Job job = workshop(std::move(code));
    Plan plan = filed(job);
    return {std::move(job), std::move(plan), {}};
}

inline std::vector<Text> texts(Page const& page) {
    std::vector<Text> found;
    for (auto const& mark : page.marks)
        if (auto const* t = std::get_if<Text>(&mark)) found.push_back(*t);
    return found;
}
inline std::string all_words(std::vector<Sheet> const& sheets) {
    std::string words;
    for (auto const& sheet : sheets)
        for (auto const& page : sheet.pages)
            for (auto const& t : texts(page)) words += t.words + "\n";
    return words;
}

// What a text covers: from the top of its capitals to its lowest letters. Capitals and digits stand on the line.
struct Extent {
    Mm left, top, right, bottom;
};
inline Extent extent(Text const& t, TextWidth const& widths) {
    Mm const w = widths.width(t.words, t.x_height, t.weight);
    Mm const before = t.align == Align::left ? 0 : t.align == Align::right ? w : w / 2;
    bool const hangs = t.words.find_first_not_of("ABCDEFGHIJKLMNOPRSTUVWXYZ0123456789+- ") != t.words.npos;
    Mm const above = 1.39 * t.x_height, below = hangs ? 0.47 * t.x_height : 0;
    switch (t.turn) { // clockwise about the anchor
    case 90: return {t.x - below, t.baseline - before, t.x + above, t.baseline + w - before};
    case 180: return {t.x - w + before, t.baseline - below, t.x + before, t.baseline + above};
    case 270: return {t.x - above, t.baseline - w + before, t.x + below, t.baseline + before};
    default: return {t.x - before, t.baseline - above, t.x - before + w, t.baseline + below};
    }
}
inline bool overlap(Extent const& a, Extent const& b) {
    constexpr Mm touch = 0.05;
    return a.left < b.right - touch && b.left < a.right - touch && a.top < b.bottom - touch && b.top < a.bottom - touch;
}
// Empty when no two texts of the page cover each other.
inline std::string overlapping(Page const& page, TextWidth const& widths) {
    auto const all = texts(page);
    for (std::size_t i = 0; i < all.size(); ++i)
        for (std::size_t k = i + 1; k < all.size(); ++k)
            if (overlap(extent(all[i], widths), extent(all[k], widths))) return all[i].words + " / " + all[k].words;
    return {};
}

// The die-cut label under this point, counted from 0; -1 in a margin or between labels.
inline int cell_at(Form const& f, Mm x, Mm y) {
    for (int cell = 0; cell < f.columns * f.rows; ++cell) {
        Mm const left = f.left + (cell % f.columns) * f.pitch_x, top = f.top + (cell / f.columns) * f.pitch_y;
        if (x >= left && x < left + f.label_width && y >= top && y < top + f.label_height) return cell;
    }
    return -1;
}

// The first text that comes nearer to the die cut than 1.5 mm, or that the printer does not reach; empty when all do.
inline std::string too_near(Page const& page, Form const& f, TextWidth const& widths) {
    for (auto const& t : texts(page)) {
        auto const e = extent(t, widths);
        constexpr Mm dust = 1e-6;
        if (e.left < f.margin - dust || e.top < f.margin - dust || e.right > f.width - f.margin + dust ||
            e.bottom > f.height - f.margin + dust)
            return t.words + " (edge)";
        int const cell = cell_at(f, (e.left + e.right) / 2, (e.top + e.bottom) / 2);
        if (cell < 0) {
            bool const in_margin = e.bottom <= f.top || e.top >= f.top + (f.rows - 1) * f.pitch_y + f.label_height;
            if (!in_margin) return t.words + " (between)";
            continue;
        }
        Mm const left = f.left + (cell % f.columns) * f.pitch_x, top = f.top + (cell / f.columns) * f.pitch_y;
        if (e.left < left + 1.5 - dust || e.top < top + 1.5 - dust || e.right > left + f.label_width - 1.5 + dust ||
            e.bottom > top + f.label_height - 1.5 + dust)
            return t.words;
    }
    return {};
}

} // namespace legwork::sheet_test
