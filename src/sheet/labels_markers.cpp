// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_face.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {

constexpr Mm kLargestMarker = 3.1;

// The rows down a marker strip: the words, and between them what is smaller.
struct MarkerRow {
    std::string words;
    bool large = false, bold = false;
};
std::vector<MarkerRow> marker_rows(Marker const& marker, std::size_t copies) {
    std::vector<MarkerRow> rows;
    for (auto const* small : {&marker.note, &marker.spaces, &marker.end}) {
        if (copies > 0) rows.push_back({marker.words, true, true});
        if (copies > 0) --copies;
        if (!small->empty()) rows.push_back({*small, false, small == &marker.note});
    }
    std::erase_if(rows, [](MarkerRow const& r) { return r.words.empty(); });
    return rows;
}

struct Strip {
    std::vector<MarkerRow> rows;
    Mm large = kFloor;
};

Mm height_of(Strip const& strip) {
    Mm sum = 0;
    for (auto const& row : strip.rows) sum += block_height(1, row.large ? strip.large : kFloor);
    return sum;
}

// Three copies of the words while they stay large, then two; below that fewer rows.
Strip fit_strip(TextWidth const& widths, Marker const& marker, Rect area) {
    struct Try {
        Mm least;
        std::size_t copies;
    };
    for (auto const [least, copies] : {Try{kNames, 3}, Try{kNames, 2}, Try{kFloor, 3}, Try{kFloor, 1}})
        for (auto step = kScale.rbegin(); step != kScale.rend(); ++step) {
            Strip const strip{marker_rows(marker, copies), *step};
            if (*step > kLargestMarker || *step < least) continue;
            if (widths.width(marker.words, *step, Weight::bold) <= area.width && height_of(strip) <= area.height)
                return strip;
        }
    Strip strip{marker_rows(marker, 1), kFloor};
    while (strip.rows.size() > 1 && height_of(strip) > area.height) strip.rows.pop_back();
    return strip;
}

bool add_marker(Pen const& pen, Rect area, Marker const& marker) {
    auto const strip = fit_strip(pen.widths(), marker, area);
    auto const n = strip.rows.size();
    Mm const gap = n > 1 ? (area.height - height_of(strip)) / static_cast<Mm>(n - 1) : 0;
    Mm y = area.y;
    bool whole = true;
    for (auto const& row : strip.rows) {
        Mm const x_height = row.large ? strip.large : kFloor;
        auto const weight = row.bold ? Weight::bold : Weight::regular;
        auto const words = shortened(pen.widths(), row.words, weight, x_height, area.width);
        whole &= words == row.words;
        pen.add(
            Text{area.x + area.width / 2, y + cap_height(x_height), x_height, words, weight, Align::centre, kBlack, 0});
        y += block_height(1, x_height) + gap;
    }
    return whole;
}

// What a marker needs to stand whole at the floor.
Mm least_width(TextWidth const& widths, Marker const& m) {
    Mm width = 0;
    for (auto const& words : {m.words, m.note, m.spaces, m.end})
        width = std::max(width, widths.width(words, kFloor, Weight::bold));
    return width;
}

Mm least_width(TextWidth const& widths, std::span<Marker const> markers) {
    Mm sum = 0;
    for (auto const& m : markers) sum += least_width(widths, m);
    return sum + static_cast<Mm>(markers.size() - 1) * 2 * kDieClear;
}

} // namespace

std::size_t strips(TextWidth const& widths, Mm width, std::span<Marker const> wanted) {
    std::size_t n = wanted.size();
    while (n > 1 && least_width(widths, wanted.first(n)) > width) --n;
    return n;
}

bool add_markers(Pen const& pen, Rect area, std::span<Marker const> markers) {
    // Each its own need, and an equal share of what is left.
    Mm const share = (area.width - least_width(pen.widths(), markers)) / static_cast<Mm>(markers.size());
    Mm x = area.x;
    bool whole = true;
    for (auto const& marker : markers) {
        if (&marker != &markers.front()) {
            pen.add(Line{x + kDieClear, area.y, x + kDieClear, area.y + area.height, 0.15, kBlack, true});
            x += 2 * kDieClear;
        }
        Mm const width = markers.size() == 1 ? area.width : least_width(pen.widths(), marker) + share;
        whole &= add_marker(pen, {x, area.y, width, area.height}, marker);
        x += width;
    }
    return whole;
}

} // namespace legwork
