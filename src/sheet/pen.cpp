// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/pen.h"

#include <utility>

namespace legwork {

namespace {

struct Point {
    Mm x, y;
};

// From the place's own coordinates onto the page, and back.
Point onto_page(Turned const& t, Point p) {
    auto const& r = t.on_page;
    switch (t.degrees) {
    case 90: return {r.x + r.width - p.y, r.y + p.x};
    case 180: return {r.x + r.width - p.x, r.y + r.height - p.y};
    case 270: return {r.x + p.y, r.y + r.height - p.x};
    default: return p;
    }
}
Point from_page(Turned const& t, Point p) {
    auto const& r = t.on_page;
    switch (t.degrees) {
    case 90: return {p.y - r.y, r.x + r.width - p.x};
    case 180: return {r.x + r.width - p.x, r.y + r.height - p.y};
    case 270: return {r.y + r.height - p.y, p.x - r.x};
    default: return p;
    }
}

Rect between(Point a, Point b) {
    if (a.x > b.x) std::swap(a.x, b.x);
    if (a.y > b.y) std::swap(a.y, b.y);
    return {a.x, a.y, b.x - a.x, b.y - a.y};
}

void put(Turned const& t, Text& text) {
    auto const at = onto_page(t, {text.x, text.baseline});
    text.x = at.x;
    text.baseline = at.y;
    text.turn = (text.turn + t.degrees) % 360;
}
void put(Turned const& t, Line& line) {
    auto const from = onto_page(t, {line.x1, line.y1}), to = onto_page(t, {line.x2, line.y2});
    line.x1 = from.x, line.y1 = from.y;
    line.x2 = to.x, line.y2 = to.y;
}
void put(Turned const& t, Box& box) {
    auto const r = t.on_page_of({box.x, box.y, box.width, box.height});
    box.x = r.x, box.y = r.y;
    box.width = r.width, box.height = r.height;
}

} // namespace

Rect Turned::read(Rect part) const {
    if (degrees == 0) return part;
    return between(from_page(*this, {part.x, part.y}), from_page(*this, {part.x + part.width, part.y + part.height}));
}

Rect Turned::read() const { return read(on_page); }

Rect Turned::on_page_of(Rect r) const {
    if (degrees == 0) return r;
    return between(onto_page(*this, {r.x, r.y}), onto_page(*this, {r.x + r.width, r.y + r.height}));
}

Mark Turned::placed(Mark mark) const {
    if (degrees != 0) std::visit([&](auto& m) { put(*this, m); }, mark);
    return mark;
}

Pen Pen::in(Turned place) const {
    Pen pen = *this;
    pen.place_ = place;
    return pen;
}

Pen Pen::telling(std::vector<std::string>& cut) const {
    Pen pen = *this;
    pen.cut_ = &cut;
    return pen;
}

Pen Pen::untold() const {
    Pen pen = *this;
    pen.cut_ = nullptr;
    return pen;
}

void Pen::add(Mark mark) const { marks_->push_back(place_.placed(std::move(mark))); }

Mm Pen::add_lines(Fitted const& text, Mm x, Mm baseline, Weight weight, Align align, Ink ink) const {
    if (text.shortened && cut_) cut_->push_back(text.lines.back());
    Mm last = baseline;
    for (std::size_t i = 0; i < text.lines.size(); ++i) {
        last = baseline + static_cast<Mm>(i) * leading(text.x_height);
        if (text.lines[i].empty()) continue;
        add(Text{x, last, text.x_height, text.lines[i], weight, align, ink, 0});
    }
    return last;
}

} // namespace legwork
