// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/form.h"

#include "toml/table_reader.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace legwork {

namespace {

constexpr Mm kLeastPage = 50, kGreatestPage = 1200;
constexpr std::array<std::string_view, 4> kSheets{"directory", "labels", "tape-notes", "load"};

class FormReader {
public:
    FormReader(TomlTable const& root, Complaints& out) : table_(root, 0, "the form", out) {}

    Form read(std::string_view name) {
        Form form;
        form.name = name;
        form.sheet = sheet();
        form.title = table_.required_text("title", "title = \"A4, 210 x 297 mm\"");
        form.width = required("width", kLeastPage, kGreatestPage);
        form.height = required("height", kLeastPage, kGreatestPage);
        form.margin = length("margin", 0, 50).value_or(form.margin);
        if (form.sheet == "labels") read_labels(form);
        table_.finish();
        check(form);
        return form;
    }

private:
    std::string sheet() {
        auto said = table_.required_text("sheet", "sheet = \"directory\"");
        std::vector<std::string> const known(kSheets.begin(), kSheets.end());
        if (!said.empty() && std::ranges::count(known, said) == 0)
            table_.unknown_word(table_.value_at("sheet"), "sheet", said, known);
        return said;
    }

    void read_labels(Form& form) {
        form.columns = table_.required_number("columns", 1, 50, "columns = 3").value_or(0);
        form.rows = table_.required_number("rows", 1, 100, "rows = 10").value_or(0);
        form.label_width = required("label_width", 5, kGreatestPage);
        form.label_height = required("label_height", 5, kGreatestPage);
        form.left = length("left", 0, kGreatestPage).value_or(0);
        form.top = length("top", 0, kGreatestPage).value_or(0);
        form.pitch_x = length("pitch_x", 0, kGreatestPage).value_or(form.label_width);
        form.pitch_y = length("pitch_y", 0, kGreatestPage).value_or(form.label_height);
    }

    Mm required(std::string_view key, Mm least, Mm most) {
        if (!table_.has(key)) {
            table_.complain(key, fmt::format("the form has no {}", key),
                            fmt::format("add it in millimetres: {} = 210", key));
            return 0;
        }
        return length(key, least, most).value_or(0);
    }

    // Millimetres, or a text with a unit: 8.5 in.
    std::optional<Mm> length(std::string_view key, Mm least, Mm most) {
        auto const* entry = table_.entry(key);
        if (!entry) return std::nullopt;
        std::optional<Mm> mm;
        if (auto const* whole = std::get_if<std::int64_t>(&entry->value.is))
            mm = static_cast<Mm>(*whole);
        else if (auto const* part = std::get_if<double>(&entry->value.is))
            mm = *part;
        else if (std::holds_alternative<std::string>(entry->value.is)) {
            auto const said = table_.length(key);
            if (!said) return std::nullopt; // it has complained
            mm = millimetres(*said);
        }
        if (!mm || !std::isfinite(*mm)) {
            table_.complain(
                key, fmt::format("{} must be a length", key),
                fmt::format("write millimetres, or a text with a unit: {} = 210, {} = \"8.5 in\"", key, key));
            return std::nullopt;
        }
        if (*mm < least || *mm > most) {
            table_.complain(key, fmt::format("{} is {} mm", key, *mm), fmt::format("from {} to {} mm", least, most));
            return std::nullopt;
        }
        return mm;
    }

    // The grid must lie on the page, label beside label.
    void check(Form const& f) {
        if (!table_.complaints().empty()) return;
        constexpr Mm slack = 0.05; // sizes are often rounded inches
        if (f.margin * 2 > std::min(f.width, f.height) - 40)
            table_.complain("margin", fmt::format("a margin of {} mm leaves too little of the page", f.margin),
                            "make it smaller");
        if (f.sheet != "labels") return;
        auto const over = [&](std::string_view key, Mm pitch, Mm label, int n) {
            if (n > 1 && pitch + slack < label)
                table_.complain(key, fmt::format("labels {} mm apart overlap: each takes {} mm", pitch, label),
                                "measure from one label's edge to the same edge of the next");
        };
        over("pitch_x", f.pitch_x, f.label_width, f.columns);
        over("pitch_y", f.pitch_y, f.label_height, f.rows);
        auto const off = [&](std::string_view key, Mm start, Mm pitch, Mm label, int n, Mm page) {
            Mm const end = start + pitch * (n - 1) + label;
            if (end > page + slack)
                table_.complain(
                    key, fmt::format("the last label ends at {:.2f} mm, past the page's edge at {} mm", end, page),
                    "measure the sheet again: first edge, pitch, label and count must add up");
        };
        off("columns", f.left, f.pitch_x, f.label_width, f.columns, f.width);
        off("rows", f.top, f.pitch_y, f.label_height, f.rows, f.height);
    }

    TableReader table_;
};

} // namespace

ReadForm read_form(std::string_view bytes, std::string_view name) {
    SourceText const source(bytes);
    Complaints complaints(source);
    ReadForm result;
    if (auto const root = parse_toml(bytes, complaints)) {
        auto form = FormReader(*root, complaints).read(name);
        if (complaints.empty()) result.form = std::move(form);
    }
    result.problems = complaints.in_file_order();
    return result;
}

} // namespace legwork
