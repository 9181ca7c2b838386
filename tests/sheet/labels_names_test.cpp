// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Names as people type them: long, accented, in other scripts. Labels and cards stay whole.
#include "draw/draw.h"
#include "labels_fixture.h"
#include "sheet/labels.h"
#include "sheet/tape_notes.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <set>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

constexpr auto kNames60 = {
    "Éclairage extérieur côté jardin, près de l'entrée du garage n°",
    "Pumps & valves <west> \"upper\" field, the second one past gate",
    "Outlets behind the workbench מקלחת and by the north window too",
    "Freezer 🧊 in the cold room beside the apple sorting line, left",
    "WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
    "a",
    "",
};

Ask with_name(std::string const& name) {
    auto a = ask("CE 2024");
    a.job.name = name.empty() ? "Job" : name;
    for (auto& c : a.job.circuits) {
        c.name = c.room = name;
        c.box = name;
    }
    a.job.cables.front().name = a.job.cables.front().from = name;
    for (auto& c : a.job.circuits)
        if (c.mark == "K1")
            c.mark = "ABCDEFGH"; // the longest marks there are
        else if (c.mark == "K2")
            c.mark = "QQQQQQQQ";
    a.plan = filed(a.job);
    return a;
}

bool inside(Text const& t, TextWidth const& widths, Form const& form) {
    auto const e = extent(t, widths);
    return e.left >= form.margin - 1e-6 && e.right <= form.width - form.margin + 1e-6 && e.top >= form.margin - 1e-6 &&
           e.bottom <= form.height - form.margin + 1e-6;
}

// Which column of labels a text begins in and which it ends in must be the same.
bool one_label(Text const& t, TextWidth const& widths, Form const& f) {
    auto const e = extent(t, widths);
    bool const in_margin = e.bottom <= f.top || e.top >= f.top + (f.rows - 1) * f.pitch_y + f.label_height;
    if (in_margin) return true;
    int const column = static_cast<int>(((e.left + e.right) / 2 - f.left) / f.pitch_x);
    Mm const left = f.left + column * f.pitch_x;
    return e.left >= left + 1.5 - 1e-6 && e.right <= left + f.label_width - 1.5 + 1e-6;
}

} // namespace

TEST_CASE("labels, tape notes: long and odd names stay inside and off each other", "[sheet][labels][tape]") {
    Fonts const fonts(in_sources("fonts"));
    auto const name = GENERATE(from_range(std::vector<std::string>(kNames60.begin(), kNames60.end())));
    CAPTURE(name);
    auto const a = with_name(name);
    for (auto const& form : {labels_letter(), labels_edge_to_edge()})
        for (auto const& sheet : compose_labels(a.input(fonts), form))
            for (auto const& page : sheet.pages) {
                for (auto const& t : texts(page)) {
                    CAPTURE(t.words);
                    CHECK(inside(t, fonts, form));
                    CHECK(one_label(t, fonts, form));
                }
                CHECK(overlapping(page, fonts) == "");
            }
    for (auto const& sheet : compose_tape_notes(a.input(fonts), tape_letter()))
        for (auto const& page : sheet.pages) {
            for (auto const& t : texts(page)) {
                CAPTURE(t.words);
                CHECK(inside(t, fonts, tape_letter()));
            }
            CHECK(overlapping(page, fonts) == "");
        }
}

TEST_CASE("labels: a mark stands whole on each of its labels, as large as its row lets it", "[sheet][labels]") {
    Fonts const fonts(in_sources("fonts"));
    auto const sheets = compose_labels(with_name("Bench").input(fonts), labels_letter());
    std::set<Mm> sizes;
    int copies = 0;
    for (auto const& page : sheets.front().pages)
        for (auto const& t : texts(page))
            if (t.words == "ABCDEFGH+QQQQQQQQ") ++copies, sizes.insert(t.x_height);
    CHECK(copies == 4); // once on each of its labels: seventeen wide letters take the whole length
    CHECK(*sizes.begin() >= 2.0);
}

TEST_CASE("labels: both circuits of a pair are named on each of its labels", "[sheet][labels]") {
    Fonts const fonts(in_sources("fonts"));
    auto a = ask("NEC 2023");
    a.job.circuits[0].box = "Junction box behind the pantry door";
    a.job.circuits[1].breaker = Amps{15'000};
    int first = 0, second = 0;
    auto const sheets = compose_labels(a.input(fonts), labels_letter());
    for (auto const& page : sheets.front().pages)
        for (auto const& t : texts(page)) {
            first += t.words.starts_with("K1  Bench, left");
            second += t.words.starts_with("K2  Bench, right");
        }
    CHECK(first == 4);
    CHECK(second == 4);
}

TEST_CASE("labels: on stock too low for all, the mark is what stays", "[sheet][labels]") {
    Fonts const fonts(in_sources("fonts"));
    Form low = labels_letter();
    low.label_height = low.pitch_y = 10;
    low.rows = 24;
    auto const a = ask("CE 2024");
    auto const sheets = compose_labels(a.input(fonts), low);
    for (auto const& page : sheets.front().pages) {
        CHECK(overlapping(page, fonts) == "");
        for (auto const& t : texts(page)) CHECK(one_label(t, fonts, low));
    }
}
