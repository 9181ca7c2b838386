// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/load_blocks.h"

namespace legwork {

namespace {

Mark moved(Mark mark, Mm x, Mm y) {
    if (auto* t = std::get_if<Text>(&mark)) t->x += x, t->baseline += y;
    if (auto* l = std::get_if<Line>(&mark)) l->x1 += x, l->x2 += x, l->y1 += y, l->y2 += y;
    if (auto* b = std::get_if<Box>(&mark)) b->x += x, b->y += y;
    return mark;
}

class Pages {
public:
    Pages(Form const& form, Rect room) : form_(form), room_(room) {}

    void add(Blocks const& blocks, Blocks const& heads) {
        for (std::size_t i = 0; i < blocks.size(); ++i) {
            Block const& b = blocks[i];
            if (pages_.empty() || (y_ > room_.y && y_ + needed(blocks, i) > bottom())) {
                pages_.push_back(blank_page(form_));
                y_ = room_.y;
                if (b.head >= 0 && i > 0) put(heads[static_cast<std::size_t>(b.head)]);
            }
            put(b);
        }
    }
    std::vector<Page> take() { return std::move(pages_); }

private:
    Mm bottom() const { return room_.y + room_.height; }

    // Of this block and all that must stay with it; of itself alone when they are more than a page.
    Mm needed(Blocks const& blocks, std::size_t i) const {
        Mm const alone = blocks[i].above + blocks[i].height;
        Mm sum = alone;
        while (blocks[i].with_next && i + 1 < blocks.size()) {
            ++i;
            sum += blocks[i].above + blocks[i].height;
        }
        return sum > room_.height ? alone : sum;
    }

    void put(Block const& b) {
        if (y_ > room_.y) y_ += b.above;
        for (Mark const& m : b.marks) pages_.back().marks.push_back(moved(m, room_.x, y_));
        y_ += b.height;
    }

    Form const& form_;
    Rect room_;
    Mm y_ = 0;
    std::vector<Page> pages_;
};

} // namespace

std::vector<Page> in_pages(Form const& form, Rect room, Blocks const& blocks, Blocks const& heads) {
    Pages pages(form, room);
    pages.add(blocks, heads);
    return pages.take();
}

} // namespace legwork
