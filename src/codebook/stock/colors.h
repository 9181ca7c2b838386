// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Colours of insulation as values, so that nobody behind looks at the word again.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// What a conductor is taken for by whoever sees it. White, grey and green are that with a stripe, too; black, red and
// blue are plain.
enum class Insulation { black, red, blue, other, white, grey, green, bare };
constexpr bool is_white(Insulation i) { return i == Insulation::white || i == Insulation::grey; }
constexpr bool is_green(Insulation i) { return i == Insulation::green || i == Insulation::bare; }
std::string_view name(Insulation i); // "black"; of `other` nothing

struct WireColor {
    Insulation is = Insulation::other;
    std::string name;  // "white with blue stripe": in small letters, and "grey"
    std::string typed; // as the job says it
    friend bool operator==(WireColor const& x, WireColor const& y) { return x.name == y.name; }
};
WireColor wire_color(std::string_view typed);
std::vector<WireColor> wire_colors(std::vector<std::string> const& typed);
std::vector<std::string> names(std::vector<WireColor> const& colors);

} // namespace legwork
