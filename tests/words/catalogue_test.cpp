// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Phrases into words: the order of arguments, figures and units of a language.

#include "words/catalogue.h"

#include "catch.h"
#include "words/colour.h"
#include "words/say.h"
#include "words/spoken.h"

using namespace legwork;

namespace {

std::string en(Phrase const& p) { return english().words(p); }
std::string fr(Phrase const& p) { return catalogue("fr")->words(p); }

// English with other words for one row.
Catalogue with(std::string_view id, std::string pattern) {
    std::vector<std::string> patterns(kRows.size());
    patterns.at(row_number(id)) = std::move(pattern);
    return {"xx", std::move(patterns)};
}

} // namespace

TEST_CASE("each argument stands where the language wants it", "[words]") {
    auto const page = say("frame/page", figure(2), figure(5));
    CHECK(en(page) == "page 2 of 5");
    CHECK(with("frame/page", "of {pages} the {number}, {pages}").words(page) == "of 5 the 2, 5");
    CHECK(with("frame/revision", "nothing").words(page) == "page 2 of 5"); // English where there is no other
}

TEST_CASE("braces and percents that a person typed stay what they are", "[words]") {
    CHECK(en(say("frame/revision", std::string("{n} %s {"))) == "rev. {n} %s {");
    CHECK(en(say("list/comma", std::string("{more}"), std::string("B"))) == "{more}, B");
}

TEST_CASE("two languages serve at once", "[words]") {
    auto const off = say("directory/off-with", std::string("7"));
    CHECK(en(off) == "off together with 7");
    CHECK(fr(off) == "coupure commune avec 7");
    CHECK(en(off) == "off together with 7");
}

TEST_CASE("phrases are arguments of phrases", "[words]") {
    auto const inside = say("directory/not-tied", say("directory/no-space", std::string("K1")), std::string("5"));
    CHECK(en(inside) == "K1 (no space yet) and 5 not tied: turn both off");
    CHECK(en(joined("list/semicolon", {as_is("a"), as_is("b"), as_is("c")})) == "a; b; c");
    CHECK(joined("list/semicolon", {}).empty());
}

// Office québécois de la langue française: decimal comma, figures in groups of three; SI: a space before the unit.
TEST_CASE("figures, units and dates are those of the language", "[words]") {
    CHECK(en(said(Amps{20'000})) == "20 A");
    CHECK(fr(said(Amps{20'000})) == "20\u00a0A");
    CHECK(fr(said(Amps{6'400})) == "6,4\u00a0A");
    CHECK(en(figure(7320)) == "7320");
    CHECK(fr(figure(7320)) == "7\u00a0320");
    CHECK(fr(figure(320)) == "320");
    CHECK(fr(figure(1234567)) == "1\u00a0234\u00a0567");
    CHECK(fr(with_unit("120/240 V")) == "120/240\u00a0V"); // no thousands in it
    CHECK(fr(with_unit("1/0 AWG")) == "1/0\u00a0AWG");
    CHECK(fr(with_unit("? A")) == "?\u00a0A");
    CHECK(fr(say("figure/date", as_is("2026"), as_is("05"), as_is("02"))) == "2026-05-02");
}

TEST_CASE("a name that has the row's words already stands alone", "[words]") {
    auto const panel = [](std::string name) { return Phrase::unless_said(say("note/panel", std::move(name))); };
    CHECK(en(panel("Main")) == "panel Main");
    CHECK(en(panel("Garage panel")) == "Garage panel");
    CHECK(en(panel("PANEL 2")) == "PANEL 2");
    CHECK(with("note/panel", "panneau {name}").words(panel("Panneau du garage")) == "Panneau du garage");
    CHECK(with("note/panel", "panneau {name}").words(panel("Garage panel")) == "panneau Garage panel");
}

TEST_CASE("a colour is said by its parts, and what is no colour as it stands", "[words]") {
    for (auto const* name : {"black", "white with red stripe", "white/blue", "green with yellow", "striped"})
        CHECK(en(colour(name)) == name);
    auto const words = with("colours/striped", "{ground} rayé de {stripe}");
    CHECK(words.words(colour("white with red stripe")) == "white rayé de red");
    CHECK(colour("blackish") == as_is("blackish"));
    CHECK(colour("black") == say("colour/black"));
}

TEST_CASE("languages are asked by their code, and there are no others", "[words]") {
    CHECK(catalogue("en") == &english());
    CHECK(catalogue("fr")->language() == "fr");
    CHECK_FALSE(catalogue("xx"));
    CHECK_FALSE(catalogue(""));
}

TEST_CASE("a sheet speaks the first language where it is whole in it, else English", "[words]") {
    CHECK(spoken("directory", {"fr"}).language() == "fr");
    CHECK(spoken("directory", {"fr", "en"}).language() == "fr");
    CHECK(spoken("directory", {"en", "fr"}).language() == "en");
    CHECK(spoken("directory", {"es"}).language() == "en");
    CHECK(spoken("labels", {"fr"}).language() == "en"); // not translated yet
    CHECK(spoken("load", {"fr"}).language() == "en");
    CHECK(spoken("nothing", {"fr"}).language() == "en");
}
