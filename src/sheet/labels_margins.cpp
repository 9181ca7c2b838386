// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_margins.h"
#include "words/say.h"

namespace legwork {

namespace {

constexpr Mm kClear = 1; // from the text to the first label

struct Margins {
    std::vector<std::string> top, bottom; // the first line at the top is the imprint, its right end the page
};

std::vector<std::string> lines_of(SheetInput const& input, Phrase const& phrase, Mm width) {
    return fit(input.widths, input.words(phrase), Weight::regular, width, 1000, kFloor).lines;
}

std::string right_words(SheetInput const& input, std::size_t number, std::size_t pages) {
    std::string words;
    for (auto const& band : bands(input, "", false)) words += band + ", ";
    return words + input.words(comma_list({page_of(number, pages), checked_against(input.building)}));
}

Margins margins(SheetInput const& input, Form const& form) {
    Mm const width = form.width - 2 * form.margin;
    Margins found{{input.words(imprint(input.building))},
                  lines_of(input, is_all_dc(input.building) ? say("label/care-dc") : say("label/care"), width)};
    for (auto& line : lines_of(input, say("label/which"), width)) found.top.push_back(std::move(line));
    return found;
}

Mm below(Form const& form) { return form.height - (form.top + (form.rows - 1) * form.pitch_y + form.label_height); }

} // namespace

bool margins_hold_imprint(SheetInput const& input, Form const& form) {
    auto const lines = margins(input, form);
    return block_height(lines.top.size(), kFloor) + kClear <= form.top - form.margin &&
           block_height(lines.bottom.size(), kFloor) + kClear <= below(form) - form.margin;
}

void add_margins(Pen const& pen, SheetInput const& input, Form const& form, std::size_t number, std::size_t pages) {
    auto lines = margins(input, form);
    Mm const width = form.width - 2 * form.margin;
    auto const right = fit_line(input.widths, right_words(input, number, pages), Weight::bold, width * 0.6, kFloor);
    Mm const free = width - input.widths.width(right.lines.front(), kFloor, Weight::bold) - 3;
    auto const left = fit_line(input.widths, lines.top.front(), Weight::bold, free, kFloor);
    Mm const first = form.margin + cap_height(kFloor);
    pen.add_lines(right, form.width - form.margin, first, Weight::bold, Align::right);
    pen.add_lines(left, form.margin, first, Weight::bold);
    lines.top.erase(lines.top.begin());
    pen.add_lines({lines.top, kFloor, false}, form.margin, first + leading(kFloor), Weight::regular);
    pen.add_lines({lines.bottom, kFloor, false}, form.margin,
                  form.height - form.margin - block_height(lines.bottom.size(), kFloor) + cap_height(kFloor),
                  Weight::regular);
}

std::vector<std::vector<std::string>> carrier_labels(SheetInput const& input, Rect area, Phrase const& page) {
    std::vector<std::string> lines;
    auto const add = [&](Phrase const& phrase) {
        for (auto& line : lines_of(input, phrase, area.width)) lines.push_back(std::move(line));
    };
    for (auto const& band : bands(input, "", false)) add(band);
    if (!input.building.name.empty()) add(input.building.name);
    if (auto const of = comma_list({revision_phrase(input.building), page}); !of.empty()) add(of);
    add(checked_against(input.building));
    add(say("label/which"));
    add(is_all_dc(input.building) ? say("label/short-care-dc") : say("label/short-care"));
    std::size_t each = 1;
    while (block_height(each + 1, kFloor) <= area.height) ++each;
    std::vector<std::vector<std::string>> labels;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        if (i % each == 0) labels.emplace_back();
        labels.back().push_back(lines[i]);
    }
    return labels;
}

void add_carrier(Pen const& pen, Rect area, std::vector<std::string> const& lines) {
    pen.add_lines({lines, kFloor, false}, area.x, area.y + cap_height(kFloor), Weight::regular);
}

} // namespace legwork
