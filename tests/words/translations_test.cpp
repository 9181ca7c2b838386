// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Translations held against the rows that they translate, and against gettext's own reader of PO files.
#include "source_folder.h"
#include "words/catalogue.h"
#include "words/phrase.h"
#include "words/po.h"
#include "words/rows.h"

#include "catch.h"
#include <fmt/format.h>

#include <cstdlib>
#include <set>

using namespace legwork;

namespace {

std::set<std::string> blanks(std::string_view pattern) {
    std::set<std::string> names;
    for (auto at = blank_in(pattern, 0); at.begin != pattern.npos; at = blank_in(pattern, at.end))
        names.emplace(at.name);
    return names;
}

// What is wrong with one entry; empty for a good one.
std::string fault(PoEntry const& e) {
    auto const number = row_number(e.context);
    if (number == kRows.size()) return e.context + " is no row";
    if (kRows[number].english != e.english) return e.context + " translates other words than the row has";
    if (e.translation.empty()) return e.context + " is not translated";
    if (blanks(e.translation) != blanks(e.english)) return e.context + " has other arguments than the English";
    bool const braces = !blanks(e.english).empty();
    bool const flagged = std::ranges::count(e.flags, "python-brace-format") > 0;
    if (braces != flagged) return e.context + (braces ? " lacks" : " has no use for") + " the flag python-brace-format";
    return {};
}

PoEntry entry_of(std::string const& id) {
    for (PoEntry const& e : read_po(translations().front().po).entries)
        if (e.context == id) return e;
    FAIL(id);
    return {};
}

Catalogue const& french() { return *catalogue("fr"); }

} // namespace

TEST_CASE("every translation is one of a row as it stands, with its arguments", "[words]") {
    REQUIRE_FALSE(translations().empty());
    for (auto const& [language, bytes] : translations()) {
        CAPTURE(language);
        auto const file = read_po(bytes);
        CHECK(file.wrong == std::vector<std::string>{});
        REQUIRE_FALSE(file.entries.empty());
        for (PoEntry const& e : file.entries) CHECK(fault(e) == "");
    }
}

TEST_CASE("a translation that went stale, lost an argument or its row is seen", "[words]") {
    auto const good = entry_of("directory/off-with");
    REQUIRE(fault(good) == "");
    auto e = good;
    e.context = "directory/of-with";
    CHECK(fault(e) != "");
    e = good;
    e.english = "together with {place}";
    CHECK(fault(e) != "");
    e = good;
    e.translation = "coupure commune";
    CHECK(fault(e) != "");
    e = good;
    e.translation = "coupure commune avec {lieu}";
    CHECK(fault(e) != "");
    e = good;
    e.flags.clear();
    CHECK(fault(e) != "");
}

TEST_CASE("gettext finds the translations good", "[words]") {
    for (auto const& [language, bytes] : translations()) {
        auto const file = in_sources(fmt::format("src/words/po/{}.po", language));
        CAPTURE(file);
        CHECK(std::system(
                  fmt::format("msgfmt --check-format --check-header -o /dev/null '{}' 2>/dev/null", file).c_str()) ==
              0);
    }
}

TEST_CASE("the directory speaks French whole, and what is not translated is not mixed in", "[words]") {
    for (auto const* rows : {"directory/", "frame/", "figure/", "list/", "breaker/"}) CHECK(french().has_all(rows));
    CHECK_FALSE(french().has_all("note/"));
    CHECK(english().has_all(""));
    CHECK(catalogue("de") == nullptr);
}

TEST_CASE("figures in French: a comma, a no-break space before the unit and between groups", "[words]") {
    // Canadian French: Le guide du rédacteur (Bureau de la traduction), decimal comma, spaces between groups; from
    // memory.
    CHECK(english().words(with_unit("6.4 A")) == "6.4 A");
    CHECK(french().words(with_unit("6.4 A")) == "6,4\u00a0A");
    CHECK(french().words(figure(26590)) == "26\u00a0590");
    CHECK(french().words(figure(590)) == "590");
    CHECK(french().words(figure(1234567)) == "1\u00a0234\u00a0567");
    CHECK(english().words(figure(26590)) == "26590");
    CHECK(french().words(with_unit("120/240 V")) == "120/240\u00a0V"); // no figure
}

TEST_CASE("two languages serve at once, and braces that a person typed stay", "[words]") {
    auto const phrase = say("directory/off-with", std::string("{place} 7"));
    CHECK(english().words(phrase) == "off together with {place} 7");
    CHECK(french().words(phrase) == "coupure commune avec {place} 7");
    CHECK(english().words(phrase) == "off together with {place} 7");
}

TEST_CASE("a PO file with faults is told line by line", "[words]") {
    CHECK(read_po("msgctxt \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n").wrong.empty());
    for (auto const* bad :
         {"msgctxt \"a\"\nmsgid \"b\"\n", "msgid \"b\"\nmsgstr \"c\"\n", "msgctxt \"a\nmsgid \"b\"\nmsgstr \"c\"\n",
          "nonsense\n", "msgctxt \"a\"\nmsgid \"b\"\nmsgstr \"\\q\"\n",
          "msgctxt \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n\nmsgctxt \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n"})
        CHECK_FALSE(read_po(bad).wrong.empty());
    auto const fuzzy = read_po("#, fuzzy\nmsgctxt \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n");
    REQUIRE(fuzzy.entries.size() == 1);
    CHECK(fuzzy.entries[0].translation.empty());
}
