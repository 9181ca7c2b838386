// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_list.h"

#include "sheet/common_text.h"

#include <algorithm>

namespace legwork {

namespace {
constexpr Mm kBetweenRows = 0.7, kAfterLead = 3, kEndless = 10000;
constexpr double kGreatestLead = 0.3; // part of the width
} // namespace

Mm greatest_height(std::vector<ListRow> const& rows, Mm width, Mm x_height) {
    double lines = 0;
    for (ListRow const& r : rows)
        lines += most_lines(r.lead, x_height, width * kGreatestLead - kAfterLead) +
                 most_lines(r.words, x_height, width * (1 - kGreatestLead));
    return lines * (leading(x_height) + kBetweenRows);
}

List::List(TextWidth const& widths, std::vector<ListRow> const& rows, Mm width, Mm x_height) : size_(x_height) {
    Mm lead_width = 0;
    for (ListRow const& r : rows)
        if (!r.words.empty() && !r.lead.empty())
            lead_width = std::max(lead_width, widths.width(r.lead, size_, Weight::bold) + kAfterLead);
    lead_width = std::min(lead_width, width * kGreatestLead);
    for (ListRow const& r : rows) {
        bool const heading = r.words.empty();
        Mm const x = r.lead.empty() || heading ? 0 : lead_width;
        auto const leads =
            fit(widths, r.lead, Weight::bold, heading ? width : lead_width - kAfterLead, kEndless, size_, kFloor);
        auto const words = fit(widths, r.words, Weight::regular, width - x, kEndless, size_, size_);
        std::size_t const n = std::max(r.lead.empty() ? 0 : leads.lines.size(), heading ? 0 : words.lines.size());
        for (std::size_t i = 0; i < n; ++i)
            lines_.push_back({!r.lead.empty() && i < leads.lines.size() ? leads.lines[i] : "",
                              !heading && i < words.lines.size() ? words.lines[i] : "", x,
                              leading(size_) + (i == 0 ? kBetweenRows : 0)});
    }
}

Mm List::height(std::size_t from, std::size_t to) const {
    if (from >= to) return 0;
    Mm sum = cap_height(size_) + descent(size_);
    for (std::size_t i = from + 1; i < to; ++i) sum += lines_[i].above;
    return sum;
}

std::size_t List::fitting(std::size_t from, Mm room) const {
    std::size_t to = from;
    while (to < lines_.size() && height(from, to + 1) <= room) ++to;
    return to - from;
}

void List::add(Pen const& pen, Mm x, Mm top, std::size_t from, std::size_t to) const {
    Mm y = top + cap_height(size_);
    for (std::size_t i = from; i < to; ++i) {
        SetLine const& line = lines_[i];
        if (i > from) y += line.above;
        if (!line.lead.empty()) pen.add(Text{x, y, size_, line.lead, Weight::bold, Align::left, kBlack, 0});
        if (!line.words.empty())
            pen.add(Text{x + line.x, y, size_, line.words, Weight::regular, Align::left, kBlack, 0});
    }
}

} // namespace legwork
