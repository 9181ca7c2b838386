// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/directory_cell.h"

#include "sheet/common_text.h"

#include <algorithm>
#include <optional>

namespace legwork {

namespace {

constexpr std::string_view kBetween = " · ";
constexpr Mm kAfterName = 1.8;

// One way to set the words: these sizes, lines for the name, and whether more than the place may follow on its line.
struct Manner {
    Mm name, detail;
    std::size_t name_lines;
    bool fill_first_line;
};

// In the order of liking. Where a line is low a name of one line a step smaller is calmer than two lines.
std::vector<Manner> manners(CellSizes most, Mm height) {
    std::vector<Manner> all;
    bool const high = height > block_height(3, most.name);
    auto const add = [&](Mm name, std::size_t least_lines, std::size_t most_lines) {
        for (std::size_t lines = least_lines; lines <= most_lines; ++lines)
            for (auto detail = kScale.rbegin(); detail != kScale.rend(); ++detail)
                if (*detail <= most.detail && *detail <= name)
                    for (bool const fill : {false, true}) all.push_back({name, *detail, lines, fill});
    };
    for (auto name = kScale.rbegin(); name != kScale.rend(); ++name)
        if (*name <= most.name && *name > kFloor && !high) add(*name, 1, 1);
    for (auto name = kScale.rbegin(); name != kScale.rend(); ++name)
        if (*name <= most.name) add(*name, 1, 4);
    return all;
}

class Setting {
public:
    Setting(TextWidth const& widths, CellWords const& words, Mm width, Mm height, Manner manner)
        : widths_(widths), words_(words), width_(width), height_(height), manner_(manner) {}

    std::optional<CellText> set(std::vector<std::string> const& phrases) {
        if (block_height(manner_.name_lines, manner_.name) > height_) return std::nullopt;
        auto const name = wrapped(widths_, words_.name, words_.weight, manner_.name, width_, manner_.name_lines);
        return name && name->size() == manner_.name_lines ? set(*name, phrases) : std::nullopt;
    }

private:
    std::optional<CellText> set(std::vector<std::string> const& name, std::vector<std::string> const& phrases) {
        text_ = {};
        is_phrase_ = false;
        for (std::string const& line : name) add(0, line, manner_.name, words_.weight);
        Mm x = widths_.width(name.back(), manner_.name, words_.weight) + kAfterName;
        bool on_name = true;
        for (std::size_t i = 0; i < phrases.size(); ++i) {
            bool const is_place = i == 0 && !words_.place.empty();
            if (on_name && (is_place || manner_.fill_first_line) && x + detail_width(phrases[i]) <= width_) {
                if (!append(phrases[i])) add(x, phrases[i], manner_.detail, Weight::regular, true);
                is_phrase_ = true;
                x += detail_width(phrases[i]) + detail_width(kBetween);
                continue;
            }
            if (!on_name && append(phrases[i])) continue;
            on_name = false;
            is_phrase_ = true;
            auto const lines = wrapped(widths_, phrases[i], Weight::regular, manner_.detail, width_, 20);
            if (!lines) return std::nullopt;
            for (std::string const& line : *lines) add(0, line, manner_.detail, Weight::regular);
        }
        if (text_.above + text_.below > height_) return std::nullopt;
        return text_;
    }

    Mm detail_width(std::string_view words) const { return widths_.width(words, manner_.detail, Weight::regular); }

    // Behind the phrase before, on its line.
    bool append(std::string const& phrase) {
        CellLine& last = text_.lines.back();
        if (!is_phrase_) return false;
        std::string const both = last.words + std::string(kBetween) + phrase;
        if (last.x + detail_width(both) > width_) return false;
        last.words = both;
        return true;
    }

    void add(Mm x, std::string const& words, Mm x_height, Weight weight, bool same_line = false) {
        Mm y = 0;
        if (!text_.lines.empty())
            y = text_.lines.back().y + (same_line ? 0 : line_step(line_size_, x_height));
        else
            text_.above = cap_height(x_height);
        text_.lines.push_back({x, y, x_height, weight, words});
        line_size_ = same_line ? std::max(line_size_, x_height) : x_height;
        text_.below = std::max(text_.below, y + descent(x_height));
    }

    TextWidth const& widths_;
    CellWords const& words_;
    Mm width_, height_;
    Manner manner_;
    CellText text_;
    Mm line_size_ = 0;       // the largest letters of the line that is being set
    bool is_phrase_ = false; // its last words are a phrase, not the name
};

} // namespace

Mm line_step(Mm above, Mm below) { return descent(above) + 0.25 + cap_height(below); }

CellText set_cell(TextWidth const& widths, CellWords const& words, Mm width, Mm height, CellSizes sizes) {
    auto const fitted = [&](CellWords const& said, std::vector<std::string> const& phrases) -> std::optional<CellText> {
        for (Manner const& manner : manners(sizes, height))
            if (auto text = Setting(widths, said, width, height, manner).set(phrases)) return text;
        return std::nullopt;
    };
    CellWords said = words;
    bool const too_long = !fitted(words, {});
    if (too_long) said.name = shortened(widths, words.name, words.weight, kFloor, width);

    std::vector<std::string> phrases, left_out;
    if (!words.place.empty()) phrases.push_back(words.place);
    phrases.insert(phrases.end(), words.warnings.begin(), words.warnings.end());
    phrases.insert(phrases.end(), words.remarks.begin(), words.remarks.end());
    while (true) {
        auto kept = phrases;
        if (!left_out.empty()) kept.push_back(words.more_below);
        auto text = fitted(said, kept);
        if (!text && phrases.empty()) text = fitted(said, {}); // not even "more below" beside the name
        if (!text && !phrases.empty()) {
            left_out.insert(left_out.begin(), phrases.back());
            phrases.pop_back();
            continue;
        }
        CellText made = text.value_or(CellText{});
        made.shortened = too_long || !text; // the list below then has the whole name
        made.left_out = std::move(left_out);
        return made;
    }
}

} // namespace legwork
