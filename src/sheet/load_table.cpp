// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/load_table.h"

#include "sheet/common_text.h"
#include "sheet/load_words.h"
#include "sheet/pen.h"
#include "words/say.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace legwork {

namespace {

constexpr Mm kGap = 3;          // between columns
constexpr Mm kIndent = 3.5;     // of what goes into a later line
constexpr Mm kHair = 0.15;      // between lines that count
constexpr double kClose = 0.55; // of the white between rows
constexpr Mm kBelowLine = 0.4;
constexpr Mm kStrong = 0.5;                               // above a total
constexpr Mm kLeastColumns = 110;                         // below this the columns stand under one another
constexpr double kLeastItem = 0.38, kGreatestItem = 0.66; // share of what item and arithmetic have
constexpr Mm kLeastRule = 14, kGreatestRule = 30;
constexpr Mm kSubsum = 0.2; // the line over a listed sum, below the top of its row

Line across(Mm from, Mm to, Mm y, Mm width) { return {from, y, to, y, width, kBlack, false}; }

} // namespace

struct LoadTable::Row {
    std::string item, rule, arithmetic, listed, counted;
    Mm indent = 0, size = kDetail, pad = 1.0;
    Weight weight = Weight::regular;
    Ink ink = kBlack;
    Mm value_width = 0;     // of the last column; that of the figures when 0
    Mm line_above = 0;      // over the whole width
    bool sum_above = false; // a line over the listed figure
    bool line_below = false;
};

LoadTable::LoadTable(SheetInput const& input, PanelLoad const& load, Mm width, Spacing spacing)
    : input_(input), widths_(input.widths), width_(width), spacing_(spacing == Spacing::wide ? 1 : kClose) {
    auto const wide = [&](Phrase const& phrase, Mm size, Weight weight = Weight::regular) {
        // So that it fits its own column, rounded as it may be.
        return widths_.width(input.words(phrase), size, weight) + 0.01;
    };
    auto const widen = [](Mm& column, Mm by) { column = std::max(column, by); };
    Mm rule = wide(as_is(input.book.edition), kFloor);
    std::vector<Asked> asked;
    for (auto const* steps : {&load.load->steps, &load.load->neutral})
        for (LoadStep const& s : *steps) {
            bool const counted = s.kind == LoadStep::Kind::counted;
            widen(rule, wide(rule_words(s), kFloor));
            widen(counted ? counted_width_ : listed_width_,
                  wide(figure(s.va), kDetail, counted ? Weight::bold : Weight::regular));
            asked.push_back({wide(s.item, kDetail) + (counted ? 0 : kIndent), wide(s.arithmetic, kDetail)});
        }
    for (LoadResult const& r : load.results) widen(rule, wide(rule_words(r), kFloor));
    if (listed_width_ > 0) widen(listed_width_, wide(say("load/listed"), kFloor));
    widen(counted_width_, wide(say("load/counts"), kFloor, Weight::bold));
    for (auto const va : {load.load->total_va, load.load->neutral_va.value_or(0)})
        widen(counted_width_, wide(figure(va), kNames, Weight::bold));
    Mm const figures = counted_width_ + kGap + (listed_width_ > 0 ? listed_width_ + kGap : 0);
    for (LoadResult const& r : load.results) {
        Mm const size = r.wanted ? kNames : kDetail;
        asked.push_back({wide(r.item, size, r.wanted ? Weight::bold : Weight::regular),
                         wide(r.arithmetic, kDetail) + wide(r.value, size, Weight::bold) + kGap - figures});
    }
    place_columns(std::clamp(rule, kLeastRule, kGreatestRule), figures, asked);
}

// Item and arithmetic share what is left so that all rows together take the fewest lines.
void LoadTable::place_columns(Mm rule, Mm figures, std::vector<Asked> const& asked) {
    stacked_ = width_ < kLeastColumns;
    Mm const words = width_ - figures - rule - 2 * kGap;
    Mm item = words * kLeastItem, fewest = 0;
    for (Mm share = kLeastItem; share < kGreatestItem; share += 0.03) {
        Mm lines = 0;
        for (Asked const& a : asked)
            lines += std::max({1.0, std::ceil(a.item / (words * share)), std::ceil(a.sum / (words * (1 - share)))});
        if (fewest > 0 && lines >= fewest) continue;
        fewest = lines;
        item = words * share;
    }
    rule_ = item + kGap;
    sums_ = stacked_ ? kIndent : rule_ + rule + kGap;
    sums_width_ = stacked_ ? width_ - kIndent : width_ - figures - sums_;
}

Block LoadTable::laid(Row const& row) const {
    if (stacked_) return stacked(row);
    Block b;
    Mm const pad = row.sum_above ? row.pad : row.pad * spacing_; // the line over a sum stays clear of it
    Mm const value = row.value_width > 0 ? row.value_width : counted_width_;
    Mm const sums = row.value_width > 0 ? width_ - row.value_width - kGap - sums_ : sums_width_;
    auto const items = wrapped_whole(widths_, row.item, row.weight, row.size, rule_ - kGap - row.indent);
    auto const rules = wrapped_whole(widths_, row.rule, Weight::regular, kFloor, sums_ - kGap - rule_);
    auto const sum = arithmetic_lines(widths_, row.arithmetic, Weight::regular, kDetail, sums);
    auto const values = wrapped_whole(widths_, row.counted, Weight::bold, row.size, value);
    Mm const first = pad + cap_height(row.size);
    Mm const listed = width_ - counted_width_ - kGap;
    Pen const pen(b.marks, widths_);
    if (row.line_above > 0) pen.add(across(0, width_, 0, row.line_above));
    pen.add_lines({items, row.size}, row.indent, first, row.weight, Align::left, row.ink);
    pen.add_lines({rules, kFloor}, rule_, first, Weight::regular, Align::left, row.ink);
    pen.add_lines({sum, kDetail}, sums_, first, Weight::regular, Align::left, row.ink);
    pen.add_lines({values, row.size}, width_, first, Weight::bold, Align::right);
    if (!row.listed.empty())
        pen.add_lines({{row.listed}, kDetail}, listed, first, Weight::regular, Align::right, row.ink);
    if (row.sum_above) pen.add(across(listed - listed_width_, listed, kSubsum, kHair));
    auto const low = [&](std::size_t lines, Mm x_height) {
        return lines == 0 ? 0 : first + static_cast<Mm>(lines - 1) * leading(x_height) + descent(x_height);
    };
    b.height = std::max({low(items.size(), row.size), low(rules.size(), kFloor), low(sum.size(), kDetail),
                         low(values.size(), row.size), low(1, kDetail)}) +
               pad;
    if (row.line_below) end_with_line(b);
    return b;
}

// Item, arithmetic and section below one another, the figures on a line of their own.
Block LoadTable::stacked(Row const& row) const {
    Block b;
    Mm const pad = row.pad * spacing_;
    Mm y = pad;
    Pen const pen(b.marks, widths_);
    if (row.line_above > 0) pen.add(across(0, width_, 0, row.line_above));
    auto const lines = [&](std::vector<std::string> const& some, Mm x, Mm size, Weight weight, Align align) {
        if (some.empty()) return;
        pen.add_lines({some, size}, x, y + cap_height(size), weight, align, row.ink);
        y += block_height(some.size(), size) + pad * 0.5;
    };
    lines(wrapped_whole(widths_, row.item, row.weight, row.size, width_ - row.indent), row.indent, row.size, row.weight,
          Align::left);
    lines(arithmetic_lines(widths_, row.arithmetic, Weight::regular, kDetail, sums_width_), sums_, kDetail,
          Weight::regular, Align::left);
    if (!row.rule.empty())
        lines(wrapped_whole(widths_, row.rule, Weight::regular, kFloor, sums_width_), sums_, kFloor, Weight::regular,
              Align::left);
    if (!row.listed.empty())
        lines({row.listed}, width_ - counted_width_ - kGap, kDetail, Weight::regular, Align::right);
    if (!row.counted.empty())
        lines(wrapped_whole(widths_, row.counted, Weight::bold, row.size, width_), width_, row.size, Weight::bold,
              Align::right);
    b.height = y + pad * 0.5;
    if (row.line_below) end_with_line(b);
    return b;
}

Block LoadTable::head(Phrase const& title_words, bool listed) const {
    Block b = title(title_words);
    b.with_next = true;
    Mm const baseline = b.height + cap_height(kFloor);
    Pen const pen(b.marks, widths_);
    auto const heading = [&](Phrase const& words, Mm x, Weight weight, Align align) {
        pen.add_lines({{input_.words(words)}, kFloor}, x, baseline, weight, align);
    };
    if (!stacked_) {
        heading(say("load/item"), 0, Weight::regular, Align::left);
        heading(as_is(input_.book.edition), rule_, Weight::regular, Align::left);
        heading(say("load/arithmetic"), sums_, Weight::regular, Align::left);
    }
    if (listed) heading(say("load/listed"), width_ - counted_width_ - kGap, Weight::regular, Align::right);
    heading(say("load/counts"), width_, Weight::bold, Align::right);
    b.height = baseline + descent(kFloor) + 0.8;
    end_with_line(b);
    return b;
}

Block LoadTable::step(LoadStep const& s, bool known) const {
    auto const va = input_.words(known ? figure(s.va) : as_is("?"));
    Row row;
    row.item = input_.words(s.item);
    row.rule = input_.words(rule_words(s));
    row.arithmetic = input_.words(s.arithmetic);
    if (s.kind == LoadStep::Kind::counted) {
        row.counted = va;
        row.line_below = true;
    } else {
        row.listed = va;
        row.indent = kIndent;
        row.pad = s.kind == LoadStep::Kind::item ? 0.7 : 1.0;
        if (s.kind == LoadStep::Kind::item) row.ink = kLighter;
        row.sum_above = s.kind == LoadStep::Kind::subtotal;
    }
    return laid(row);
}

Block LoadTable::total(Phrase const& item, Phrase const& arithmetic, std::int64_t va) const {
    Row row;
    row.item = input_.words(item);
    row.arithmetic = input_.words(arithmetic);
    row.counted = input_.words(figure(va));
    row.size = kNames;
    row.weight = Weight::bold;
    row.line_above = kStrong;
    row.pad = 1.5;
    return laid(row);
}

Block LoadTable::result(LoadResult const& r, bool so_far) const {
    Row row;
    row.item = input_.words(r.item);
    row.rule = input_.words(rule_words(r));
    row.arithmetic = input_.words(r.arithmetic);
    row.counted = input_.words(so_far && r.wanted && r.known ? say("load/value-so-far", r.value) : r.value);
    row.size = r.wanted ? kNames : kDetail;
    row.weight = r.wanted ? Weight::bold : Weight::regular;
    row.line_below = true;
    row.value_width = std::min(widths_.width(row.counted, row.size, Weight::bold) + 0.01, width_ * 0.42);
    row.value_width = std::max(row.value_width, counted_width_);
    // Words that have no room beside a long answer tell what it is an answer to.
    Mm const room = width_ - row.value_width - kGap - sums_;
    if (!r.wanted && r.in_words && widths_.width(row.arithmetic, kDetail, Weight::regular) > room)
        row.item = input_.words(say("list/comma", row.item, std::exchange(row.arithmetic, {})));
    return laid(row);
}

Block LoadTable::title(Phrase const& words) const {
    Block b;
    b.above = 4 * spacing_;
    auto const lines = wrapped_whole(widths_, input_.words(words), Weight::bold, kNames, width_);
    Pen(b.marks, widths_).add_lines({lines, kNames}, 0, cap_height(kNames), Weight::bold);
    b.height = block_height(lines.size(), kNames) + 1;
    b.with_next = true;
    return b;
}

Blocks LoadTable::paragraph(std::string const& words, Mm x_height, Weight weight, Mm above) const {
    Blocks all;
    for (std::string& line : arithmetic_lines(widths_, words, weight, x_height, width_)) {
        Block b;
        Pen(b.marks, widths_).add_lines({{std::move(line)}, x_height}, 0, cap_height(x_height), weight);
        b.height = leading(x_height);
        if (all.empty()) b.above = above;
        b.with_next = true;
        all.push_back(std::move(b));
    }
    // A long one may go on overleaf, with two lines at least on either page.
    constexpr std::size_t most_together = 6;
    if (all.size() > most_together)
        for (std::size_t i = 1; i + 2 < all.size(); ++i) all[i].with_next = false;
    if (!all.empty()) all.back().with_next = false;
    return all;
}

Block LoadTable::framed(Phrases const& sentences) const {
    constexpr Mm pad = 2.5;
    Block words;
    Pen const pen(words.marks, widths_);
    Mm y = pad;
    for (Phrase const& sentence : sentences) {
        if (y > pad) y += 1.2;
        auto const lines = arithmetic_lines(widths_, input_.words(sentence), Weight::bold, kNames, width_ - 2 * pad);
        pen.add_lines({lines, kNames}, pad, y + cap_height(kNames), Weight::bold);
        y += block_height(lines.size(), kNames);
    }
    Block b;
    b.above = 3;
    b.height = y + pad;
    Pen(b.marks, widths_).add(Box{0, 0, width_, b.height, kStrong, kBlack, false, kWhite, 0, false});
    std::ranges::move(words.marks, std::back_inserter(b.marks));
    return b;
}

void LoadTable::end_with_line(Block& b) const {
    Pen(b.marks, widths_).add(across(0, width_, b.height, kHair));
    b.height += kBelowLine;
}

} // namespace legwork
