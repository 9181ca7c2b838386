// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The forms that are shipped, and any other stock that a person may measure.
#include "draw/draw.h"
#include "labels_fixture.h"
#include "sheet/labels.h"
#include "sheet/load.h"
#include "sheet/tape_notes.h"
#include "source_folder.h"

#include "catch.h"
#include <rapidcheck.h>

#include <fstream>
#include <iterator>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

Form shipped(std::string const& name) {
    std::ifstream in(in_sources("templates/" + name + ".toml"), std::ios::binary);
    std::string const bytes{std::istreambuf_iterator<char>(in), {}};
    auto const read = read_form(bytes, name);
    for (auto const& p : read.problems) FAIL_CHECK(name << ":" << p.place.line << ": " << p.message);
    REQUIRE(read.form);
    return *read.form;
}

} // namespace

TEST_CASE("labels, tape notes, load: the shipped forms are the paper they say", "[sheet][labels][tape]") {
    // Source: ISO 216 (A4 is 210 x 297 mm), ANSI/ASME Y14.1 (letter is 8.5 x 11 in); printers leave about 4 to 6 mm
    // (common practice, no source).
    auto const [name, width, height] = GENERATE(table<std::string, Mm, Mm>({{"labels-letter", 215.9, 279.4},
                                                                            {"labels-a4", 210, 297},
                                                                            {"labels-a4-70x36", 210, 297},
                                                                            {"tape-notes-letter", 215.9, 279.4},
                                                                            {"tape-notes-a4", 210, 297},
                                                                            {"load-letter", 215.9, 279.4},
                                                                            {"load-a4", 210, 297}}));
    CAPTURE(name);
    auto const form = shipped(name);
    CHECK(form.width == Approx(width));
    CHECK(form.height == Approx(height));
    CHECK(form.margin >= 4.5);
    Fonts const fonts(in_sources("fonts"));
    auto const a = ask("NEC 2023");
    if (form.sheet == "tape-notes") {
        CHECK(compose_tape_notes(a.input(fonts), form).size() == 1);
        return;
    }
    if (form.sheet == "load") {
        CHECK(compose_load(a.input(fonts), form).size() == 2);
        return;
    }
    auto const sheets = compose_labels(a.input(fonts), form);
    REQUIRE(sheets.size() == 1);
    for (auto const& page : sheets.front().pages) {
        CHECK(too_near(page, form, fonts) == "");
        CHECK(overlapping(page, fonts) == "");
    }
    // The labels lie in the middle of the page: what is left of the first is right of the last.
    Mm const right = form.width - form.left - (form.columns - 1) * form.pitch_x - form.label_width;
    Mm const below = form.height - form.top - (form.rows - 1) * form.pitch_y - form.label_height;
    CHECK(right == Approx(form.left).margin(0.1));
    CHECK(below == Approx(form.top).margin(0.1));
}

TEST_CASE("labels: on any stock the text stays in its label and off other text", "[sheet][labels]") {
    EvenWidths const widths;
    auto const a = ask("NEC 2023");
    auto const mm = [](int least, int most) { return 0.1 * *rc::gen::inRange(least * 10, most * 10); };
    CHECK(rc::check("any stock", [&] {
        Form f = labels_letter();
        f.margin = mm(0, 12);
        f.label_width = mm(20, 180);
        f.label_height = mm(8, 130);
        f.pitch_x = f.label_width + mm(0, 5);
        f.pitch_y = f.label_height + mm(0, 5);
        f.columns = std::max(1, static_cast<int>(f.width / f.pitch_x));
        f.rows = std::max(1, static_cast<int>(f.height / f.pitch_y));
        f.left = std::max(0.0, (f.width - (f.columns - 1) * f.pitch_x - f.label_width) / 2);
        f.top = std::max(0.0, (f.height - (f.rows - 1) * f.pitch_y - f.label_height) / 2);
        for (auto const& sheet : compose_labels(a.input(widths), f))
            for (auto const& page : sheet.pages) {
                RC_ASSERT(too_near(page, f, widths) == "");
                RC_ASSERT(overlapping(page, widths) == "");
            }
    }));
}

TEST_CASE("tape notes: any page size holds them without two texts in one place", "[sheet][tape]") {
    EvenWidths const widths;
    auto const a = ask("CE 2024");
    CHECK(rc::check("any page", [&] {
        Form f = tape_letter();
        f.margin = *rc::gen::inRange(0, 20);
        f.width = *rc::gen::inRange(130, 600);
        f.height = *rc::gen::inRange(250, 600);
        for (auto const& sheet : compose_tape_notes(a.input(widths), f))
            for (auto const& page : sheet.pages) RC_ASSERT(overlapping(page, widths) == "");
    }));
    Form tiny = tape_letter(); // the smallest page a form may have: nothing sensible, but no crash and no hang
    tiny.width = tiny.height = 50;
    tiny.margin = 5;
    CHECK(compose_tape_notes(a.input(widths), tiny).size() == 1);
}
