// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_block.h"

#include "page/usual_letters.h"
#include "sheet/common_text.h"
#include "sheet/directory_cell.h"
#include "words/say.h"

#include <algorithm>

namespace legwork {

namespace {

constexpr Mm kSpine = 8, kNumberColumn = 9.5, kPad = 1.2;
constexpr Mm kBeforeBreaker = 3; // between the words and the amperes
constexpr Mm kTieRoom = 2.9;     // between a number and the spine
constexpr Mm kEdge = 0.5, kHair = 0.15;
constexpr Mm kLeastBreaker = 9, kGreatestBreaker = 18; // room for a breaker's words
constexpr Mm kAboveWords = 0.5;                        // of a cell's height its edges take

Mm column_width(Mm width) { return (width - kSpine) / 2; }
Mm indent(Entry const& e) { return e.kind == EntryKind::future ? 1 : 0; } // clear of its dashed outline
Mm words_width(Mm cell, Mm breaker_column, Entry const& e) {
    return cell - (kNumberColumn + breaker_column + kBeforeBreaker) - kPad - indent(e);
}

struct Cell {
    Mm x, y, width, height;
    bool spine_right; // a cell of the left column
    bool whole_rows;  // false for the half of a space
};

CellWords words_of(Entry const& e, Catalogue const& catalogue) {
    auto const all = [&](Phrases const& some) {
        std::vector<std::string> words;
        for (Phrase const& p : some) words.push_back(catalogue.words(p));
        return words;
    };
    auto const cell = [&](Phrase const& name, Weight weight, Phrase const& place, Phrases const& warnings,
                          Phrases const& remarks) {
        return CellWords{catalogue.words(name), weight,       catalogue.words(place),
                         all(warnings),         all(remarks), catalogue.words(say("directory/more-below"))};
    };
    switch (e.kind) {
    case EntryKind::circuit: return cell(e.name, Weight::bold, e.place, e.warnings, e.remarks);
    case EntryKind::future: {
        auto warnings = e.warnings;
        warnings.insert(warnings.begin(), say("directory/wired-off"));
        return cell(say("directory/future", e.name), Weight::regular, e.place, warnings, e.remarks);
    }
    case EntryKind::spare:
        return cell(say("directory/spare"), Weight::regular, say("directory/spare-why"), e.warnings, e.remarks);
    case EntryKind::space: return cell(say("directory/space"), Weight::regular, {}, {}, {});
    case EntryKind::not_fed:
        return cell(say("directory/not-fed"), Weight::regular, say("directory/not-fed-why"), {}, {});
    case EntryKind::blocked:
        return cell(say("directory/blocked"), Weight::regular, say("directory/blocked-why"), {}, {});
    }
    return {};
}

class BlockWriter {
public:
    BlockWriter(Pen const& pen, BlockInput const& input, BlockSpan span, Mm x, Mm y, Mm width, Mm row)
        : pen_(pen), input_(input), span_(span), x_(x), y_(y), width_(width), row_(row) {
        // Two sizes of detail: the larger where the row has room for a name and a line below it.
        sizes_ = {kNames, first_to_second(kDetail) <= row_ - 1.2 ? kDetail : kFloor};
        // Descenders weigh less than letters: they count half when the two lines are centred.
        first_line_ = (row_ - first_to_second(sizes_.detail) + descent(sizes_.detail) / 2) / 2 + cap_height(kNames);
        breaker_column_ = breaker_column();
    }

    BlockResult make() {
        add_spine();
        for (Entry const& e : input_.entries.entries) add(e);
        for (HandleTie const& t : input_.entries.ties) add_tie(t);
        return std::move(made_);
    }

private:
    std::string words(Phrase const& phrase) const { return input_.catalogue.words(phrase); }
    static Mm first_to_second(Mm detail) { return cap_height(kNames) + line_step(kNames, detail) + descent(detail); }
    // As wide as the widest breaker or mark asks for, within bounds.
    Mm breaker_column() const {
        Mm widest = 0;
        for (Entry const& e : input_.entries.entries) {
            widest = std::max(widest, input_.widths.width(words(e.breaker), kDetail, Weight::regular));
            widest = std::max(widest, input_.widths.width(e.mark, sizes_.detail, Weight::regular));
        }
        return std::clamp(widest, kLeastBreaker, kGreatestBreaker) + kPad;
    }
    Mm column_width() const { return legwork::column_width(width_); }
    Mm top(double row) const { return y_ + (row - span_.from) * row_; }
    Mm spine_left() const { return x_ + column_width(); }
    Mm bottom() const { return top(span_.to); }
    bool shown(Hanging::Stretch const& s) const { return s.from < span_.to && s.to > span_.from; }

    void line(Mm x1, Mm y1, Mm x2, Mm y2, Mm width) { pen_.add(Line{x1, y1, x2, y2, width, kBlack, false}); }
    void text(Mm x, Mm baseline, Mm x_height, std::string const& line, Weight weight, Align align, Ink ink = kBlack) {
        pen_.add(Text{x, baseline, x_height, line, weight, align, ink, 0});
    }

    void add_spine() {
        for (int row = span_.from; row < span_.to; ++row) {
            Mm const y = top(row), letter_y = y + first_line_;
            if (!input_.shows_legs) continue;
            if (input_.hanging.legs_by_column()) {
                for (int const column : {0, 1})
                    text(spine_left() + kSpine * (column == 0 ? 0.27 : 0.73), letter_y, kFloor,
                         std::string(1, letter(input_.hanging.leg_of_column(column))), Weight::regular, Align::centre);
                continue;
            }
            Leg const leg = input_.hanging.leg_of_row(row);
            if (leg == Leg::b) pen_.add(Box{spine_left(), y, kSpine, row_, 0, kBlack, true, grey(0.93), 0, false});
            text(spine_left() + kSpine / 2, letter_y, kDetail, std::string(1, letter(leg)), Weight::regular,
                 Align::centre);
        }
        line(spine_left(), top(span_.from), spine_left(), bottom(), kEdge);
        line(spine_left() + kSpine, top(span_.from), spine_left() + kSpine, bottom(), kEdge);
        line(x_, top(span_.from), x_ + width_, top(span_.from), kEdge);
        line(x_, bottom(), x_ + width_, bottom(), kEdge);
    }

    void add(Entry const& e) {
        auto const where = stretches(input_.hanging, e.slots);
        for (std::size_t i = 0; i < where.size(); ++i) {
            if (!shown(where[i])) continue;
            // A breaker cut by the page's end shows the part that is here.
            double const from = std::max<double>(where[i].from, span_.from),
                         to = std::min<double>(where[i].to, span_.to);
            Cell const cell{where[i].column == 0 ? x_ : spine_left() + kSpine,
                            top(from),
                            column_width(),
                            (to - from) * row_,
                            where[i].column == 0,
                            to - from >= 1};
            add_edges(e, cell);
            add_words(e, cell, i == 0);
        }
        for (Spot const s : e.slots) add_number(e, s);
    }

    void add_edges(Entry const& e, Cell const& cell) {
        line(cell.x, cell.y + cell.height, cell.x + cell.width, cell.y + cell.height, kHair);
        bool const lighter = e.kind == EntryKind::future;
        if (e.slots.size() == 2 && !lighter)
            pen_.add(Box{cell.x + kEdge / 2, cell.y, cell.width - kEdge / 2, cell.height, kEdge, kBlack, false, kWhite,
                         0, false});
        Mm const inset = 0.7;
        if (lighter)
            pen_.add(Box{cell.x + inset, cell.y + inset, cell.width - 2 * inset, cell.height - 2 * inset, kHair, kBlack,
                         false, kWhite, 0, true});
        if (e.kind == EntryKind::blocked) add_cross(cell);
    }

    // Where a breaker would be: none may.
    void add_cross(Cell const& cell) {
        Mm const side = std::min(5.0, cell.height - 2);
        Mm const right =
            cell.spine_right ? cell.x + cell.width - kNumberColumn - kPad : cell.x + kNumberColumn + breaker_column_;
        Mm const x = right - side, y = cell.y + (cell.height - side) / 2;
        for (bool const rising : {false, true})
            pen_.add(Line{x, rising ? y + side : y, x + side, rising ? y : y + side, kHair, kLighter, false});
    }

    // The space's number beside the spine, in each of its rows.
    void add_number(Entry const& e, Spot s) {
        auto const at = input_.hanging.stretch(s);
        if (!shown(at)) return;
        Mm const right = at.column == 0 ? spine_left() - kTieRoom : spine_left() + kSpine + kNumberColumn;
        bool const half = s.half != 0;
        Mm const size = half ? kDetail : kNames;
        Mm const baseline = half ? top(at.from) + (row_ / 2 + cap_height(size)) / 2 : top(at.from) + first_line_;
        bool const lighter = e.kind == EntryKind::space || e.kind == EntryKind::not_fed || e.kind == EntryKind::blocked;
        text(right, baseline, size, legwork::text(s), lighter ? Weight::regular : Weight::bold, Align::right,
             lighter ? kLighter : kBlack);
    }

    void add_words(Entry const& e, Cell const& cell, bool first) {
        bool const is_line = e.kind == EntryKind::circuit; // what is not a circuit must not look like one
        Ink const ink = is_line || e.kind == EntryKind::future ? kBlack : kLighter;
        Mm const used = kNumberColumn + breaker_column_ + kBeforeBreaker;
        Mm const left = cell.spine_right ? cell.x + kPad + indent(e) : cell.x + used;
        CellSizes sizes = sizes_;
        if (!is_line) sizes.name = kDetail;
        Mm const width = words_width(cell.width, breaker_column_, e);
        auto const set =
            set_cell(input_.widths, words_of(e, input_.catalogue), width, cell.height - kAboveWords, sizes);

        Mm baseline = cell.y + (cell.height - set.above - set.below) / 2 + set.above;
        if (cell.height < row_ * 1.01 && cell.whole_rows && set.above <= first_line_ - 0.3 &&
            first_line_ + set.below <= cell.height - 0.2)
            baseline = cell.y + first_line_; // one grid for all lines of one row
        for (CellLine const& l : set.lines)
            text(left + l.x, baseline + l.y, l.x_height, l.words, l.weight, Align::left, ink);
        if (!e.breaker.empty()) add_breaker(e, cell, breaker_baseline(cell, baseline), ink);
        if (e.kind == EntryKind::not_fed) strike(cell, left, baseline, set);
        if (!first) return;
        for (std::string const& left_out : set.left_out)
            made_.notes.push_back({e.slots.front().space, numbers(e.slots), e.mark, left_out});
        if (set.shortened) {
            made_.notes.insert(made_.notes.begin(), {e.slots.front().space, numbers(e.slots), e.mark, words(e.name)});
            made_.shortened.push_back(e.mark);
        }
    }

    // Beside the number on a line of its own row; in the middle of a two-pole breaker; with the words of a half.
    Mm breaker_baseline(Cell const& cell, Mm of_words) const {
        if (!cell.whole_rows) return of_words;
        if (cell.height < row_ * 1.01) return cell.y + first_line_;
        return cell.y + cell.height / 2 - row_ / 2 + first_line_;
    }

    void add_breaker(Entry const& e, Cell const& cell, Mm baseline, Ink ink) {
        Mm const right =
            cell.spine_right ? cell.x + cell.width - kNumberColumn - kPad : cell.x + kNumberColumn + breaker_column_;
        Mm const width = breaker_column_ - kPad;
        bool const two_lines = cell.whole_rows;
        auto const breaker = words(e.breaker);
        auto const amps = fit_line(input_.widths, breaker, Weight::regular, width, two_lines ? kDetail : kFloor);
        add_text(amps, right, baseline, Weight::regular, ink);
        if (two_lines) {
            auto const mark = fit_line(input_.widths, e.mark, Weight::regular, width, sizes_.detail);
            add_text(mark, right, baseline + line_step(kNames, sizes_.detail), Weight::regular, ink);
            return;
        }
        Mm const left = width - input_.widths.width(breaker, amps.x_height, Weight::regular) - kPad;
        auto const mark = fit_line(input_.widths, e.mark, Weight::regular, left, kFloor);
        if (mark.shortened)
            made_.notes.push_back(
                {e.slots.front().space, numbers(e.slots), e.mark, words(say("directory/cable-mark", e.mark))});
        add_text(mark, right - width + left, baseline, Weight::regular, ink);
    }

    void add_text(Fitted const& fitted, Mm x, Mm baseline, Weight weight, Ink ink) {
        for (std::string const& line : fitted.lines)
            text(x, baseline, fitted.x_height, line, weight, Align::right, ink);
    }

    // A dashed line through the rest of the cell: no circuit here.
    void strike(Cell const& cell, Mm left, Mm baseline, CellText const& set) {
        Mm from = left;
        for (CellLine const& l : set.lines)
            from = std::max(from, left + l.x + input_.widths.width(l.words, l.x_height, l.weight));
        Mm const to = cell.spine_right ? cell.x + cell.width - kNumberColumn - kPad : cell.x + cell.width - kPad;
        Mm const y = baseline - kDetail / 2;
        if (to - from > 6) pen_.add(Line{from + 2, y, to, y, kHair, kLighter, true});
    }

    // A bracket from handle to handle, between the numbers and the spine.
    void add_tie(HandleTie const& t) {
        auto a = input_.hanging.stretch(t.first), b = input_.hanging.stretch(t.second);
        if (a.from > b.from) std::swap(a, b);
        double const from = (a.from + a.to) / 2, to = (b.from + b.to) / 2;
        if (from >= span_.to || to <= span_.from) return;
        bool const left_column = a.column == 0;
        Mm const bar = 0.9, tick = 1.6;
        Mm const spine = left_column ? spine_left() : spine_left() + kSpine;
        Mm const x = left_column ? spine - 0.5 - bar : spine + 0.5;
        Mm const y1 = std::max(top(from), top(span_.from)), y2 = std::min(top(to), bottom());
        pen_.add(Box{x, y1, bar, y2 - y1, 0, kBlack, true, kBlack, 0, false});
        Mm const tick_x = left_column ? x - tick + bar : x;
        for (double const row : {from, to})
            if (row > span_.from && row < span_.to)
                pen_.add(Box{tick_x, top(row) - bar / 2, tick, bar, 0, kBlack, true, kBlack, 0, false});
    }

    Pen pen_;
    BlockInput const& input_;
    BlockSpan span_;
    Mm x_, y_, width_, row_;
    CellSizes sizes_;
    Mm first_line_ = 0, breaker_column_ = 0;
    BlockResult made_;
};

} // namespace

bool surely_shows_name(Entry const& e, Catalogue const& catalogue, Mm width) {
    bool const half = std::ranges::any_of(e.slots, [](Spot s) { return s.half != 0; });
    auto words = words_of(e, catalogue);
    words.place.clear();
    words.warnings.clear();
    words.remarks.clear();
    return !set_cell(UsualLetters(), words, words_width(column_width(width), kGreatestBreaker + kPad, e),
                     kLeastRow / (half ? 2 : 1) - kAboveWords, {kFloor, kFloor})
                .shortened;
}

BlockResult panel_block(Pen const& pen, BlockInput const& input, BlockSpan span, Mm x, Mm y, Mm width, Mm row) {
    return BlockWriter(pen, input, span, x, y, width, row).make();
}

} // namespace legwork
