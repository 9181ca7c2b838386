// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "sheet/form.h"
#include "sheet/sheets.h"
#include "source_folder.h"

#include "catch.h"
#include <fmt/format.h>

#include <filesystem>
#include <fstream>
#include <iterator>

using namespace legwork;

namespace {
std::string const kPage = "sheet = \"directory\"\ntitle = \"A4\"\nwidth = 210\nheight = 297\n";
std::string const kLabels = "sheet = \"labels\"\ntitle = \"A4\"\nwidth = 210\nheight = 297\ncolumns = 3\nrows = 8\n"
                            "label_width = 63.5\nlabel_height = 33.9\nleft = 7.2\ntop = 12.9\npitch_x = 66\n";

std::string read_text(std::filesystem::path const& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}
std::string complaints(std::string const& bytes) {
    auto const read = read_form(bytes, "own");
    CHECK(read.form.has_value() == read.problems.empty());
    std::string all;
    for (auto const& p : read.problems) all += render(p, "own.toml") + "\n";
    return all;
}
} // namespace

TEST_CASE("form: every form that is shipped reads, and every sheet has its own", "[sheet][form]") {
    int forms = 0;
    for (auto const& entry : std::filesystem::directory_iterator(in_sources("templates"))) {
        auto const name = entry.path().stem().string();
        if (entry.path().extension() != ".toml" || name == "starter") continue;
        CAPTURE(name);
        auto const read = read_form(read_text(entry.path()), name);
        for (auto const& p : read.problems) UNSCOPED_INFO(render(p, name));
        REQUIRE(read.form);
        CHECK(read.form->name == name);
        CHECK(sheet_kind(read.form->sheet));
        CHECK_FALSE(read.form->title.empty());
        ++forms;
    }
    CHECK(forms >= 6); // three sheets, on US letter and on A4
    for (auto const& kind : sheet_kinds())
        CHECK(std::filesystem::exists(in_sources(fmt::format("templates/{}.toml", kind.default_form))));
}

TEST_CASE("form: lengths are millimetres or carry a unit", "[sheet][form]") {
    // Source: 1 in = 25.4 mm exactly (international yard and pound agreement of 1959); from memory.
    auto const read = read_form(
        "sheet = \"directory\"\ntitle = \"t\"\nwidth = \"8.5 in\"\nheight = \"279.4 mm\"\nmargin = 12.5\n", "own");
    REQUIRE(read.form);
    CHECK(read.form->width == Approx(215.9));
    CHECK(read.form->height == Approx(279.4));
    CHECK(read.form->margin == Approx(12.5));
}

TEST_CASE("form: a label form", "[sheet][form]") {
    auto const read = read_form(kLabels, "own");
    REQUIRE(read.form);
    CHECK(read.form->columns == 3);
    CHECK(read.form->rows == 8);
    CHECK(read.form->pitch_x == Approx(66));
    CHECK(read.form->pitch_y == Approx(33.9)); // not said: label beside label
}

TEST_CASE("form: mistakes with their line and the way out", "[sheet][form]") {
    auto const [form, line, words] = GENERATE(table<std::string, std::string, std::string>({
        {"sheet = \"directroy\"\ntitle = \"t\"\nwidth = 210\nheight = 297\n", "own.toml:1:", "directory"},
        {"title = \"t\"\nwidth = 210\nheight = 297\n", "own.toml:1:", "sheet"},
        {kPage + "widht = 3\n", "own.toml:5:", "width"},
        {"sheet = \"directory\"\ntitle = \"t\"\nwidth = 210\n", "own.toml:1:", "height"},
        {"sheet = \"directory\"\ntitle = \"t\"\nwidth = 9000\nheight = 297\n", "own.toml:3:", "9000 mm"},
        {"sheet = \"directory\"\ntitle = \"t\"\nwidth = nan\nheight = 297\n", "own.toml:3:", "length"},
        {"sheet = \"directory\"\ntitle = \"t\"\nwidth = true\nheight = 297\n", "own.toml:3:", "length"},
        {"sheet = \"directory\"\ntitle = \"t\"\nwidth = \"210\"\nheight = 297\n", "own.toml:3:", "unit"},
        {kPage + "margin = 90\n", "own.toml:5:", "50 mm"},
        {kPage + "columns = 3\n", "own.toml:5:", "columns"},
        {kLabels + "pitch_y = 20\n", "own.toml:12:", "overlap"},
        {kLabels + "pitch_y = 40\n", "own.toml:6:", "past the page's edge"},
        {"sheet = \"labels\"\ntitle = \"t\"\nwidth = 62\nheight = 0\ncolumns = 1\nlabel_width = 60\nlabel_height = 20\n"
         "pitch_y = 1e-7\n",
         "own.toml:8:", "from 5 to"},
        {"sheet = \"labels\"\ntitle = \"t\"\nwidth = 210\nheight = 297\nrows = 0\ncolumns = 2\nlabel_width = "
         "50\nlabel_height = 20\n",
         "own.toml:5:", "rows"},
        {"sheet = [", "own.toml:1:", ""},
        {"", "", "sheet"},
    }));
    CAPTURE(form);
    auto const said = complaints(form);
    CHECK_THAT(said, Contains(line) && Contains(words));
    CHECK_FALSE(said.empty());
}
