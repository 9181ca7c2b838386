// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "words/spoken.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {

using Beginnings = std::string_view;
constexpr std::array<Beginnings, 5> kDirectory{"figure/", "list/", "breaker/", "frame/", "directory/"};
constexpr std::array<Beginnings, 7> kLabels{"figure/", "list/", "breaker/", "frame/", "label/", "colour/", "colours/"};
constexpr std::array<Beginnings, 5> kLoad{"figure/", "list/", "frame/", "load/", "reference/"};
// The tape notes carry messages of check, which are in English.
constexpr std::array kSheets{
    SpokenSheet{"directory", kDirectory},
    SpokenSheet{"labels", kLabels},
    SpokenSheet{"tape-notes", {}},
    SpokenSheet{"load", kLoad},
};

} // namespace

std::span<SpokenSheet const> spoken_sheets() { return kSheets; }

Catalogue const& spoken(std::string_view sheet, std::vector<std::string> const& languages) {
    auto const at = std::ranges::find(kSheets, sheet, &SpokenSheet::name);
    Catalogue const* wanted = languages.empty() ? nullptr : catalogue(languages.front());
    if (!wanted || at == kSheets.end() || at->begin.empty()) return english();
    bool const whole = std::ranges::all_of(at->begin, [&](std::string_view b) { return wanted->has_all(b); });
    return whole ? *wanted : english();
}

} // namespace legwork
