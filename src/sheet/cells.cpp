// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/cells.h"

#include <algorithm>

namespace legwork {

namespace {

Rect die(Form const& form, int number) {
    int const column = number % form.columns, row = number / form.columns;
    return {form.left + column * form.pitch_x, form.top + row * form.pitch_y, form.label_width, form.label_height};
}

// On stock without margins the outer labels lose the strip that a printer does not reach; a roll runs on.
Rect reached(Form const& form, Rect die) {
    Mm const left = std::max(die.x + form.inset, form.margin);
    Mm const right = std::min(die.x + die.width - form.inset, form.width - form.margin);
    Mm top = die.y + form.inset, bottom = die.y + die.height - form.inset;
    if (!form.is_roll()) {
        top = std::max(top, form.margin);
        bottom = std::min(bottom, form.height - form.margin);
    }
    return {left, top, std::max(0.0, right - left), std::max(0.0, bottom - top)};
}

std::vector<Rect> faces(Form const& form, Turned const& place) {
    Rect all = place.read(reached(form, place.on_page));
    all.height = std::max(0.0, all.height - form.tail);
    if (!form.fold) return {all};
    Mm const fold = place.read().x + *form.fold, right = all.x + all.width;
    Mm const second = fold + form.inset;
    return {{all.x, all.y, std::max(0.0, fold - form.inset - all.x), all.height},
            {second, all.y, std::max(0.0, right - second), all.height}};
}

void make_alike(std::vector<Cell>& cells) {
    Rect least = cells.front().faces.front();
    for (Cell const& cell : cells)
        for (Rect const& face : cell.faces) {
            least.width = std::min(least.width, face.width);
            least.height = std::min(least.height, face.height);
        }
    for (Cell& cell : cells)
        for (Rect& face : cell.faces) {
            face.x += (face.width - least.width) / 2;
            face.y += (face.height - least.height) / 2;
            face.width = least.width;
            face.height = least.height;
        }
}

} // namespace

std::vector<Cell> cells(Form const& form) {
    std::vector<Cell> all;
    for (int number = 0; number < form.columns * form.rows; ++number) {
        if (std::ranges::find(form.skip, number + 1) != form.skip.end()) continue;
        Turned const place{die(form, number), form.turn};
        all.push_back({place, faces(form, place)});
    }
    if (!all.empty()) make_alike(all);
    return all;
}

Mm page_height(Form const& form, std::span<Cell const> used) {
    if (!form.is_roll()) return form.height;
    Mm end = 0;
    for (Cell const& cell : used) end = std::max(end, cell.place.on_page.y + cell.place.on_page.height);
    return end + form.top;
}

} // namespace legwork
