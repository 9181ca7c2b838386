// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "page/page.h"

#include <fmt/format.h>

namespace legwork {

namespace {

std::string ink_words(Ink ink) {
    if (ink.red == ink.green && ink.green == ink.blue) return ink.red == 0 ? "" : fmt::format(" grey {:.2f}", ink.red);
    return fmt::format(" rgb {:.2f} {:.2f} {:.2f}", ink.red, ink.green, ink.blue);
}

std::string_view align_word(Align align) {
    switch (align) {
    case Align::left: return "";
    case Align::centre: return " centre";
    case Align::right: return " right";
    }
    return "";
}

std::string one_line(std::string_view words) {
    std::string line;
    for (char const c : words) {
        if (c == '\n')
            line += "\\n";
        else if (c == '\\')
            line += "\\\\";
        else
            line += c;
    }
    return line;
}

std::string line_of(Text const& t) {
    return fmt::format("text {:.2f} {:.2f} {:.2f}{}{}{}{} | {}", t.x, t.baseline, t.x_height,
                       t.weight == Weight::bold ? " bold" : "", align_word(t.align),
                       t.turn ? fmt::format(" turn {}", t.turn) : "", ink_words(t.ink), one_line(t.words));
}

std::string line_of(Line const& l) {
    return fmt::format("line {:.2f} {:.2f} {:.2f} {:.2f} {:.2f}{}{}", l.x1, l.y1, l.x2, l.y2, l.width,
                       l.dashed ? " dashed" : "", ink_words(l.ink));
}

std::string line_of(Box const& b) {
    return fmt::format("box {:.2f} {:.2f} {:.2f} {:.2f} {:.2f}{}{}{}{}", b.x, b.y, b.width, b.height, b.line,
                       b.radius > 0 ? fmt::format(" radius {:.2f}", b.radius) : "", b.dashed ? " dashed" : "",
                       ink_words(b.ink), b.filled ? fmt::format(" filled{}", ink_words(b.fill)) : "");
}

} // namespace

std::string dump(Page const& page) {
    std::string lines = fmt::format("page {:.2f} {:.2f}\n", page.width, page.height);
    for (Mark const& mark : page.marks) lines += std::visit([](auto const& m) { return line_of(m); }, mark) + "\n";
    return lines;
}

} // namespace legwork
