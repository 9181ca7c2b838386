// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The inside of Fonts: two font maps, the bundled faces alone and, made when a letter first asks for them, the
// bundled faces followed by the machine's.
#pragma once

#include "draw/draw.h"
#include "draw/line.h"
#include "draw/owned.h"
#include "draw/svg_glyphs.h"

#include <map>
#include <utility>

namespace legwork {

struct Fonts::Inside {
    explicit Inside(std::string const& folder);

    // The machine's fonts are asked only when the bundled face lacks a letter.
    SetLine const& line(std::string_view words, Weight weight) const;
    std::vector<std::string> missing(std::string_view words) const;

    Face const& face(Weight weight) const { return weight == Weight::bold ? bold_ : regular_; }
    double size() const { return size_; }
    GlyphShapes& shapes() const { return shapes_; }

private:
    struct Faces {
        FontConfig config; // outlives the map, which keeps its own reference
        GOwned<PangoFontMap> map;
        GOwned<PangoContext> context;
    };
    static Faces faces(FontConfig config);
    SetLine set(std::string_view words, Weight weight) const;
    GOwned<PangoLayout> layout(PangoContext* context, std::string_view clean_words, Weight weight) const;
    GOwned<PangoLayout> layout(std::string_view clean_words, Weight weight) const;
    PangoContext* machine_context() const;

    std::vector<std::string> files_;
    std::string family_;
    double size_ = 0; // absolute font size, in pixels, at which the x-height is kUnit
    Faces bundled_;
    Face regular_, bold_;
    // Caches: they change nothing that can be asked. Every text is measured, then drawn once for each format.
    mutable Faces machine_;
    mutable GlyphShapes shapes_;
    mutable std::map<std::string, SetLine, std::less<>> regular_lines_, bold_lines_;
};

// What keeps widths and shapes the same on every machine.
CairoFontOptions unhinted();

// Valid UTF-8 without control characters, which have no place on a sheet: they become spaces, and bytes that are no
// UTF-8, or no character, the replacement character.
std::string printable(std::string_view words);

} // namespace legwork
