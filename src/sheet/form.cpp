// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/form.h"

#include "sheet/form_keys.h"
#include "toml/table_reader.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace legwork {

namespace {

class FormReader {
public:
    FormReader(TomlTable const& root, Complaints& out) : table_(root, 0, kFormTable, out) {}

    Form read(std::string_view name) {
        Form form;
        form.name = name;
        form.sheet = sheet();
        form.title = table_.required_text("title");
        form.width = required("width");
        form.height = required("height");
        form.margin = table_.millimetres("margin").value_or(form.margin);
        if (form.sheet == "labels") read_labels(form);
        table_.finish();
        check(form);
        return form;
    }

private:
    std::string sheet() {
        auto const said = table_.required_text("sheet");
        return said.empty() ? said : table_.word("sheet");
    }

    void read_labels(Form& form) {
        form.columns = table_.required_number("columns").value_or(0);
        form.rows = table_.required_number("rows").value_or(0);
        form.label_width = required("label_width");
        form.label_height = required("label_height");
        form.left = table_.millimetres("left").value_or(0);
        form.top = table_.millimetres("top").value_or(0);
        form.pitch_x = table_.millimetres("pitch_x").value_or(form.label_width);
        form.pitch_y = table_.millimetres("pitch_y").value_or(form.label_height);
    }

    Mm required(std::string_view key) {
        if (!table_.has(key)) table_.complain_missing(key);
        return table_.millimetres(key).value_or(0);
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
