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
    std::vector<bool> whole = {}; // of each that is fed; empty: all are
};

std::string feed_words(Fed const& fed) {
    std::string words = fed.mark;
    if (!fed.name.empty()) words += (words.empty() ? "" : "  ") + fed.name;
    if (!fed.room.empty()) words += (words.empty() ? "" : ", ") + fed.room;
    return words;
}

// On one line, or parted where a comma stands (between name and room most of all); else anywhere between words.
std::optional<std::vector<std::string>> feed_lines(TextWidth const& widths, Fed const& fed, Mm x_height, Mm width,
                                                   std::size_t most) {
    auto const words = feed_words(fed);
    auto const one = wrapped(widths, words, Weight::bold, x_height, width, 1);
    if (one || most == 1) return one;
    for (auto at = words.rfind(", "); at != words.npos && at > 0; at = words.rfind(", ", at - 1)) {
        auto const first = wrapped(widths, words.substr(0, at), Weight::bold, x_height, width, 1);
        auto const second = wrapped(widths, words.substr(at + 2), Weight::bold, x_height, width, 1);
        if (first && second) return std::vector{first->front(), second->front()};
    }
    return wrapped(widths, words, Weight::bold, x_height, width, most);
}

std::optional<Names> names_at(TextWidth const& widths, std::vector<Fed> const& feeds, Mm x_height, Mm width,
                              std::size_t most) {
    Names names{{}, x_height};
    for (auto const& fed : feeds) {
        if (feed_words(fed).empty()) continue;
        auto const lines = feed_lines(widths, fed, x_height, width, most);
        if (!lines) return std::nullopt;
        names.lines.insert(names.lines.end(), lines->begin(), lines->end());
    }
    return names;
}

// Large on one line first; a second line only where that leaves room. Nothing when not all the words fit.
std::optional<Names> fit_names(TextWidth const& widths, std::vector<Fed> const& feeds, Mm width, Mm height) {
    struct Try {
        Mm x_height;
        std::size_t lines;
    };
    constexpr std::array tries{Try{kNames, 1},  Try{kDetail, 1}, Try{kNames, 2},
                               Try{kDetail, 2}, Try{kFloor, 1},  Try{kFloor, 2}};
    for (auto const [x_height, lines] : tries) {
        auto names = names_at(widths, feeds, x_height, width, lines);
        if (names && block_height(names->lines.size(), x_height) <= height) return names;
    }
    return std::nullopt;
}

// At the floor, each name shortened to the lines there are for it.
Names cut_names(TextWidth const& widths, std::vector<Fed> const& feeds, Mm width, Mm height) {
    Names names;
    std::size_t room = 0;
    while (block_height(room + 1, kFloor) <= height) ++room;
    names.whole.assign(feeds.size(), false);
    if (room == 0 || feeds.empty()) return names;
    std::size_t const each = std::clamp<std::size_t>(room / feeds.size(), 1, 2);
    for (std::size_t i = 0; i < feeds.size(); ++i) {
        auto const cut =
            fit(widths, feed_words(feeds[i]), Weight::bold, width, block_height(each, kFloor), kFloor, kFloor);
        names.lines.insert(names.lines.end(), cut.lines.begin(), cut.lines.end());
        names.whole[i] = !cut.shortened && names.lines.size() <= room;
    }
    names.lines.resize(std::min(names.lines.size(), room));
    return names;
}

// The mark stays large where the words let it, and gives way before they are cut.
Names names_beside_mark(TextWidth const& widths, std::vector<Fed> const& feeds, Mm width, Mm height) {
    for (Mm const mark : {kLeastMark, kLeastThrice})
        if (auto const names = fit_names(widths, feeds, width, height - cap_height(mark) - kGap)) return *names;
    return cut_names(widths, feeds, width, std::max(height / 2, height - cap_height(kLeastThrice) - kGap) - kGap);
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
    for (std::size_t const least : {3U, 2U, 1U})
        for (auto step = kScale.rbegin(); step != kScale.rend(); ++step) {
            if (*step > kLargestMark || cap_height(*step) > height) continue;
            if (least == 3 && *step < kLeastThrice) break;
            if (copies(*step) >= least) return {*step, copies(*step)};
        }
    return {};
}

// True when the mark is whole.
bool add_mark_row(Pen const& pen, Rect area, std::string const& mark) {
    // Most marks are capitals and digits, with nothing below the line.
    bool const hangs = mark.find_first_of("gjpqyQ") != mark.npos;
    if (hangs) area.height *= cap_height(1) / block_height(1, 1);
    auto const row = fit_mark(pen.widths(), mark, area.width, area.height);
    Mm const pitch = area.width / static_cast<Mm>(row.copies);
    Mm const baseline = area.y + (area.height + cap_height(row.x_height)) / 2;
    auto const words = shortened(pen.widths(), mark, Weight::bold, row.x_height, area.width);
    for (std::size_t i = 0; i < row.copies; ++i)
        pen.add(Text{area.x + (static_cast<Mm>(i) + 0.5) * pitch, baseline, row.x_height, words, Weight::bold,
                     Align::centre, kBlack, 0});
    return words == mark;
}

// Left an end, shortened where it must be; at the right, whole, the cable and which of the two labels this is.
struct SmallLine {
    std::string left;
    Weight weight = Weight::regular;
    std::string cable, which;
};
constexpr Mm kSmallGap = 2;

Mm right_width(TextWidth const& widths, SmallLine const& line) {
    Mm width = 0;
    if (!line.which.empty()) width += widths.width(line.which, kFloor, Weight::bold) + kSmallGap;
    if (!line.cable.empty()) width += widths.width(line.cable, kFloor, Weight::regular) + kSmallGap;
    return width;
}

bool whole(TextWidth const& widths, SmallLine const& line, Mm width) {
    return widths.width(line.left, kFloor, line.weight) + right_width(widths, line) <= width;
}

// The cable at the right of one of these lines, "tip" or "keep" of one, wherever all stands whole.
bool place_right(TextWidth const& widths, std::vector<SmallLine>& lines, std::string const& cable,
                 std::string const& which, Mm width) {
    for (auto& with_cable : lines)
        for (auto with_which = lines.rbegin(); with_which != lines.rend(); ++with_which) {
            for (auto& line : lines) line.cable = line.which = "";
            with_cable.cable = cable;
            with_which->which = which;
            if (std::ranges::all_of(lines, [&](SmallLine const& line) { return whole(widths, line, width); }))
                return true;
        }
    return false;
}

struct SmallLines {
    std::vector<SmallLine> lines;
    bool tell_ends = true; // whole, or what the label feeds says the name whole
};

// The two ends, and beside them the rest. An end cut short could be taken for another: unless the line above says it
// whole, a third line saves it where there is room for three.
SmallLines small_lines(TextWidth const& widths, CableLabel const& label, Mm width, bool three) {
    SmallLine const here{label.end, Weight::bold, "", ""};
    SmallLine const there{label.other, Weight::regular, "", ""};
    std::string const& which = label.which;
    std::vector<SmallLine> lines{here, there};
    if (place_right(widths, lines, label.cable, which, width)) return {lines};

    // The line with the shorter end gives the room.
    bool const short_here =
        widths.width(here.left, kFloor, here.weight) <= widths.width(there.left, kFloor, there.weight);
    std::vector<SmallLine> cut{here, there};
    cut[short_here ? 0 : 1].cable = label.cable;
    cut[short_here ? 1 : 0].which = which;
    auto const told = [&](SmallLine const& line, std::string const& name) {
        return whole(widths, line, width) || std::ranges::find(label.feeds, name, &Fed::name) != label.feeds.end();
    };
    bool const both = told(cut[0], label.end_name) && told(cut[1], label.other_name);
    if (!three || both) return {cut, both};

    lines = {here, there, {}};
    if (place_right(widths, lines, label.cable, which, width)) return {lines};
    for (std::size_t const here_lines : {2U, 1U}) {
        auto const first = wrapped(widths, here.left, here.weight, kFloor, width, here_lines);
        auto const last = wrapped(widths, there.left, there.weight, kFloor, width, 3 - here_lines);
        if (!first || !last) continue;
        lines.clear();
        for (auto const& words : *first) lines.push_back({words, here.weight, "", ""});
        for (auto const& words : *last) lines.push_back({words, there.weight, "", ""});
        if (place_right(widths, lines, label.cable, which, width)) return {lines};
    }
    return {cut, false};
}

// True when it tells the cable whole.
bool add_small_line(Pen const& pen, Rect area, Mm baseline, SmallLine const& line) {
    auto const add = [&](std::string const& words, Mm x, Weight weight, Align align) {
        if (!words.empty()) pen.add(Text{x, baseline, kFloor, words, weight, align, kBlack, 0});
    };
    Mm right = area.x + area.width;
    add(line.which, right, Weight::bold, Align::right);
    if (!line.which.empty()) right -= pen.width(line.which, kFloor, Weight::bold) + kSmallGap;
    auto const cable = shortened(pen.widths(), line.cable, Weight::regular, kFloor, area.width / 2);
    add(cable, right, Weight::regular, Align::right);
    if (!cable.empty()) right -= pen.width(cable, kFloor, Weight::regular) + kSmallGap;
    if (!line.left.empty())
        add(shortened(pen.widths(), line.left, line.weight, kFloor, right - area.x), area.x, line.weight, Align::left);
    return cable == line.cable;
}

// Returns their top.
Mm add_small_lines(Pen const& pen, Rect area, CableLabel const& label, LabelShows& shows) {
    // What it feeds is not given up for a third line.
    Mm const least = block_height(std::max<std::size_t>(label.feeds.size(), 1), kFloor) + cap_height(kLeastThrice);
    bool const three = area.height >= block_height(3, kFloor) + least + 2 * kGap;
    auto const [lines, tell_ends] = small_lines(pen.widths(), label, area.width, three);
    shows.ends = tell_ends;
    Mm const top = area.y + area.height - block_height(lines.size(), kFloor);
    for (std::size_t i = 0; i < lines.size(); ++i)
        shows.cable &=
            add_small_line(pen, area, top + cap_height(kFloor) + static_cast<Mm>(i) * leading(kFloor), lines[i]);
    return top;
}

} // namespace

bool has_mark_alone(Rect area) { return area.height < block_height(2, kFloor) + kGap + cap_height(kFloor); }

LabelShows add_cable_label(Pen const& pen, Rect area, CableLabel const& label) {
    LabelShows shows;
    shows.feeds.assign(label.feeds.size(), true);
    if (has_mark_alone(area)) {
        shows.mark = add_mark_row(pen, area, label.mark);
        return shows;
    }
    Mm const bottom = add_small_lines(pen, area, label, shows) - kGap;
    auto const names = names_beside_mark(pen.widths(), label.feeds, area.width, bottom - area.y);
    if (!names.whole.empty()) shows.feeds = names.whole;
    Mm const height = block_height(names.lines.size(), names.x_height);
    pen.add_lines({names.lines, names.x_height, false}, area.x, bottom - height + cap_height(names.x_height),
                  Weight::bold);
    Mm const gap = names.lines.empty() ? 0 : kGap;
    shows.mark = add_mark_row(pen, {area.x, area.y, area.width, bottom - height - gap - area.y}, label.mark);
    return shows;
}

void add_notice(Pen const& pen, Rect area, std::string const& words) {
    auto const text = fit(pen.widths(), words, Weight::regular, area.width, area.height, kDetail);
    pen.add_lines(text, area.x, area.y + cap_height(text.x_height), Weight::regular);
}

} // namespace legwork
