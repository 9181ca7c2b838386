// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "toml/problem.h"
#include "units/utf8.h"

#include <algorithm>
#include <fmt/format.h>

namespace legwork {

namespace {

constexpr std::size_t kBlock = 512; // bytes between two counts of characters
constexpr std::size_t kBefore = 70; // characters shown before the caret of a long line
constexpr std::size_t kShown = 110; // of the whole line
constexpr std::size_t kMostProblems = 200;

bool begins_character(char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }

std::size_t count_characters(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(text, begins_character));
}

// `at` moved by whole characters, at most `most`, without leaving [low, high].
std::size_t back(std::string_view text, std::size_t at, std::size_t low, std::size_t most) {
    while (at > low && most-- > 0) do
            --at;
        while (at > low && !begins_character(text[at]));
    return at;
}
std::size_t forth(std::string_view text, std::size_t at, std::size_t high, std::size_t most) {
    while (at < high && most-- > 0) do
            ++at;
        while (at < high && !begins_character(text[at]));
    return at;
}

} // namespace

std::string quoted(std::string_view text) {
    auto const end = forth(text, 0, text.size(), 40);
    return fmt::format("\"{}{}\"", fit_to_print(text.substr(0, end)), end < text.size() ? "..." : "");
}

std::string render(Problem const& p, std::string_view file) {
    auto text = fit_to_print(file);
    if (p.place.line > 0) text += fmt::format(":{}:{}", p.place.line, p.place.column);
    text += ": " + p.message;
    if (!p.line.empty()) text += "\n    " + p.line;
    if (!p.line.empty() && p.caret > 0)
        text += "\n    " + std::string(static_cast<std::size_t>(p.caret - 1), ' ') + "^";
    if (!p.fix.empty()) text += "\n    " + p.fix;
    return text;
}

SourceText::SourceText(std::string_view bytes) : bytes_(bytes), lines_{0} {
    std::size_t count = 0;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        if (i % kBlock == 0) counts_.push_back(count);
        if (begins_character(bytes[i])) ++count;
        if (bytes[i] == '\n') lines_.push_back(i + 1);
    }
    // A byte order mark is no part of the first line.
    if (bytes.starts_with(kByteOrderMark)) lines_[0] = kByteOrderMark.size();
}

std::size_t SourceText::line_begin(std::size_t at) const {
    auto const next = std::ranges::upper_bound(lines_, at);
    return next == lines_.begin() ? lines_.front() : *(next - 1);
}

std::size_t SourceText::characters_before(std::size_t at) const {
    if (at == 0) return 0;
    auto const block = std::min(at / kBlock, counts_.size() - 1);
    return counts_[block] + count_characters(bytes_.substr(block * kBlock, at - block * kBlock));
}

Place SourceText::place(std::size_t at) const {
    auto const begin = line_begin(at);
    at = std::clamp(at, begin, std::max(begin, bytes_.size()));
    auto const line = std::ranges::upper_bound(lines_, begin) - lines_.begin();
    auto const column = characters_before(at) - characters_before(begin) + 1;
    return {static_cast<int>(line), static_cast<int>(column)};
}

Problem SourceText::problem(std::size_t at, std::string message, std::string fix) const {
    auto const begin = line_begin(at);
    at = std::clamp(at, begin, std::max(begin, bytes_.size()));
    auto const from = back(bytes_, at, begin, kBefore);
    auto const newline = std::min(bytes_.find('\n', at), bytes_.size());
    auto const line_end = newline > begin && bytes_[newline - 1] == '\r' ? newline - 1 : newline;
    auto const to =
        forth(bytes_, at, std::max(at, line_end), kShown - count_characters(bytes_.substr(from, at - from)));
    auto const ahead = (from > begin ? "..." : "") + fit_to_print(bytes_.substr(from, at - from));
    auto const behind = fit_to_print(bytes_.substr(at, to - at)) + (to < line_end ? "..." : "");
    return {place(at), std::move(message), std::move(fix), ahead + behind,
            static_cast<int>(character_count(ahead) + 1)};
}

void Complaints::add(std::size_t at, std::string message, std::string fix) {
    if (full())
        ++left_out_;
    else
        found_.push_back({at, std::move(message), std::move(fix)});
}

std::vector<Problem> Complaints::in_file_order() const {
    auto sorted = found_;
    std::ranges::stable_sort(sorted, {}, &Mistake::at);
    auto const shown = std::min(sorted.size(), kMostProblems);
    std::vector<Problem> problems;
    for (std::size_t i = 0; i < shown; ++i)
        problems.push_back(source_->problem(sorted[i].at, sorted[i].message, sorted[i].fix));
    if (auto const more = sorted.size() - shown + left_out_; more > 0)
        problems.push_back({problems.back().place,
                            fmt::format("{} more mistake{} in this file", more, more == 1 ? "" : "s"),
                            "mend the ones above first, then try again", "", 0});
    return problems;
}

} // namespace legwork
