// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Written here, not by Cairo: its SVG defines every letter once for each size and each number goes through printf, six
// times the time and the bytes; and its ids count up over the whole process.

#include "draw/fonts.h"
#include "draw/marks.h"
#include "draw/svg_glyphs.h"
#include "units/failure.h"

#include <algorithm>
#include <cmath>

namespace legwork {

namespace {

std::string escaped(std::string_view words) {
    std::string out;
    for (char const c : words) switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '"': out += "&quot;"; break;
        default: out += c;
        }
    return out;
}

std::string color(Ink ink) {
    std::string out = "#";
    for (double const part : {ink.red, ink.green, ink.blue}) {
        auto const level = static_cast<unsigned>(std::lround(std::clamp(part, 0.0, 1.0) * 255));
        constexpr std::string_view digits = "0123456789abcdef";
        out += digits[level >> 4];
        out += digits[level & 15];
    }
    return out;
}

class Writer {
public:
    explicit Writer(Fonts const& fonts) : fonts_(fonts), glyphs_(fonts.inside().shapes()) {}

    std::string write(Page const& page, std::string_view known_by) {
        for (Mark const& mark : page.marks) std::visit([&](auto const& m) { add(m); }, mark);
        std::string out =
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"";
        std::string width, height;
        append_number(width, clamped(page.width));
        append_number(height, clamped(page.height));
        out += width + "mm\" height=\"" + height + "mm\" viewBox=\"0 0 " + width + " " + height + "\">\n";
        if (!known_by.empty()) out += "<metadata>" + escaped(known_by) + "</metadata>\n";
        out += "<defs>\n";
        out += glyphs_.definitions();
        out += "</defs>\n<rect width=\"" + width + "\" height=\"" + height + "\" fill=\"#fff\"/>\n";
        return out + body_ + "</svg>\n";
    }

private:
    // A mark that is nowhere is a mistake of ours: no page is better than one that lacks it.
    void number(double n) {
        if (!std::isfinite(n) || std::abs(n) > 1e9) throw Failure("a page could not be drawn: a mark is off all paper");
        append_number(body_, n);
    }
    void attribute(std::string_view name, double n) {
        body_ += " ";
        body_ += name;
        body_ += "=\"";
        number(n);
        body_ += "\"";
    }
    void pen(Mm width, Ink ink, bool dashed) {
        body_ += " stroke=\"" + color(ink) + "\"";
        attribute("stroke-width", width);
        if (!dashed) return;
        auto const [dash, gap] = dash_lengths(width);
        body_ += " stroke-dasharray=\"";
        number(dash);
        body_ += " ";
        number(gap);
        body_ += "\"";
    }

    void add(Line const& l) {
        body_ += "<line";
        attribute("x1", l.x1);
        attribute("y1", l.y1);
        attribute("x2", l.x2);
        attribute("y2", l.y2);
        pen(l.width, l.ink, l.dashed);
        body_ += "/>\n";
    }

    void add(Box const& b) {
        body_ += "<rect";
        attribute("x", std::min(b.x, b.x + b.width));
        attribute("y", std::min(b.y, b.y + b.height));
        attribute("width", std::abs(b.width));
        attribute("height", std::abs(b.height));
        if (b.radius > 0) attribute("rx", std::min({b.radius, std::abs(b.width) / 2, std::abs(b.height) / 2}));
        body_ += b.filled ? " fill=\"" + color(b.fill) + "\"" : " fill=\"none\"";
        if (b.line > 0) pen(b.line, b.ink, b.dashed);
        body_ += "/>\n";
    }

    void add(Text const& t) {
        if (t.words.empty() || t.x_height <= 0) return;
        SetLine const& line = fonts_.inside().line(t.words, t.weight);
        body_ += "<g aria-label=\"" + escaped(line.words) + "\" fill=\"" + color(t.ink) + "\" transform=\"translate(";
        number(t.x);
        body_ += " ";
        number(t.baseline);
        body_ += ")";
        if (t.turn != 0) {
            body_ += " rotate(";
            number(t.turn);
            body_ += ")";
        }
        std::string scale;
        // Glyphs are in Pango units with y upwards, as typefaces have them: scaled and turned over here once, so that
        // each outline stands in the file once, as whole numbers.
        append_number(scale, t.x_height / (kUnit * PANGO_SCALE), 8);
        body_ += " scale(" + scale + " -" + scale + ")";
        if (t.align != Align::left) {
            body_ += " translate(";
            number(-line.width * share_left_of_anchor(t.align));
            body_ += ")";
        }
        body_ += "\">" + glyphs_.uses(line, fonts_.inside().face(t.weight)) + "</g>\n";
    }

    Fonts const& fonts_;
    SvgGlyphs glyphs_;
    std::string body_;
};

} // namespace

std::string draw_svg(Page const& page, Fonts const& fonts, std::string_view mark) {
    return Writer(fonts).write(page, mark);
}

} // namespace legwork
