// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/near.h"

#include <algorithm>
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <vector>

namespace legwork {

namespace {

constexpr std::size_t kLongest = 40; // letters of a word worth comparing
constexpr std::size_t kFew = 16;     // words worth listing

char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; }

// Optimal string alignment distance (edits of single letters and swaps of neighbours).
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    for (std::size_t j = 0; j <= b.size(); ++j) d[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            bool const same = small(a[i - 1]) == small(b[j - 1]);
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (same ? 0 : 1)});
            if (i > 1 && j > 1 && small(a[i - 1]) == small(b[j - 2]) && small(a[i - 2]) == small(b[j - 1]))
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

// The known names of several words of which `word` is the first: "16/4 lighting strip" of 16/4.
std::vector<std::string> begun(std::string_view word, std::span<std::string const> known) {
    std::vector<std::string> longer;
    if (word.empty() || std::ranges::find(known, word) != known.end()) return longer;
    for (auto const& name : known)
        if (name.size() > word.size() && name.starts_with(word) && name[word.size()] == ' ') longer.push_back(name);
    return longer;
}

} // namespace

std::string nearest(std::string_view word, std::span<std::string const> known) {
    if (word.empty() || word.size() > kLongest) return {};
    std::string_view best;
    auto least = word.size();
    for (auto const& candidate : known) {
        auto const longer = std::max(word.size(), candidate.size());
        auto const allowed = std::max<std::size_t>(1, longer / 3);
        auto const gap = longer - std::min(word.size(), candidate.size());
        if (gap > allowed || candidate.size() > kLongest) continue;
        if (auto const wrong = distance(word, candidate); wrong <= allowed && wrong < least) {
            least = wrong;
            best = candidate;
        }
    }
    return std::string(best);
}

std::string did_you_mean(std::string_view word, std::span<std::string const> known, std::string_view otherwise) {
    if (auto const longer = begun(word, known); !longer.empty() && longer.size() <= kFew)
        return fmt::format("did you mean \"{}\"?", fmt::join(longer, "\" or \""));
    if (auto const near = nearest(word, known); !near.empty()) return fmt::format("did you mean \"{}\"?", near);
    if (!known.empty() && known.size() <= kFew) return fmt::format("write one of: {}", fmt::join(known, ", "));
    return std::string(otherwise);
}

} // namespace legwork
