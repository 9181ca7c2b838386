// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which names a directory cuts: told the short way, without a measure, against every line laid out.

#include "balance/balance.h"
#include "building/resolve.h"
#include "directory_fixture.h"
#include "draw/draw.h"
#include "sheet/directory.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <random>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

// The bundled face, and whether anything was asked of it.
class Asked : public TextWidth {
public:
    Mm width(std::string_view words, Mm x_height, Weight weight) const override {
        asked = true;
        return fonts_.width(words, x_height, weight);
    }
    std::vector<std::string> missing(std::string_view words) const override {
        asked = true;
        return fonts_.missing(words);
    }
    mutable bool asked = false;

private:
    Fonts fonts_{in_sources("fonts")};
};

class Dice {
public:
    explicit Dice(unsigned seed) : random_(seed) {}
    std::size_t below(std::size_t n) { return random_() % n; }
    bool one_in(std::size_t n) { return below(n) == 0; }

    // Words of wide and narrow letters, some of them odd; now and then one word that nothing parts.
    std::string name(std::size_t longest, bool plain_words = false) {
        static std::vector<std::string> const plain{"a", "e", "i", "r", "s", "t", "l", "o", "n", "M", "W",
                                                    "@", "é", "0", "-", "/", ",", "I", "m", "w", "Œ", "’"};
        static std::vector<std::string> const odd{"Ω", "電", "\xf0\x9f\x92\xa1", "\xcd\xb8", "ﬁ", "\xcc\x81"};
        std::size_t const blank = !plain_words && one_in(4) ? 1000 : 4 + below(12);
        bool const is_odd = !plain_words && one_in(12);
        std::string words;
        for (std::size_t n = below(longest + 1), i = 0; i < n; ++i)
            words += i % blank == blank - 1 && i + 1 < n ? " "
                     : is_odd && one_in(6)               ? odd[below(odd.size())]
                                                         : plain[below(plain.size())];
        return words;
    }

private:
    std::mt19937 random_;
};

// A plain one is what most people write: few sources, words with blanks between.
typed::Job random_job(Dice& dice, bool plain) {
    typed::Job job;
    job.name = dice.name(60);
    job.code = "CE 2024";
    typed::Panel panel;
    panel.name = "Main";
    panel.spaces = 2 + 2 * static_cast<int>(dice.below(30));
    panel.fed_from = dice.name(!plain && dice.one_in(8) ? 400 : 40, plain);
    if (dice.one_in(3)) panel.hang = Hang::turned_left;
    for (std::size_t n = 1 + (!plain && dice.one_in(3) ? dice.below(12) : 0), i = 0; i < n; ++i) {
        typed::Supply supply;
        supply.name = "Source " + std::to_string(i) + " " + dice.name(!plain && dice.one_in(4) ? 300 : 12, plain);
        job.supplies.push_back(supply);
        panel.supplies.push_back(supply.name);
    }
    job.panels.push_back(panel);
    std::size_t const longest = plain || dice.one_in(2) ? 40 : 120;
    for (int space = 1; space <= panel.spaces; ++space) {
        if (dice.one_in(4)) continue;
        typed::Circuit c;
        c.mark = "C" + std::to_string(space);
        c.name = dice.name(longest, plain);
        c.room = dice.name(30);
        c.note = dice.one_in(5) ? dice.name(150) : "";
        c.panel = "Main";
        c.breaker = Amps{20'000};
        c.off = dice.one_in(8);
        if (dice.one_in(10)) c.use = "spare";
        if (dice.one_in(6)) c.poles = 2, c.tie = Tie::two_pole_breaker;
        if (!dice.one_in(9)) c.space = Spot{space, static_cast<char>(dice.one_in(7) && c.poles == 1 ? 'a' : 0)};
        job.circuits.push_back(c);
    }
    return job;
}

Form random_form(Dice& dice) {
    Form form = directory_letter();
    if (dice.one_in(2)) return form;
    form.width = 70 + static_cast<Mm>(dice.below(300));
    form.height = 80 + static_cast<Mm>(dice.below(300));
    form.margin = static_cast<Mm>(dice.below(15));
    return form;
}

std::vector<std::string> cut(std::vector<Printed::Name> const& names) {
    std::vector<std::string> marks;
    for (auto const& n : names) marks.push_back(n.of.circuits.front() + (n.whole ? "" : " cut"));
    return marks;
}

} // namespace

TEST_CASE("directory: names told the short way are those that laid out lines cut", "[sheet][directory][names]") {
    Asked const widths;
    int untouched = 0, with_cuts = 0;
    for (unsigned seed = 1; seed <= 400; ++seed) {
        CAPTURE(seed);
        Dice dice(seed);
        auto const building = resolve(random_job(dice, seed % 2 == 0));
        auto const plan = as_filed(building);
        Findings findings;
        if (dice.one_in(2)) findings.resize(2); // a band
        SheetInput const input{building, plan, findings, *code_book(building.code), widths, "job.toml"};
        auto const form = random_form(dice);
        widths.asked = false;
        auto const told = names_on_lines(input, form);
        untouched += widths.asked ? 0 : 1;
        auto const laid_out = names_on_laid_out_lines(input, form);
        REQUIRE(cut(told) == cut(laid_out));
        with_cuts += std::ranges::all_of(laid_out, &Printed::Name::whole) ? 0 : 1;
    }
    // Both ways were taken often, or this has shown nothing.
    CHECK(untouched > 40);
    CHECK(with_cuts > 40);
}

TEST_CASE("directory: of names that surely fit nothing is measured", "[sheet][directory][names]") {
    Asked const widths;
    auto const told_without = [&](typed::Job const& job) {
        auto const building = resolve(job);
        auto const plan = as_filed(building);
        widths.asked = false;
        std::vector<SheetOrder> const sheets{{sheet_kind("directory"), directory_letter()}};
        auto const printed = printed_words({building, plan, {}, *code_book(building.code), widths, ""}, sheets);
        REQUIRE(printed.sheets.size() == 1);
        CHECK(std::ranges::all_of(printed.sheets[0].names, &Printed::Name::whole));
        CHECK(std::ranges::all_of(printed.letters, [](auto const& l) { return l.missing.empty(); }));
        return !widths.asked;
    };
    auto job = boathouse();
    CHECK(told_without(job));
    job.circuits[0].name = "Prises, établi – côté nord"; // French letters are usual ones
    CHECK(told_without(job));
    job.circuits[0].name = "Ω meter"; // the face has to be asked
    CHECK_FALSE(told_without(job));
}
