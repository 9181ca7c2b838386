// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/crowded.h"

#include "sheet/common_text.h"
#include "sheet/form_keys.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <vector>

namespace legwork {

namespace {

// Letters that touch are read; these do more.
constexpr Mm kTouch = 0.3;

struct Covered {
    Mm left, top, right, bottom;
    Text const* text;
};

// From the x-height's line up to the capitals and down to the line: what hangs below may cross what stands above.
Covered covered(Text const& t, TextWidth const& widths) {
    Mm const w = widths.width(t.words, t.x_height, t.weight), up = cap_height(t.x_height);
    Mm const before = t.align == Align::left ? 0 : t.align == Align::right ? w : w / 2;
    switch (t.turn) { // clockwise about the anchor
    case 90: return {t.x, t.baseline - before, t.x + up, t.baseline + w - before, &t};
    case 180: return {t.x - w + before, t.baseline, t.x + before, t.baseline + up, &t};
    case 270: return {t.x - up, t.baseline - w + before, t.x, t.baseline + before, &t};
    default: return {t.x - before, t.baseline - up, t.x - before + w, t.baseline, &t};
    }
}

bool over(Covered const& a, Covered const& b) {
    return a.left < b.right - kTouch && b.left < a.right - kTouch && a.top < b.bottom - kTouch &&
           b.top < a.bottom - kTouch;
}

bool is_good(SheetInput const& input, SheetKind const& kind, Form const& form) {
    return std::ranges::all_of(kind.compose(input, form), [&](Sheet const& sheet) {
        return std::ranges::all_of(sheet.pages, [&](Page const& page) { return crowded(page, input.widths).empty(); });
    });
}

} // namespace

std::string crowded(Page const& page, TextWidth const& widths) {
    std::vector<Covered> all;
    for (auto const& mark : page.marks)
        if (auto const* text = std::get_if<Text>(&mark); text && !text->words.empty())
            all.push_back(covered(*text, widths));
    for (auto const& a : all)
        if (a.left < -kTouch || a.top < -kTouch || a.right > page.width + kTouch || a.bottom > page.height + kTouch)
            return fmt::format("\"{}\" stands past the page's edge", a.text->words);
    for (auto a = all.begin(); a != all.end(); ++a)
        for (auto b = a + 1; b != all.end(); ++b)
            if (over(*a, *b)) return fmt::format("\"{}\" stands over \"{}\"", a->text->words, b->text->words);
    return {};
}

std::optional<Form> uncrowded(SheetInput const& input, SheetKind const& kind, Form const& form) {
    constexpr Mm step = 10;
    if (form.columns > 0) return std::nullopt;
    Form good = form;
    good.width = std::ceil(form.width / step) * step;
    good.height = std::ceil(form.height / step) * step;
    for (; !is_good(input, kind, good); good.width += step, good.height += step)
        if (std::max(good.width, good.height) + step > kGreatestPage) return std::nullopt;
    for (Mm Form::*side : {&Form::width, &Form::height})
        for (Form less = good; good.*side - step >= form.*side; good = less) {
            less.*side = good.*side - step;
            if (!is_good(input, kind, less)) break;
        }
    return good;
}

} // namespace legwork
