// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_map.h"

#include "sheet/common_text.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr Mm kSpine = 6, kMain = 13, kGreatestCell = 16;

class Map {
public:
    Map(Pen const& pen, BlockInput const& input, Mm x, Mm y, Mm width)
        : pen_(pen), input_(input), y_(y), cell_height_((kMapHeight - kSpine) / 2) {
        auto const end = input.hanging.main_end();
        Mm const main = end ? kMain + 1 : 0;
        cell_ = std::min(kGreatestCell, (width - main) / input.hanging.rows());
        Mm const used = cell_ * input.hanging.rows() + main;
        x_ = x + (width - used) / 2 + (end == PanelEnd::top ? main : 0);
        main_x_ = end == PanelEnd::top ? x_ - main : x_ + cell_ * input.hanging.rows() + 1;
    }

    void add(std::string const& main_words) {
        for (Entry const& e : input_.entries.entries) add(e);
        for (HandleTie const& t : input_.entries.ties) add(t);
        for (int i = 0; input_.shows_legs && i < input_.hanging.rows(); ++i) add_leg(i);
        Mm const length = cell_ * input_.hanging.rows();
        for (Mm const y : {spine(), spine() + kSpine}) pen_.add(Line{x_, y, x_ + length, y, 0.5, kBlack, false});
        if (!input_.hanging.main_end()) return;
        pen_.add(Box{main_x_, y_, kMain, kMapHeight, 0.5, kBlack, false, kWhite, 0, false});
        // Turned: the box is narrow.
        auto const words = fit_line(input_.widths, main_words, Weight::bold, kMapHeight - 2, kNames);
        pen_.add(Text{main_x_ + (kMain + cap_height(words.x_height)) / 2, y_ + kMapHeight / 2, words.x_height,
                      words.lines.front(), Weight::bold, Align::centre, kBlack, 270});
    }

private:
    Mm spine() const { return y_ + cell_height_; }
    Mm top(int column) const { return column == 0 ? y_ : spine() + kSpine; }

    void add_leg(int i) {
        Leg const leg = input_.hanging.leg_of_row(i);
        Mm const middle = x_ + cell_ * (i + 0.5);
        if (input_.hanging.legs_by_column()) return;
        pen_.add(Text{middle, spine() + (kSpine + cap_height(kFloor)) / 2, kFloor, std::string(1, letter(leg)),
                      Weight::regular, Align::centre, kBlack, 0});
    }

    void add(Entry const& e) {
        bool const breaker = e.poles > 0;
        for (auto const& at : stretches(input_.hanging, e.slots)) {
            Mm const x = x_ + at.from * cell_, width = (at.to - at.from) * cell_, y = top(at.column);
            pen_.add(Box{x, y, width, cell_height_, e.slots.size() == 2 ? 0.5 : 0.15, kBlack, false, kWhite, 0, false});
            auto const mark = fit_line(input_.widths, e.mark, Weight::regular, width - 1, kDetail);
            // The space tells which line it is; a mark that does not fit stands there.
            if (breaker && !mark.shortened)
                pen_.add(Text{x + width / 2, y + cell_height_ / 2 + 4.5, mark.x_height, e.mark, Weight::regular,
                              Align::centre, kBlack, 0});
        }
        for (Spot const s : e.slots) add_number(s, breaker);
    }

    void add_number(Spot s, bool breaker) {
        // Halves too narrow for numbers of their own share that of their space.
        if (s.half != 0 && cell_ / 2 < cap_height(kFloor) + descent(kFloor)) {
            if (s.half == 'b') return;
            s.half = 0;
        }
        auto const at = input_.hanging.stretch(s);
        Mm const width = (at.to - at.from) * cell_, middle = x_ + at.from * cell_ + width / 2;
        Weight const weight = breaker ? Weight::bold : Weight::regular;
        Ink const ink = breaker ? kBlack : kLighter;
        auto const words = fit_line(input_.widths, text(s), weight, width - 0.4, kNames);
        Mm const y = top(at.column) + cell_height_ / 2;
        if (!words.shortened)
            pen_.add(Text{middle, y, words.x_height, text(s), weight, Align::centre, ink, 0});
        else // too narrow: upwards
            pen_.add(Text{middle + cap_height(kFloor) / 2, y + 1.5, kFloor, text(s), weight, Align::left, ink, 270});
    }

    void add(HandleTie const& t) {
        auto a = input_.hanging.stretch(t.first), b = input_.hanging.stretch(t.second);
        if (a.from > b.from) std::swap(a, b);
        Mm const bar = 0.9;
        Mm const from = x_ + cell_ * (a.from + a.to) / 2, to = x_ + cell_ * (b.from + b.to) / 2;
        Mm const y = a.column == 0 ? spine() - 0.5 - bar : spine() + kSpine + 0.5;
        pen_.add(Box{from, y, to - from, bar, 0, kBlack, true, kBlack, 0, false});
    }

    Pen pen_;
    BlockInput const& input_;
    Mm y_, cell_height_, cell_ = 0, x_ = 0, main_x_ = 0;
};

} // namespace

void add_panel_map(Pen const& pen, BlockInput const& input, std::string const& main_words, Mm x, Mm y, Mm width) {
    Map(pen, input, x, y, width).add(main_words);
}

} // namespace legwork
