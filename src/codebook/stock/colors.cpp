// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/colors.h"

#include <algorithm>
#include <array>
#include <utility>

namespace legwork {

namespace {
struct Known {
    std::string_view word;
    Insulation is;
    bool striped_too;
};
constexpr std::array kKnown{
    Known{"black", Insulation::black, false}, Known{"red", Insulation::red, false},
    Known{"blue", Insulation::blue, false},   Known{"white", Insulation::white, true},
    Known{"grey", Insulation::grey, true},    Known{"green", Insulation::green, true},
    Known{"bare", Insulation::bare, false},
};

Insulation insulation(std::string_view name) {
    auto const at = std::ranges::find_if(
        kKnown, [&](Known const& k) { return k.striped_too ? name.starts_with(k.word) : name == k.word; });
    return at == kKnown.end() ? Insulation::other : at->is;
}
} // namespace

std::string_view name(Insulation i) {
    auto const at = std::ranges::find(kKnown, i, &Known::is);
    return at == kKnown.end() ? std::string_view() : at->word;
}

WireColor wire_color(std::string_view typed) {
    WireColor color;
    for (char const c : typed) color.name += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    if (color.name.starts_with("gray")) color.name[2] = 'e';
    color.is = insulation(color.name);
    color.typed = typed;
    return color;
}

std::vector<WireColor> wire_colors(std::vector<std::string> const& typed) {
    std::vector<WireColor> colors;
    for (std::string const& one : typed) colors.push_back(wire_color(one));
    return colors;
}

std::vector<std::string> names(std::vector<WireColor> const& colors) {
    std::vector<std::string> all;
    for (WireColor const& c : colors) all.push_back(c.name);
    return all;
}

} // namespace legwork
