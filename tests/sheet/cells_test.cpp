// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where print lands on label stock. Sizes of stock: office suites' label data (66.675 x 25.4 at a pitch of 69.85), and
// for turned and folded labels plane geometry.
#include "draw/fonts.h"
#include "labels_fixture.h"
#include "labels_golden.h"
#include "sheet/cells.h"
#include "sheet/crowded.h"
#include "sheet/labels.h"
#include "source_folder.h"

#include "catch.h"

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

Form shipped(std::string const& name) {
    std::ifstream in(in_sources("templates/" + name + ".toml"), std::ios::binary);
    auto read = read_form(std::string{std::istreambuf_iterator<char>(in), {}}, name);
    for (auto const& p : read.problems) UNSCOPED_INFO(render(p, name));
    REQUIRE(read.form);
    return *read.form;
}
Form tape(int turn) {
    Form f;
    f.sheet = "labels";
    f.width = f.label_width = f.pitch_x = 12;
    f.label_height = f.pitch_y = 60;
    f.margin = 1;
    f.columns = 1;
    f.rows = 19;
    f.turn = turn;
    return f;
}
Mm right(Rect const& r) { return r.x + r.width; }
Mm bottom(Rect const& r) { return r.y + r.height; }

} // namespace

TEST_CASE("cells: a die-cut sheet is read across, each label at its pitch", "[sheet][cells]") {
    auto const all = cells(labels_letter());
    REQUIRE(all.size() == 30);
    for (int i = 0; i < 30; ++i) {
        auto const& die = all[static_cast<std::size_t>(i)].place.on_page;
        CHECK(die.x == Approx(4.7625 + (i % 3) * 69.85));
        CHECK(die.y == Approx(12.7 + (i / 3) * 25.4));
    }
    CHECK(right(all.back().place.on_page) + 4.7625 == Approx(215.9)); // as far from the right edge as from the left
    CHECK(bottom(all.back().place.on_page) + 12.7 == Approx(279.4));
}

TEST_CASE("cells: what is skipped is left out, and nothing else moves", "[sheet][cells]") {
    auto form = labels_letter();
    auto const whole = cells(form);
    form.skip = {1, 7, 30};
    auto const rest = cells(form);
    REQUIRE(rest.size() == 27);
    CHECK(rest[0] == whole[1]);
    CHECK(rest[5] == whole[7]);
    CHECK(rest.back() == whole[28]);
}

TEST_CASE("cells: a turned label has its words along it", "[sheet][cells]") {
    for (int const turn : {90, 270}) {
        auto const face = cells(tape(turn)).front().faces.front();
        CHECK(face.width == Approx(57));
        CHECK(face.height == Approx(9));
    }
    auto const upright = cells(tape(0)).front().faces.front();
    CHECK(upright.width == Approx(9));
    CHECK(upright.height == Approx(57));
}

TEST_CASE("cells: a mark of the reader's lands where the turned label has it", "[sheet][cells]") {
    struct Turn {
        int degrees;
        Mm x, y; // of the reader's upper left corner of a 12 x 60 label at (10, 20)
    };
    auto const [degrees, x, y] = GENERATE(Turn{90, 22, 20}, Turn{180, 22, 80}, Turn{270, 10, 80});
    Turned const place{{10, 20, 12, 60}, degrees};
    auto const corner = std::get<Text>(place.placed(Text{0, 0, 2, "K1"}));
    CHECK(corner.x == Approx(x));
    CHECK(corner.baseline == Approx(y));
    CHECK(corner.turn == degrees);
    // One further along the line as it is read: by the rotation about the page's axes.
    auto const next = std::get<Text>(place.placed(Text{1, 0, 2, "K1"}));
    CHECK(next.x - corner.x == Approx(degrees == 180 ? -1 : 0).margin(1e-9));
    CHECK(next.baseline - corner.baseline == Approx(degrees == 90 ? 1 : degrees == 270 ? -1 : 0).margin(1e-9));
    CHECK(place.read() == Rect{0, 0, degrees == 180 ? 12.0 : 60.0, degrees == 180 ? 60.0 : 12.0});
    Rect const part{11, 30, 3, 5};
    auto const back = place.on_page_of(place.read(part));
    CHECK(back.x == Approx(part.x));
    CHECK(back.y == Approx(part.y));
    CHECK(back.width == Approx(part.width));
    CHECK(back.height == Approx(part.height));
}

TEST_CASE("cells: a flag has two equal faces clear of its fold", "[sheet][cells]") {
    auto form = labels_letter();
    form.fold = 33.3375;
    for (auto const& cell : cells(form)) {
        REQUIRE(cell.faces.size() == 2);
        auto const& [one, two] = std::tie(cell.faces[0], cell.faces[1]);
        Mm const fold = cell.place.on_page.x + 33.3375;
        CHECK(one.width == Approx(two.width));
        CHECK(one.width == Approx(33.3375 - 3));
        CHECK(right(one) <= fold - 1.5 + 1e-9);
        CHECK(two.x >= fold + 1.5 - 1e-9);
    }
}

TEST_CASE("cells: a clear tail carries no print", "[sheet][cells]") {
    auto form = labels_letter();
    form.tail = 12.7;
    for (auto const& cell : cells(form))
        CHECK(bottom(cell.faces.front()) <= bottom(cell.place.on_page) - 12.7 - 1.5 + 1e-9);
}

TEST_CASE("labels: each fold's face, each label of a roll, says what a sheet's label says", "[sheet][cells][labels]") {
    EvenWidths const widths;
    auto const job = ask("CE 2024");
    auto form = tape(90);
    form.height = 0;
    auto const along = compose_labels(job.input(widths), form);
    REQUIRE(along.size() == 1);
    for (auto const& page : along[0].pages) {
        CHECK(overlapping(page, widths) == "");
        CHECK(crowded(page, widths) == "");
        for (auto const& t : texts(page)) CHECK(t.turn == 90);
    }
    form.fold = 30;
    std::size_t one = 0, two = 0;
    auto const flags = compose_labels(job.input(widths), form);
    for (auto const& page : along[0].pages)
        one += static_cast<std::size_t>(std::ranges::count(texts(page), "WH", &Text::words));
    for (auto const& page : flags[0].pages)
        two += static_cast<std::size_t>(std::ranges::count(texts(page), "WH", &Text::words));
    CHECK(one > 0);
    CHECK(two >= 2 * 4); // both faces of tip and keep at both ends
}

TEST_CASE("labels: a roll is as long as what stands on it, and cut between labels", "[sheet][cells][labels]") {
    EvenWidths const widths;
    auto const job = ask("CE 2024");
    auto form = tape(90);
    form.height = 0;
    form.top = 5;
    auto const sheets = compose_labels(job.input(widths), form);
    REQUIRE(sheets.size() == 1);
    auto const& pages = sheets[0].pages;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        CHECK(pages[i].width == 12);
        Mm const labels = (pages[i].height - 10) / 60; // five millimetres at each end
        CHECK(labels == Approx(std::round(labels)));
        if (i + 1 < pages.size()) CHECK(labels == Approx(19));
        auto const cuts = std::ranges::count_if(pages[i].marks, [](Mark const& m) {
            auto const* line = std::get_if<Line>(&m);
            return line && line->dashed && line->y1 == line->y2 && line->x1 == 0;
        });
        CHECK(static_cast<Mm>(cuts) == Approx(labels - 1));
    }
    // A die-cut roll needs no scissors.
    form.pitch_y = 63;
    auto const die_cut = compose_labels(job.input(widths), form);
    for (auto const& page : die_cut[0].pages)
        CHECK(std::ranges::none_of(page.marks, [](Mark const& m) {
            auto const* line = std::get_if<Line>(&m);
            return line && line->dashed && line->x1 == 0;
        }));
}

TEST_CASE("labels: on a roll and on tape, as looked at", "[sheet][cells][labels][golden]") {
    Fonts const fonts(in_sources("fonts"));
    auto const name = GENERATE(as<std::string>{}, "labels-roll-57x32", "labels-tape-12x60");
    auto const job = ask("NEC 2023");
    auto sheets = compose_labels(job.input(fonts), shipped(name));
    REQUIRE(sheets.size() == 1);
    sheets[0].pages.resize(std::min<std::size_t>(sheets[0].pages.size(), name == "labels-roll-57x32" ? 5 : 1));
    CHECK(matches_golden(name + ".txt", dumped(sheets)));
}

TEST_CASE("form: what cannot be printed on is refused with the way out", "[sheet][cells][form]") {
    std::string const roll = "sheet = \"labels\"\ntitle = \"t\"\nwidth = 12\nheight = 0\nmargin = 1\ncolumns = 1\n"
                             "label_width = 12\nlabel_height = 60\n";
    auto const complaint = [](std::string const& bytes) {
        std::string all;
        for (auto const& p : read_form(bytes, "own").problems) all += render(p, "own.toml") + "\n";
        return all;
    };
    CHECK(complaint(roll) == "");
    CHECK(complaint(roll + "turn = 90\nfold = 30\ninset = 1\nskip = [2]\nrows = 5\n") == "");
    CHECK_THAT(complaint(roll + "turn = 45\n"), Contains("own.toml:9:") && Contains("0, 90, 180, 270"));
    CHECK_THAT(complaint(roll + "fold = 12\n"), Contains("own.toml:9:") && Contains("past the label's end"));
    CHECK_THAT(complaint(roll + "turn = 90\ntail = 8\n"), Contains("are left for words"));
    CHECK_THAT(complaint(roll + "inset = 5.5\n"), Contains("are left for words"));
    CHECK_THAT(complaint(roll + "rows = 2\nskip = [3]\n"), Contains("there is no label 3") && Contains("a page has 2"));
    CHECK_THAT(complaint(roll + "rows = 2\nskip = [1, 2]\n"), Contains("leave one at least"));
    CHECK_THAT(complaint("sheet = \"directory\"\ntitle = \"t\"\nwidth = 30\nheight = 0\n"),
               Contains("own.toml:3:") && Contains("own.toml:4:"));
}
