// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Job files for the sheet of the load calculation, and what its tests read off the pages.
#pragma once

#include "balance/balance.h"
#include "building/resolve.h"
#include "codebook/stock/cables.h"
#include "codebook/stock/receptacles.h"
#include "codebook/stock/uses.h"
#include "job/read.h"
#include "labels_fixture.h"
#include "reckon/service.h"
#include "sheet/load.h"
#include "source_folder.h"

#include "catch.h"
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace legwork::sheet_test {

inline typed::Job read_text(std::string const& bytes) {
    auto const guess = [](typed::Circuit const& c) { return guess_use(c.name, c.room, c.poles, c.outlets); };
    auto read = read_job(bytes, {editions(), use_names(), named_cable_kinds(), receptacle_names(), guess});
    std::string problems;
    for (Problem const& p : read.problems) problems += fmt::format("{}: {}\n", p.place.line, p.message);
    INFO(problems);
    REQUIRE(read.job);
    return std::move(*read.job);
}
inline typed::Job read_file(std::string const& path) { // from the top of the project
    std::ifstream file(in_sources(path), std::ios::binary);
    return read_text({std::istreambuf_iterator<char>(file), {}});
}
// Job files of these folders that can be read.
inline std::vector<std::string> job_files() {
    std::vector<std::string> files;
    for (auto const* folder : {"tests/cases/load", "tests/sound", "examples"})
        for (auto const& at : std::filesystem::directory_iterator(in_sources(folder)))
            if (at.path().extension() == ".toml" && at.path().stem() != "unreadable")
                files.push_back(std::string(folder) + "/" + at.path().filename().string());
    return files;
}

inline Form load_letter() { return {"load-letter", "load", "US letter", 215.9, 279.4}; }
inline Form load_a4() { return {"load-a4", "load", "A4", 210, 297}; }

inline std::vector<Sheet> load_sheets(typed::Job const& job, Plan const& plan, TextWidth const& widths,
                                      Form const& form = load_letter(), Findings const& findings = {}) {
    return compose_load({resolve(job), plan, findings, *code_book(job.code), widths, "house.toml"}, form);
}
inline std::vector<Sheet> load_sheets(typed::Job const& job, TextWidth const& widths,
                                      Form const& form = load_letter()) {
    return load_sheets(job, as_filed(resolve(job)), widths, form);
}

inline bool is_figure(std::string_view words) {
    return !words.empty() && words.find_first_not_of("0123456789") == words.npos;
}

// The figures of the right column as they stand there, page after page: those that count, then their total.
struct Column {
    std::vector<std::int64_t> counted;
    std::int64_t total = 0;
};
inline std::vector<Column> right_columns(Sheet const& sheet, Form const& form) {
    std::vector<Column> all(1);
    for (Page const& page : sheet.pages)
        for (Text const& t : texts(page)) {
            bool const at_right = t.align == Align::right && t.x > form.width - form.margin - 0.01;
            if (!at_right || t.weight != Weight::bold || !is_figure(t.words)) continue;
            if (t.x_height < 2.2) {
                all.back().counted.push_back(std::stoll(t.words));
            } else {
                all.back().total = std::stoll(t.words);
                all.emplace_back();
            }
        }
    all.pop_back();
    return all;
}

} // namespace legwork::sheet_test
