// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/gravity.h"

#include <algorithm>

namespace legwork {

namespace {
std::string joined(Gravity const& g, Family family, std::string_view between, std::string_view (*say)(Grade)) {
    std::string all;
    auto const of_family = grades(g, family);
    for (auto each = of_family.begin(); each != of_family.end(); ++each) {
        if (std::find(of_family.begin(), each, *each) != each) continue;
        all += all.empty() ? "" : between;
        all += say(*each);
    }
    return all;
}
} // namespace

std::string_view letters(Grade g) {
    switch (g) {
    case Grade::error: return "E";
    case Grade::error_on_new_work: return "E/W";
    case Grade::warning: return "W";
    case Grade::note: return "N";
    case Grade::silent: break;
    }
    return "-";
}

std::string_view words(Grade g) {
    switch (g) {
    case Grade::error: return "an error";
    case Grade::error_on_new_work: return "an error, on existing work a warning";
    case Grade::warning: return "a warning";
    case Grade::note: return "a note";
    case Grade::silent: break;
    }
    return "silent";
}

Severity severity(Grade g, bool existing) {
    if (g == Grade::note) return Severity::note;
    return g == Grade::error || (g == Grade::error_on_new_work && !existing) ? Severity::error : Severity::warning;
}

std::span<Grade const> grades(Gravity const& g, Family family) {
    auto const& all = family == Family::nec ? g.nec : g.ce;
    auto const end = std::find(all.begin() + 1, all.end(), Grade::silent);
    return {all.begin(), end};
}

Grade grade(Gravity const& g, Family family, Gravity::Of of) {
    auto const all = grades(g, family);
    if (of == Gravity::doubtful) return all.front() == Grade::note ? Grade::note : Grade::warning;
    return all[std::min<std::size_t>(of, all.size() - 1)];
}

std::string letters(Gravity const& g, Family family) { return joined(g, family, ", ", letters); }
std::string words(Gravity const& g, Family family) { return joined(g, family, "; or ", words); }

} // namespace legwork
