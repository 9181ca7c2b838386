// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The inside of Fonts: two font maps, the bundled faces alone and, made when a letter first asks for them, the
// bundled faces followed by the machine's.
#pragma once

#include "draw/draw.h"
#include "draw/owned.h"

#include <map>
#include <utility>

namespace legwork {

// A line of text laid out at an x-height of kUnit, to be scaled: so its width is exactly proportional to its size.
inline constexpr double kUnit = 16;

struct Fonts::Inside {
    explicit Inside(std::string const& folder);

    // Never null. The machine's fonts are asked only when the bundled face lacks a letter.
    GOwned<PangoLayout> line(std::string_view words, Weight weight) const;
    double unit_width(std::string_view words, Weight weight) const; // of line(), in its units
    std::vector<std::string> missing(std::string_view words) const;

private:
    struct Faces {
        FontConfig config; // outlives the map, which keeps its own reference
        GOwned<PangoFontMap> map;
        GOwned<PangoContext> context;
    };
    static Faces faces(FontConfig config);
    GOwned<PangoLayout> line(PangoContext* context, std::string_view clean_words, Weight weight) const;
    PangoContext* machine_context() const;

    std::vector<std::string> files_;
    std::string family_;
    double size_ = 0; // absolute font size, in pixels, at which the x-height is kUnit
    Faces bundled_;
    // Caches: they change nothing that can be asked.
    mutable Faces machine_;
    mutable std::map<std::pair<std::string, Weight>, double, std::less<>> widths_;
};

// Valid UTF-8 without control characters, which have no place on a sheet: they become spaces, and bytes that are no
// UTF-8 the replacement character.
std::string printable(std::string_view words);

} // namespace legwork
