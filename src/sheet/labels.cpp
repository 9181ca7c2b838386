// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels.h"

#include "sheet/labels_face.h"
#include "sheet/labels_margins.h"

#include <algorithm>
#include <functional>

namespace legwork {

namespace {

// One die-cut label's contents, drawn into its area.
using Face = std::function<void(Page&, Rect)>;

// Inside the die cut, and inside what the printer reaches: on stock without margins the outer labels lose a strip.
Rect text_area(Form const& form, int cell) {
    Mm const x = form.left + (cell % form.columns) * form.pitch_x, y = form.top + (cell / form.columns) * form.pitch_y;
    Mm const left = std::max(x + kDieClear, form.margin), top = std::max(y + kDieClear, form.margin);
    Mm const right = std::min(x + form.label_width - kDieClear, form.width - form.margin);
    Mm const bottom = std::min(y + form.label_height - kDieClear, form.height - form.margin);
    return {left, top, std::max(0.0, right - left), std::max(0.0, bottom - top)};
}

// The least that any cell gives: all labels take that, and look alike.
Rect least_area(Form const& form) {
    Rect least = text_area(form, 0);
    for (int cell = 1; cell < form.columns * form.rows; ++cell) {
        auto const area = text_area(form, cell);
        least.width = std::min(least.width, area.width);
        least.height = std::min(least.height, area.height);
    }
    return least;
}

Rect face_area(Form const& form, int cell, Rect const& least) {
    Rect area = text_area(form, cell);
    area.x += (area.width - least.width) / 2;
    area.y += (area.height - least.height) / 2;
    area.width = least.width;
    area.height = least.height;
    return area;
}

std::vector<Face> faces(SheetInput const& input, Form const& form) {
    std::vector<Face> found;
    Mm const width = least_area(form).width;
    auto const& widths = input.widths;
    for (auto const& end : cable_ends(input.building, cable_runs(input.building, input.book))) {
        for (auto const& label : end.labels)
            found.push_back([label, &widths](Page& page, Rect area) { add_cable_label(page, widths, area, label); });
        for (std::span<Marker const> rest = end.markers; !rest.empty();) {
            auto const n = strips(widths, width, rest);
            std::vector<Marker> const some(rest.begin(), rest.begin() + static_cast<std::ptrdiff_t>(n));
            found.push_back([some, &widths](Page& page, Rect area) { add_markers(page, widths, area, some); });
            rest = rest.subspan(n);
        }
    }
    std::string unsaid;
    for (Run const& run : input.building.runs)
        if (is_unsaid(run)) unsaid += (unsaid.empty() ? "" : ", ") + run.mark;
    if (!unsaid.empty() && !found.empty()) {
        std::string const words = "No label for " + unsaid + ": the job file names no cable there.";
        found.push_back([words, &widths](Page& page, Rect area) { add_notice(page, widths, area, words); });
    }
    return found;
}

} // namespace

std::vector<Sheet> compose_labels(SheetInput const& input, Form const& form) {
    auto const cells =
        static_cast<std::size_t>(std::max(0, form.columns)) * static_cast<std::size_t>(std::max(0, form.rows));
    if (cells == 0) return {};
    auto const least = least_area(form);
    auto const labels = faces(input, form);
    if (labels.empty() || least.width <= 0 || least.height < block_height(1, kFloor)) return {};

    bool const margins = margins_hold_imprint(input, form);
    auto const carriers = margins ? std::vector<std::vector<std::string>>{} : carrier_labels(input, least, 99, 99);
    // A stock so small that a page could not carry its own imprint gets one label a page at least.
    std::size_t const per_page = cells > carriers.size() ? cells - carriers.size() : 1;
    std::size_t const pages = (labels.size() + per_page - 1) / per_page;

    Sheet sheet{"labels", "", "Wire labels", {}};
    for (std::size_t p = 0; p < pages; ++p) {
        Page page = blank_page(form);
        std::size_t cell = 0;
        if (margins)
            add_margins(page, input, form, p + 1, pages);
        else
            for (auto const& lines : carrier_labels(input, least, p + 1, pages)) {
                if (cell + 1 >= cells) break;
                add_carrier(page, face_area(form, static_cast<int>(cell++), least), lines);
            }
        for (std::size_t i = p * per_page; i < std::min(labels.size(), (p + 1) * per_page); ++i)
            labels[i](page, face_area(form, static_cast<int>(cell++), least));
        sheet.pages.push_back(std::move(page));
    }
    return {sheet};
}

} // namespace legwork
