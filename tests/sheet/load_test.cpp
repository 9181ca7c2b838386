// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The sheet of the load calculation: what stands on it, and that a person can add it up.
#include "building/resolve.h"
#include "directory_fixture.h"
#include "draw/draw.h"
#include "draw/reader.h"
#include "in_english.h"
#include "labels_golden.h"
#include "load_fixture.h"
#include "sheet/common_text.h"
#include "sheet/load_words.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <numeric>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

EvenWidths const kEven;

constexpr auto kUnknown = R"(
[job]
name = "House at the weir"
code = "NEC 2023"
revision = "A"
[dwelling]
[[panel]]
name = "Main"
spaces = 24
supply = "120/240"
main = "100 A"
[[circuit]]
mark = "RG"
name = "Range"
use = "range"
poles = 2
load = "9 kW"
[[circuit]]
mark = "WH"
name = "Water heater"
use = "water heater"
poles = 2
[[circuit]]
mark = "DW"
name = "Dishwasher"
use = "dishwasher"
load = "1200 W"
)";

// A house and what stands below it: a workshop, a panel with nothing on it, one on DC.
constexpr auto kThreePanels = R"(
[job]
name = "Farm"
code = "CE 2024"
[dwelling]
area = "110 m²"
[[panel]]
name = "House"
spaces = 24
supply = "120/240"
main = "100 A"
[[panel]]
name = "Workshop"
spaces = 12
feeder = "House/SH"
[[panel]]
name = "Attic"
spaces = 8
feeder = "House/AT"
[[panel]]
name = "Van"
spaces = 4
supply = "12 V DC"
[[circuit]]
panel = "House"
mark = "SH"
name = "Workshop"
use = "feeder"
poles = 2
breaker = "40 A"
[[circuit]]
panel = "House"
mark = "AT"
name = "Attic"
use = "feeder"
poles = 2
breaker = "30 A"
[[circuit]]
panel = "Workshop"
mark = "SA"
name = "Table saw"
use = "appliance"
load = "1800 VA"
[[circuit]]
panel = "Van"
mark = "VL"
name = "Lights in the van"
use = "lighting"
load = "40 W"
)";

// Long names, accents, every second one of 240 V, all fed from one panel.
std::string long_job(std::string const& code, bool dwelling) {
    std::string job = "[job]\nname = \"Résidence de l'Étang-aux-Hérons\"\ncode = \"" + code + "\"\n";
    if (dwelling) job += "[dwelling]\narea = \"410 m²\"\n";
    job +=
        "[[panel]]\nname = \"Tableau général, rez-de-chaussée\"\nspaces = 84\nsupply = \"120/240\"\nmain = \"400 A\"\n";
    for (int i = 1; i <= 60; ++i)
        job += fmt::format(
            "[[circuit]]\nmark = \"C{}\"\nname = \"Chauffe-eau à accumulation de l'aile nord-est, derrière la "
            "buanderie, numéro {}\"\nuse = \"{}\"\npoles = {}\nload = \"{} VA\"\n",
            i, i,
            i % 3 == 0   ? "water heater"
            : i % 3 == 1 ? "appliance"
                         : "well pump",
            i % 3 == 0 ? 2 : 1, 1501 + i);
    return job;
}

std::string printed(std::vector<Sheet> const& sheets) { // lines of a wrapped text run together
    auto words = all_words(sheets);
    std::ranges::replace(words, '\n', ' ');
    return words;
}

// Wherever lines end.
std::string squeezed(std::string words) {
    std::erase_if(words, [](char c) { return c == ' ' || c == '\n'; });
    return words;
}

} // namespace

TEST_CASE("load: pages as they were looked at", "[sheet][load][golden]") {
    CHECK(matches_golden("load-dwelling-nec.txt", dumped(load_sheets(read_file("tests/cases/load/d1a.toml"), kEven))));
    CHECK(matches_golden("load-dwelling-ce.txt",
                         dumped(load_sheets(read_file("tests/cases/load/v3.toml"), kEven, load_a4()))));
    CHECK(matches_golden("load-unknown.txt", dumped(load_sheets(read_text(kUnknown), kEven))));
}

TEST_CASE("load: of each panel on AC that carries something", "[sheet][load]") {
    auto const sheets = load_sheets(read_text(kThreePanels), kEven);
    std::vector<std::string> panels;
    for (auto const& s : sheets) panels.push_back(s.panel);
    CHECK(panels == std::vector<std::string>{"House", "Workshop"});
    CHECK_THAT(all_words({sheets[0]}), Contains("House, service\n"));
    CHECK_THAT(all_words({sheets[1]}), Contains("Workshop, feeder\n") &&
                                           Contains("Panel Workshop: feeder from panel House, 240 V between the two "
                                                    "hots; the feeder SH of 40 A."));
}

TEST_CASE("load: what is missing is said at the top, at every total and in the box", "[sheet][load]") {
    auto const words = printed(load_sheets(read_text(kUnknown), kEven));
    for (auto const* said :
         {"Not complete, so do not hand it in: 2 things are missing", "Total, so far ", "Total of the neutral, so far ",
          "11880 VA so far ", "Whether it is within the main of 100 A is not known until then.",
          "The floor area of the dwelling ", "The load of Water heater (WH) "})
        CHECK_THAT(words, Contains(said));
    auto const sheets = load_sheets(read_text(kUnknown), kEven);
    // No figure stands where none is known.
    for (Page const& page : sheets.at(0).pages) {
        auto const all = texts(page);
        for (Text const& item : all)
            if (item.words == "Water heater (WH)")
                CHECK(std::ranges::any_of(
                    all, [&](Text const& t) { return t.words == "?" && t.baseline == Approx(item.baseline); }));
    }
    CHECK_THAT(printed(load_sheets(read_file("tests/cases/load/d1a.toml"), kEven)),
               !Contains("so far") && !Contains("Not complete"));
}

TEST_CASE("load: every figure of every job, and the right column adds up to the total", "[sheet][load]") {
    Fonts const fonts(in_sources("fonts"));
    for (auto const& path : job_files()) {
        typed::Job const job = read_file(path);
        Plan const plan = as_filed(resolve(job));
        auto const form = path.size() % 2 == 0 ? load_letter() : load_a4();
        for (auto const& sheet : load_sheets(job, plan, fonts, form)) {
            CAPTURE(path, sheet.panel);
            auto const building = resolve(job);
            auto const load = panel_load(building, plan, *code_book(job.code), *panel_named(building, sheet.panel));
            auto const columns = right_columns(sheet, form);
            bool const neutral = !load.load->neutral.empty();
            REQUIRE(columns.size() == (neutral ? 2 : 1));
            for (auto const& c : columns)
                CHECK(std::accumulate(c.counted.begin(), c.counted.end(), std::int64_t{0}) == c.total);
            CHECK(columns[0].total == load.load->total_va);
            if (neutral) CHECK(columns[1].total == load.load->neutral_va);
            auto const all = all_words({sheet});
            auto const words = squeezed(all);
            for (auto const* steps : {&load.load->steps, &load.load->neutral})
                for (LoadStep const& s : *steps) {
                    CHECK_THAT(words,
                               Contains(squeezed(in_english(s.item))) && Contains(squeezed(in_english(s.arithmetic))));
                    if (s.va > 0) CHECK_THAT(all, Contains("\n" + std::to_string(s.va) + "\n"));
                }
            for (LoadResult const& r : load.results)
                CHECK_THAT(words, Contains(squeezed(in_english(r.item))) &&
                                      Contains(squeezed(in_english(r.arithmetic))) &&
                                      Contains(squeezed(in_english(r.value))));
            for (auto const& note : load.load->notes) CHECK_THAT(words, Contains(squeezed(in_english(note))));
        }
    }
}

TEST_CASE("load: nothing cut, tiny or over another on any job's pages", "[sheet][load]") {
    Fonts const fonts(in_sources("fonts"));
    for (auto const& path : job_files()) {
        typed::Job const job = read_file(path);
        for (Form const& form : {load_letter(), load_a4()})
            for (auto const& sheet : load_sheets(job, fonts, form))
                for (Page const& page : sheet.pages) {
                    CAPTURE(path, sheet.panel, form.name);
                    CHECK(overlapping(page, fonts) == "");
                    CHECK(outside(page, form, fonts) == "");
                    for (Text const& t : texts(page)) {
                        CHECK(t.x_height >= kFloor);
                        CHECK(t.ink.red <= kLighter.red);
                        if (t.baseline < page.height - 40) CHECK_THAT(t.words, !Contains("…"));
                    }
                }
    }
}

TEST_CASE("load: sixty circuits with long names go over pages without a line lost or parted", "[sheet][load]") {
    Fonts const fonts(in_sources("fonts"));
    auto const job = read_text(long_job(GENERATE("NEC 2020", "CE 2021"), GENERATE(true, false)));
    Plan const plan = as_filed(resolve(job));
    CAPTURE(job.code, job.dwelling.has_value());
    for (Form const& form : {load_letter(), load_a4()}) {
        auto const sheets = load_sheets(job, plan, fonts, form);
        REQUIRE(sheets.size() == 1);
        auto const building = resolve(job);
        auto const load = panel_load(building, plan, *code_book(job.code), building.panels[0]);
        REQUIRE(load.load);
        auto const words = squeezed(all_words(sheets));
        std::size_t heads = 0;
        for (Page const& page : sheets[0].pages) {
            CHECK(overlapping(page, fonts) == "");
            CHECK(outside(page, form, fonts) == "");
            heads += static_cast<std::size_t>(
                std::ranges::count_if(texts(page), [](Text const& t) { return t.words == "arithmetic"; }));
        }
        bool const by_name =
            std::ranges::count_if(load.load->steps, [](LoadStep const& s) { return !s.circuits.empty(); }) >= 20;
        if (by_name) CHECK(sheets[0].pages.size() >= 3);
        if (by_name) CHECK(heads >= 2);
        for (LoadStep const& s : load.load->steps) {
            auto const step = in_english(s.item);
            CAPTURE(step);
            CHECK_THAT(words, Contains(squeezed(step)));
            // The figure stands on the line on which its item begins.
            bool together = false;
            for (Page const& page : sheets[0].pages) {
                auto const all = texts(page);
                for (Text const& item : all)
                    together = together || (!item.words.empty() && step.starts_with(item.words) &&
                                            std::ranges::any_of(all, [&](Text const& t) {
                                                return t.words == std::to_string(s.va) && t.align == Align::right &&
                                                       std::abs(t.baseline - item.baseline) < 0.01;
                                            }));
            }
            CHECK(together);
        }
        for (auto const& c : right_columns(sheets[0], form))
            CHECK(std::accumulate(c.counted.begin(), c.counted.end(), std::int64_t{0}) == c.total);
    }
}

TEST_CASE("load: a word without a place to part it goes on in the next line", "[sheet][load]") {
    std::string const word = "Donaudampfschifffahrtsgesellschaftskapitänsmützenständerlampenschirm";
    auto const lines = wrapped_whole(kEven, "The " + word + " here", Weight::regular, kDetail, 40);
    std::string joined;
    for (auto const& line : lines) {
        CHECK(kEven.width(line, kDetail, Weight::regular) <= 40);
        joined += line;
    }
    std::erase(joined, ' ');
    CHECK(joined == "The" + word + "here");
    CHECK(wrapped_whole(kEven, word, Weight::regular, kDetail, 0.1).size() == 68); // a letter a line, and no hang
    CHECK(wrapped_whole(kEven, "", Weight::regular, kDetail, 40) == std::vector<std::string>{""});
}

TEST_CASE("load: arithmetic is parted between reckonings, no figure from its sign or unit", "[sheet][load]") {
    auto const lines = [](std::string_view words, Mm width) {
        return arithmetic_lines(kEven, words, Weight::regular, kDetail, width);
    };
    using Lines = std::vector<std::string>;
    CHECK(lines("26500 − 10000 = 16500 VA, 16500 VA × 40 % = 6600 VA", 55) ==
          Lines{"26500 − 10000 = 16500 VA,", "16500 VA × 40 % = 6600 VA"});
    CHECK(lines("120 m² − 90 m² = 30 m²: 1 × 1000 VA = 1000 VA", 55) ==
          Lines{"120 m² − 90 m² = 30 m²:", "1 × 1000 VA = 1000 VA"});
    CHECK(lines("10000 VA + (14000 − 10000) VA × 75 % = 13000 VA", 55) ==
          Lines{"10000 VA + (14000", "− 10000) VA × 75 %", "= 13000 VA"});
    CHECK(lines("10 + 20 = 30 VA, 30 VA × 50 % = 15 VA", 500).size() == 1);
    CHECK(lines("", 50).empty());
}

TEST_CASE("load: a section from memory has its stars and they are explained", "[sheet][load]") {
    auto const step = [](std::string section, Source source, FromMemory numbers) {
        LoadStep s;
        s.reference = {"NEC 2023", std::move(section), source, numbers};
        return in_english(rule_words(s));
    };
    using enum FromMemory;
    CHECK(step("220.5(A)", Source::seen, none) == "220.5(A)");
    CHECK(step("220.40", Source::seen, the_number) == "220.40*");
    CHECK(step("215.2(A)(1), 230.42(A)", Source::seen, all_numbers) == "215.2(A)(1), 230.42(A)*");
    CHECK(step("28-108", Source::memory, the_number) == "28-108**");
    CHECK(step("8-104, 28-108", Source::seen, second_number) == "8-104, 28-108 (second section number from memory)");
    CHECK(step("", Source::practice, none) == "common practice");
    CHECK(step("", Source::unread, none) == "(not read yet)");
    CHECK(rule_words(LoadResult{}).empty());
    auto bakery = read_file("tests/sound/bakery-kitchen.toml");
    bakery.code = "CE 2018"; // of which little was seen
    auto const words = printed(load_sheets(bakery, kEven));
    CHECK_THAT(words, Contains("8-106(1)* ") && Contains("8-104(3)** ") &&
                          Contains("* The number of this section is from memory.") && Contains("** What this section"));
    CHECK_THAT(printed(load_sheets(read_file("tests/cases/load/d1a.toml"), kEven)), !Contains("from memory"));
}

TEST_CASE("load: the leg that carries more can be added up, and unsaved spaces are told", "[sheet][load]") {
    typed::Job job = read_file("tests/sound/church-hall.toml");
    auto const words = [&] { return printed(load_sheets(job, kEven)); };
    auto const building = resolve(job);
    auto const load = panel_load(building, as_filed(building), *code_book(job.code), building.panels[0]);
    REQUIRE(load.size.lines);
    CHECK_THAT(words(), Contains("Leg A alone: ") && Contains(fmt::format("= {} VA", load.size.lines->a_va)) &&
                            Contains(fmt::format("= {} VA", load.size.lines->b_va)) && !Contains("PROPOSED"));
    for (typed::Circuit& c : job.circuits)
        if (c.poles == 1) {
            c.space.reset();
            break;
        }
    CHECK_THAT(words(), Contains("PROPOSED: spaces not saved"));
    // One demand on everything: no leg is asked for, so no space matters.
    job = read_file("tests/cases/load/d1b.toml");
    CHECK_THAT(words(), !Contains("PROPOSED") && !Contains("Leg A alone"));
}

TEST_CASE("load: head, bands and foot of every sheet", "[sheet][load]") {
    typed::Job const job = read_file("examples/bungalow.toml");
    Findings findings(1);
    auto const words = all_words(load_sheets(job, as_filed(resolve(job)), kEven, load_letter(), findings));
    for (auto const* needed : {"Load calculation\n", "14 Larkspur Lane\n", "page 1 of", "checked against NEC 2020",
                               "DRAFT: 1 error\n", "Reprint: legwork print house.toml", "A planning aid"})
        CHECK_THAT(words, Contains(needed));
}

TEST_CASE("load: any page holds it without two texts in one place", "[sheet][load]") {
    Fonts const fonts(in_sources("fonts"));
    typed::Job const job = read_file("tests/sound/church-hall.toml");
    for (Mm const width : {75.0, 90.0, 105.0, 125.0, 148.0, 210.0, 420.0}) {
        Form form = load_a4();
        form.width = width;
        for (auto const& sheet : load_sheets(job, fonts, form))
            for (Page const& page : sheet.pages) {
                CAPTURE(width);
                CHECK(overlapping(page, fonts) == "");
                CHECK(outside(page, form, fonts) == "");
            }
    }
    Form tiny = load_a4(); // the smallest page a form may have: nothing sensible, but no crash and no hang
    tiny.width = tiny.height = 50;
    tiny.margin = 5;
    CHECK(load_sheets(job, fonts, tiny).size() == 1);
}

TEST_CASE("load: the same job gives the same bytes, and they can be read back", "[sheet][load]") {
    Fonts const fonts(in_sources("fonts"));
    typed::Job const job = read_file("tests/cases/load/d2c.toml");
    auto const bytes = [&] {
        auto const sheets = load_sheets(job, fonts);
        return draw_pdf(sheets.at(0).pages, {sheets[0].title, "2026-05-02"}, fonts);
    };
    auto const pdf = bytes();
    CHECK(pdf == bytes());
    auto const words = draw_test::ask("pdftotext -layout FILE -", pdf, "load.pdf").out;
    // Source: NEC 2017 Annex D, example D2(c), as the case's own file tells it.
    for (auto const* said : {"6000 + 3000 + 1500 = 10500 VA", "23200 VA × 40 % = 9280 VA", "34790"})
        CHECK_THAT(words, Contains(said));
}
