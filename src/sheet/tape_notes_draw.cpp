// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_draw.h"

#include "sheet/tape_notes_ink.h"

#include <algorithm>
#include <utility>

namespace legwork {

namespace {

constexpr Mm kPad = 3;             // from the cut line to the text
constexpr Mm kWireWidth = 15;      // of the piece of conductor, and of its colour's name above
constexpr Mm kArrow = 3.5;         // length
constexpr Mm kTapeWidth = 19;      // of the column at the right
constexpr Mm kBetween = kCardRule; // white between rows
constexpr Mm kFrame = 0.5;
constexpr Mm kSwatchBelow = 1.6; // from the middle of a drawn wire to what is clear of it

// Draws from the top down; `y` is where the next thing begins.
class CardPen {
public:
    CardPen(Pen const& pen, Mm x, Mm y, Mm width)
        : pen_(pen), widths_(pen.widths()), left_(x + kPad), right_(x + width - kPad), y_(y + kPad) {}

    Mm y() const { return y_; }
    // Whether all that was said since the last such question stands there whole.
    bool was_whole() { return std::exchange(whole_, true); }

    void title(BoxCard const& card, std::string const& part) {
        Mm const part_width = part.empty() ? 0 : widths_.width(part, kDetail, Weight::regular) + 3;
        auto const text = noted(
            fit(widths_, card.heading, Weight::bold, width() - part_width, block_height(2, kNames), 3.1, kDetail));
        Mm const first = y_ + cap_height(text.x_height);
        if (!part.empty()) add(part, right_, first, kDetail, Weight::regular, Align::right);
        pen_.add_lines(text, left_, first, Weight::bold);
        y_ += block_height(text.lines.size(), text.x_height) + 0.8;
        if (!card.under.empty()) paragraph(card.under, left_, kDetail, Weight::regular);
        rule(0.5);
    }

    void cable(CableNote const& note) {
        Mm const mark_width = std::min(width() * 0.6, widths_.width(note.mark, kNames, Weight::bold));
        auto const mark = noted(fit_line(widths_, note.mark, Weight::bold, width() * 0.6, kNames));
        Mm const about_left = left_ + mark_width + 3;
        auto const about =
            noted(fit(widths_, note.about, Weight::regular, right_ - about_left, block_height(2, kFloor), kDetail));
        pen_.add_lines(mark, left_, y_ + cap_height(kNames), Weight::bold);
        Mm const last = pen_.add_lines(about, about_left, y_ + cap_height(kNames), Weight::regular);
        y_ = last + descent(kNames) + kBetween;
        for (auto const& stop : note.stops) framed(stop);
        for (auto const& wire : note.wires) row(wire);
        for (auto const& remark : note.remarks) paragraph(remark, left_, kFloor, Weight::regular);
        for (auto const& fault : note.faults) framed(fault);
    }

    void missing(std::string const& words) { framed(words); }

    void foot(CardFoot const& foot, bool dc_only) {
        if (!foot.band.empty()) paragraph(foot.band, left_, kDetail, Weight::bold);
        paragraph(dc_only ? foot.care_dc : foot.care, left_, kFloor, Weight::bold);
        paragraph(shortened(widths_, foot.imprint, Weight::regular, kFloor, width()), left_, kFloor, Weight::regular);
        y_ += kPad - kBetween;
    }

    void rule(Mm thick) {
        pen_.add(Line{left_, y_, right_, y_, thick, kBlack, false});
        y_ += kBetween;
    }

private:
    Mm width() const { return right_ - left_; }
    Mm text_left() const { return left_ + kWireWidth + kArrow + 3.5; }

    void add(std::string words, Mm x, Mm baseline, Mm x_height, Weight weight, Align align = Align::left) {
        pen_.add(Text{x, baseline, x_height, std::move(words), weight, align, kBlack, 0});
    }

    void paragraph(std::string const& words, Mm left, Mm x_height, Weight weight) {
        auto const text = noted(fit(widths_, words, weight, right_ - left, 1000, x_height, x_height));
        y_ = pen_.add_lines(text, left, y_ + cap_height(x_height), weight) + descent(x_height) + kBetween * 0.6;
    }

    void arrow(Mm x, Mm y) {
        pen_.add(Line{x, y, x + kArrow, y, 0.35, kBlack, false});
        for (Mm const side : {-1.1, 1.1})
            pen_.add(Line{x + kArrow - 1.3, y + side, x + kArrow, y, 0.35, kBlack, false});
    }

    void framed(std::string const& words) {
        auto const text = noted(fit(widths_, words, Weight::bold, width() - 4, 1000, kFloor));
        Mm const height = block_height(text.lines.size(), kFloor) + 3;
        pen_.add(Box{left_, y_, width(), height, kFrame, kBlack, false, kWhite, 0, false});
        pen_.add_lines(text, left_ + 2, y_ + 1.5 + cap_height(kFloor), Weight::bold);
        y_ += height + kBetween;
    }

    // Name of the colour, the wire itself, an arrow; job and landing; at the right the tape.
    void row(WireNote const& wire) {
        Mm const top = y_, first = top + cap_height(kDetail), wire_y = first + 2.9;
        pen_.add_lines(noted(fit_line(widths_, wire.color_words, Weight::bold, kWireWidth, kDetail)), left_, first,
                       Weight::bold);
        add_wire(pen_, left_, wire_y, kWireWidth, wire.color);
        if (!wire.lands.empty()) arrow(left_ + kWireWidth + 1.5, wire_y);
        Mm const free = right_ - kTapeWidth - 2 - text_left();
        auto const job = noted(fit(widths_, wire.job, Weight::bold, free, block_height(2, kDetail), kDetail));
        Mm last = pen_.add_lines(job, text_left(), first, Weight::bold);
        if (!wire.lands.empty()) {
            bool const beside_tape = wire.remark == Remark::tape || wire.remark == Remark::ask_first;
            Mm const room = beside_tape ? free : right_ - text_left();
            auto const lands =
                noted(fit(widths_, wire.lands, Weight::regular, room, block_height(3, kDetail), kDetail));
            last = pen_.add_lines(lands, text_left(), last + leading(kDetail), Weight::regular);
        }
        Mm const tape_bottom = tape(wire, first, wire_y);
        y_ = std::max({last + descent(kDetail), wire_y + kSwatchBelow, tape_bottom}) + kBetween;
        if (wire.why.empty()) return;
        if (wire.remark == Remark::forbidden) return framed(wire.why);
        paragraph(wire.why, text_left(), kFloor, Weight::regular);
        y_ += kBetween * 0.6;
    }

    // Returns the lowest point.
    Mm tape(WireNote const& wire, Mm first, Mm wire_y) {
        Mm const x = right_ - kTapeWidth;
        if (wire.remark == Remark::forbidden) {
            add(wire.tape_words, x, first, kDetail, Weight::bold);
            return first;
        }
        if (wire.tape.empty()) {
            add(wire.tape_words, x, first, kDetail, Weight::regular);
            return first;
        }
        auto const words = noted(fit_line(widths_, wire.tape_words, Weight::bold, kTapeWidth, kDetail));
        pen_.add_lines(words, x, first, Weight::bold);
        add_wire(pen_, x, wire_y + 0.6, kTapeWidth - 2, wire.color);
        add_tape(pen_, x, wire_y + 0.6, kTapeWidth - 2, wire.tape);
        if (wire.remark != Remark::ask_first) return wire_y + 2.8;
        Mm const below = wire_y + 3.6 + cap_height(kFloor);
        add(wire.ask_words, x, below, kFloor, Weight::bold);
        return below + descent(kFloor);
    }

    Fitted noted(Fitted text) {
        whole_ &= !text.shortened;
        return text;
    }

    Pen pen_;
    TextWidth const& widths_;
    Mm left_, right_, y_;
    bool whole_ = true;
};

} // namespace

CardShows add_card(Pen const& pen, Mm x, Mm y, Mm width, BoxCard const& card, std::string const& part,
                   CardFoot const& foot) {
    CardPen in_card(pen, x, y, width);
    CardShows shows;
    in_card.title(card, part);
    shows.title = in_card.was_whole();
    for (std::size_t i = 0; i < card.cables.size(); ++i) {
        in_card.cable(card.cables[i]);
        shows.cables.push_back(in_card.was_whole());
        if (i + 1 < card.cables.size()) in_card.rule(0.15);
    }
    for (auto const& words : card.missing) in_card.missing(words);
    in_card.rule(0.15);
    in_card.foot(foot, card.dc_only);
    shows.height = in_card.y() - y;
    pen.add(Box{x, y, width, shows.height, 0.15, kBlack, false, kWhite, 0, true});
    return shows;
}

Mm card_height(TextWidth const& widths, Mm width, BoxCard const& card, CardFoot const& foot) {
    Page scratch;
    return add_card({scratch, widths}, 0, 0, width, card, foot.widest_part, foot).height;
}

} // namespace legwork
