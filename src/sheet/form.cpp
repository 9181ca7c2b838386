// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/form.h"

#include "sheet/cells.h"
#include "sheet/form_keys.h"
#include "toml/table_reader.h"
#include "units/text.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>

namespace legwork {

namespace {

constexpr Mm kLeastFace = 5; // a mark of three letters

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
        form.label_width = required("label_width");
        form.label_height = required("label_height");
        form.left = table_.millimetres("left").value_or(0);
        form.top = table_.millimetres("top").value_or(0);
        form.pitch_x = table_.millimetres("pitch_x").value_or(form.label_width);
        form.pitch_y = table_.millimetres("pitch_y").value_or(form.label_height);
        form.rows = rows(form);
        form.turn = table_.number("turn").value_or(0);
        form.fold = table_.millimetres("fold");
        form.tail = table_.millimetres("tail").value_or(0);
        form.inset = table_.millimetres("inset").value_or(form.inset);
        form.skip = table_.numbers("skip");
    }

    int rows(Form const& form) {
        if (!form.is_roll() || table_.has("rows")) return table_.required_number("rows").value_or(0);
        if (form.pitch_y <= 0) return 1; // a mistake told elsewhere
        Mm const longest = kGreatestPage - 2 * form.top - form.label_height;
        return longest < 0 ? 1 : 1 + static_cast<int>(longest / form.pitch_y);
    }

    Mm required(std::string_view key) {
        if (!table_.has(key)) table_.complain_missing(key);
        return table_.millimetres(key).value_or(0);
    }

    // The grid must lie on the page, label beside label.
    void check(Form const& f) {
        if (!table_.complaints().empty()) return;
        constexpr Mm slack = 0.05; // sizes are often rounded inches
        if (f.sheet != "labels") return check_page(f);
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
        off("rows", f.top, f.pitch_y, f.label_height, f.rows, f.is_roll() ? kGreatestPage : f.height);
        check_labels(f);
    }

    void check_page(Form const& f) {
        for (auto const& [key, mm] : {std::pair("width", f.width), std::pair("height", f.height)})
            if (mm < kLeastPage)
                table_.complain(key, fmt::format("{} is {} mm", key, mm),
                                fmt::format("{} to {} mm: only labels are narrower, and stand on a roll without "
                                            "height",
                                            kLeastPage, kGreatestPage));
        if (f.margin * 2 > std::min(f.width, f.height) - 40)
            table_.complain("margin", fmt::format("a margin of {} mm leaves too little of the page", f.margin),
                            "make it smaller");
    }

    void check_labels(Form const& f) {
        if (f.turn % 90 != 0)
            return table_.complain("turn", fmt::format("turn is {} degrees", f.turn), "write one of: 0, 90, 180, 270");
        Mm const across = f.turn % 180 == 0 ? f.label_width : f.label_height;
        if (f.fold && *f.fold >= across)
            return table_.complain(
                "fold", fmt::format("the fold at {} mm is past the label's end", *f.fold),
                fmt::format("measure it from the left edge as the label is read, {} mm wide", across));
        auto const all = cells(f);
        if (all.empty()) return table_.complain("skip", "every label of a page is skipped", "leave one at least");
        for (int const n : f.skip)
            if (n > f.columns * f.rows)
                table_.complain("skip", fmt::format("there is no label {}", n),
                                fmt::format("a page has {}", f.columns * f.rows));
        Rect const face = all.front().faces.front();
        if (face.width < kLeastFace || face.height < block_height(1, kFloor))
            table_.complain("label_height",
                            fmt::format("{:.1f} x {:.1f} mm of a label are left for words", face.width, face.height),
                            fmt::format("margin, inset, fold and tail must leave {} x {:.1f} mm", kLeastFace,
                                        block_height(1, kFloor)));
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
