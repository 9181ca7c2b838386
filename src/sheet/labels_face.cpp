// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/labels_face.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {

constexpr Mm kGap = 1.2;         // between the mark, the names and the small lines
constexpr Mm kLeastMark = 3.9;   // x-height that longer names must leave to the mark
constexpr Mm kLeastThrice = 2.5; // x-height below which two larger copies of a mark beat three small ones
constexpr Mm kLargestMark = 9.5;

struct Names {
    std::vector<std::string> lines;
    Mm x_height = kFloor;
};

std::string feed_words(Fed const& fed) {
    std::string words = fed.mark;
    if (!fed.name.empty()) words += (words.empty() ? "" : "  ") + fed.name;
    if (!fed.room.empty()) words += (words.empty() ? "" : ", ") + fed.room;
    return words;
}

// Name and room part at the line's end where both fit; else anywhere between words.
std::optional<std::vector<std::string>> feed_lines(TextWidth const& widths, Fed const& fed, Mm x_height, Mm width,
                                                   std::size_t most) {
    auto const one = wrapped(widths, feed_words(fed), Weight::bold, x_height, width, 1);
    if (one || most == 1) return one;
    if (!fed.name.empty() && !fed.room.empty()) {
        auto const name = wrapped(widths, feed_words({fed.mark, fed.name, ""}), Weight::bold, x_height, width, 1);
        auto const room = wrapped(widths, fed.room, Weight::bold, x_height, width, 1);
        if (name && room) return std::vector{name->front(), room->front()};
    }
    return wrapped(widths, feed_words(fed), Weight::bold, x_height, width, most);
}

std::optional<Names> names_at(TextWidth const& widths, std::vector<Fed> const& feeds, Mm x_height, Mm width,
                              std::size_t most) {
    Names names{{}, x_height};
    for (auto const& fed : feeds) {
        auto const lines = feed_lines(widths, fed, x_height, width, most);
        if (!lines) return std::nullopt;
        names.lines.insert(names.lines.end(), lines->begin(), lines->end());
    }
    return names;
}

// Large on one line first; a second line only where the mark stays large. At worst shortened at the floor.
Names fit_names(TextWidth const& widths, std::vector<Fed> const& feeds, Mm width, Mm height) {
    struct Try {
        Mm x_height;
        std::size_t lines;
    };
    constexpr std::array tries{Try{kNames, 1},  Try{kDetail, 1}, Try{kNames, 2},
                               Try{kDetail, 2}, Try{kFloor, 1},  Try{kFloor, 2}};
    for (auto const [x_height, lines] : tries) {
        auto names = names_at(widths, feeds, x_height, width, lines);
        if (names && block_height(names->lines.size(), x_height) <= height) return *names;
    }
    Names names;
    std::size_t room = 0;
    while (block_height(room + 1, kFloor) <= height) ++room;
    if (room == 0 || feeds.empty()) return names;
    std::size_t const each = std::clamp<std::size_t>(room / feeds.size(), 1, 2);
    for (auto const& fed : feeds) {
        auto const cut = fit(widths, feed_words(fed), Weight::bold, width, block_height(each, kFloor), kFloor, kFloor);
        names.lines.insert(names.lines.end(), cut.lines.begin(), cut.lines.end());
    }
    names.lines.resize(std::min(names.lines.size(), room));
    return names;
}

struct Repeat {
    Mm x_height = kFloor;
    std::size_t copies = 1;
};

Repeat fit_mark(TextWidth const& widths, std::string const& mark, Mm width, Mm height) {
    auto const copies = [&](Mm x_height) {
        Mm const gap = std::max(3.0, x_height);
        return static_cast<std::size_t>((width + gap) / (widths.width(mark, x_height, Weight::bold) + gap));
    };
    for (std::size_t const least : {3, 2, 1})
        for (auto step = kScale.rbegin(); step != kScale.rend(); ++step) {
            if (*step > kLargestMark || cap_height(*step) > height) continue;
            if (least == 3 && *step < kLeastThrice) break;
            if (copies(*step) >= least) return {*step, copies(*step)};
        }
    return {};
}

void add_mark_row(Page& page, TextWidth const& widths, Rect area, std::string const& mark) {
    auto const row = fit_mark(widths, mark, area.width, area.height);
    Mm const pitch = area.width / static_cast<Mm>(row.copies);
    Mm const baseline = area.y + (area.height + cap_height(row.x_height)) / 2;
    auto const words = shortened(widths, mark, Weight::bold, row.x_height, area.width);
    for (std::size_t i = 0; i < row.copies; ++i)
        page.marks.push_back(Text{area.x + (static_cast<Mm>(i) + 0.5) * pitch, baseline, row.x_height, words,
                                  Weight::bold, Align::centre, kBlack, 0});
}

// One small line: what must not be lost stands at the right, whole; the left is shortened where it is too long.
void add_small_line(Page& page, TextWidth const& widths, Rect area, Mm baseline, std::string const& left, Weight weight,
                    std::string const& right, Weight right_weight) {
    Mm free = area.width;
    if (!right.empty()) {
        auto const words = shortened(widths, right, right_weight, kFloor, area.width * 0.6);
        free -= widths.width(words, kFloor, right_weight) + 2;
        page.marks.push_back(Text{area.x + area.width, baseline, kFloor, words, right_weight, Align::right, kBlack, 0});
    }
    page.marks.push_back(
        Text{area.x, baseline, kFloor, shortened(widths, left, weight, kFloor, free), weight, Align::left, kBlack, 0});
}

std::string named(std::string const& word, std::string const& name) { return name.empty() ? word : word + ": " + name; }

Mm add_small_lines(Page& page, TextWidth const& widths, Rect area, CableLabel const& label) {
    Mm const last = area.y + area.height - descent(kFloor), first = last - leading(kFloor);
    add_small_line(page, widths, area, first, named(label.end_word, label.end_name), Weight::bold, label.cable,
                   Weight::regular);
    add_small_line(page, widths, area, last, named(label.other_word, label.other_name), Weight::regular,
                   label.keep ? "keep" : "tip", Weight::bold);
    return first - cap_height(kFloor);
}

// The rows down a marker strip: the words, and between them what is smaller.
struct Row {
    std::string words;
    bool large = false;
};
std::vector<Row> marker_rows(Marker const& marker) {
    std::vector<Row> rows;
    for (auto const& small : {marker.note, marker.spaces, marker.end}) {
        if (small.empty()) continue;
        rows.push_back({marker.words, true});
        rows.push_back({small, false});
    }
    if (rows.size() < 6) rows.push_back({marker.words, true});
    return rows;
}

void add_marker(Page& page, TextWidth const& widths, Rect area, Marker const& marker) {
    auto rows = marker_rows(marker);
    auto const large = fit_line(widths, marker.words, Weight::bold, area.width, kNames);
    auto const size = [&](Row const& row) { return row.large ? large.x_height : kFloor; };
    auto const used = [&] {
        Mm sum = descent(kFloor);
        for (auto const& row : rows) sum += cap_height(size(row));
        return sum;
    };
    // Descenders stay off the next row's capitals.
    while (rows.size() > 1 && used() + static_cast<Mm>(rows.size() - 1) * 0.8 > area.height) rows.pop_back();
    Mm const gap = rows.size() > 1 ? (area.height - used()) / static_cast<Mm>(rows.size() - 1) : 0;
    Mm y = area.y;
    for (auto const& row : rows) {
        y += cap_height(size(row));
        auto const weight = row.large || row.words == marker.note ? Weight::bold : Weight::regular;
        page.marks.push_back(
            Text{area.x + area.width / 2, y, size(row),
                 row.large ? large.lines.front() : shortened(widths, row.words, weight, kFloor, area.width), weight,
                 Align::centre, kBlack, 0});
        y += gap;
    }
}

Mm strip_width(Mm width, std::size_t strips) {
    auto const n = static_cast<Mm>(strips);
    return (width - (n - 1) * 2 * kDieClear) / n;
}

} // namespace

void add_cable_label(Page& page, TextWidth const& widths, Rect area, CableLabel const& label) {
    Mm const small = block_height(2, kFloor);
    // A very low label has room for the mark alone.
    if (area.height < small + kGap + cap_height(kFloor)) return add_mark_row(page, widths, area, label.mark);
    Mm const bottom = add_small_lines(page, widths, area, label) - kGap;
    Mm const least_mark = std::min(cap_height(kLeastMark), (bottom - area.y) / 2);
    auto const names = fit_names(widths, label.feeds, area.width, bottom - area.y - least_mark - kGap);
    Mm const height = block_height(names.lines.size(), names.x_height);
    add_lines(page, {names.lines, names.x_height, false}, area.x, bottom - height + cap_height(names.x_height),
              Weight::bold);
    Mm const gap = names.lines.empty() ? 0 : kGap;
    add_mark_row(page, widths, {area.x, area.y, area.width, bottom - height - gap - area.y}, label.mark);
}

void add_notice(Page& page, TextWidth const& widths, Rect area, std::string const& words) {
    auto const text = fit(widths, words, Weight::regular, area.width, area.height, kDetail);
    add_lines(page, text, area.x, area.y + cap_height(text.x_height), Weight::regular);
}

std::size_t strips(TextWidth const& widths, Mm width, std::span<Marker const> wanted) {
    for (std::size_t n = wanted.size(); n > 1; --n)
        if (std::ranges::all_of(wanted, [&](Marker const& m) {
                auto const fits = [&](std::string const& words) {
                    return widths.width(words, kFloor, Weight::bold) <= strip_width(width, n);
                };
                return fits(m.words) && fits(m.note) && fits(m.spaces) && fits(m.end);
            }))
            return n;
    return 1;
}

void add_markers(Page& page, TextWidth const& widths, Rect area, std::span<Marker const> markers, std::size_t strips) {
    Mm const width = strip_width(area.width, strips);
    Rect at{area.x, area.y, width, area.height};
    for (std::size_t i = 0; i < strips; ++i) {
        if (i > 0) {
            Mm const cut = at.x - kDieClear;
            page.marks.push_back(Line{cut, area.y, cut, area.y + area.height, 0.15, kBlack, true});
        }
        if (i < markers.size()) add_marker(page, widths, at, markers[i]);
        at.x += width + 2 * kDieClear;
    }
}

} // namespace legwork
