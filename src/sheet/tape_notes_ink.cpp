// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/tape_notes_ink.h"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace legwork {

namespace {

constexpr Mm kThick = 2.6, kBare = 1.3, kTape = 4.2, kOutline = 0.25;

struct Named {
    std::string_view name;
    Ink ink;
};
// Our choice of inks: as far apart in grey as the colours let them be.
constexpr std::array kInks{
    Named{"black", {0.05, 0.05, 0.05}}, Named{"white", {1, 1, 1}},          Named{"red", {0.82, 0.1, 0.12}},
    Named{"blue", {0.1, 0.3, 0.75}},    Named{"green", {0.1, 0.55, 0.25}},  Named{"yellow", {1, 0.85, 0.1}},
    Named{"orange", {0.95, 0.5, 0.1}},  Named{"brown", {0.45, 0.28, 0.15}}, Named{"grey", {0.62, 0.62, 0.62}},
    Named{"bare", {0.78, 0.5, 0.25}},   Named{"purple", {0.5, 0.2, 0.6}},   Named{"violet", {0.5, 0.2, 0.6}},
    Named{"pink", {0.95, 0.6, 0.7}},    Named{"tan", {0.8, 0.68, 0.5}},
};

// The colours that a name is made of, the ground colour first: "green with yellow", "white/blue".
std::vector<Ink> inks_of(std::string_view color) {
    std::vector<Ink> found;
    std::string word;
    auto const take = [&] {
        for (auto const& known : kInks)
            if (known.name == word || (word == "gray" && known.name == "grey")) found.push_back(known.ink);
        word.clear();
    };
    for (char const c : color) {
        if ((c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'))
            word += static_cast<char>(c | 0x20);
        else
            take();
    }
    take();
    return found;
}

void add_piece(Pen const& pen, Mm x, Mm y, Mm width, Mm thick, std::string_view color) {
    auto const inks = inks_of(color);
    pen.add(Box{x, y - thick / 2, width, thick, kOutline, kBlack, !inks.empty(), inks.empty() ? kWhite : inks.front(),
                0, inks.empty()});
    if (inks.size() > 1) pen.add(Line{x, y, x + width, y, thick / 3, inks[1], false});
}

} // namespace

void add_wire(Pen const& pen, Mm x, Mm y, Mm width, std::string_view color) {
    add_piece(pen, x, y, width, color == "bare" ? kBare : kThick, color);
}

void add_tape(Pen const& pen, Mm x, Mm y, Mm width, std::string_view color) {
    add_piece(pen, x + width * 0.3, y, width * 0.4, kTape, color);
}

} // namespace legwork
