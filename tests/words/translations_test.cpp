// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rows, and the PO files held against them by our own reader and by gettext's.

#include "catch.h"
#include "po_faults.h"
#include "source_folder.h"
#include "temporary_folder.h"
#include "words/catalogue.h"
#include "words/rows.h"
#include "words/spoken.h"

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

using namespace legwork;
using namespace legwork::words_test;
namespace fs = std::filesystem;

namespace {

// What a language must have whole once it is here: the directory.
std::vector<std::string_view> directory() {
    auto const begin = spoken_sheets().front().begin;
    return {begin.begin(), begin.end()};
}

std::string bytes_of(fs::path const& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

std::string replaced(std::string text, std::string const& what, std::string const& with) {
    auto const at = text.find(what);
    REQUIRE(at != text.npos);
    return text.replace(at, what.size(), with);
}

// gettext's own judge. 0: nothing to say.
int msgfmt(std::string const& po) {
    TemporaryFolder const folder;
    auto const path = folder / "words.po";
    std::ofstream(path, std::ios::binary) << po;
    return std::system(("msgfmt -c -o /dev/null '" + path + "' 2>/dev/null").c_str());
}

} // namespace

TEST_CASE("each row has an id of its own, words, and arguments that python-brace-format takes", "[words]") {
    std::set<std::string_view> ids;
    std::regex const id("[a-z]+/[a-z0-9-]+"), name("[a-z]+");
    for (Row const& row : kRows) {
        CAPTURE(row.id);
        CHECK(ids.insert(row.id).second);
        CHECK(std::regex_match(std::string(row.id), id));
        CHECK_FALSE(row.english.empty());
        CHECK(row.english.find_first_of("\n\t") == row.english.npos);
        std::size_t blanks = 0;
        for (auto at = blank_in(row.english, 0); at.begin != row.english.npos; at = blank_in(row.english, at.end)) {
            CHECK(std::regex_match(std::string(at.name), name));
            ++blanks;
        }
        CHECK(std::ranges::count(row.english, '{') == static_cast<std::ptrdiff_t>(blanks));
        CHECK(std::ranges::count(row.english, '}') == static_cast<std::ptrdiff_t>(blanks));
    }
    CHECK(kRows.size() > 200);
}

TEST_CASE("every translation says the rows as they are, with their arguments, and the directory whole", "[words]") {
    std::size_t files = 0;
    for (auto const& entry : fs::directory_iterator(in_sources("src/words/po")))
        files += entry.path().extension() == ".po";
    REQUIRE(files == translations().size());
    REQUIRE(files >= 1);
    for (auto const& [language, po] : translations()) {
        CAPTURE(language);
        CHECK(po == bytes_of(in_sources("src/words/po/" + std::string(language) + ".po")));
        CHECK(faults_of(po, directory()) == std::vector<std::string>{});
        CHECK(msgfmt(std::string(po)) == 0);
        CHECK(catalogue(language)->has_all("directory/"));
    }
}

TEST_CASE("a translation that lacks, outlives or changes a row, or loses an argument, is found out", "[words]") {
    std::string const po(translations().front().po);
    auto const faults = [&](std::string const& what, std::string const& with) {
        auto const all = faults_of(replaced(po, what, with), directory());
        return all.empty() ? std::string("none") : all.front();
    };
    CHECK(faults("msgctxt \"directory/blocked\"", "msgctxt \"directory/locked\"") ==
          "directory/locked: no row has this id");
    CHECK(faults("msgid \"BLOCKED\"", "msgid \"LOCKED\"") == "directory/blocked: the English has changed");
    CHECK(faults("msgstr \"BLOQUÉ\"", "msgstr \"\"") == "directory/blocked: not translated");
    CHECK(faults("msgctxt \"directory/blocked\"", "#, fuzzy\nmsgctxt \"directory/blocked\"") ==
          "directory/blocked: not translated");
    CHECK(faults("msgstr \"coupure commune avec {place}\"", "msgstr \"coupure commune\"") ==
          "directory/off-with: other arguments");
    CHECK(faults("msgstr \"coupure commune avec {place}\"", "msgstr \"coupure commune avec {lieu}\"") ==
          "directory/off-with: other arguments");
    CHECK(faults("#, python-brace-format\n", "") == "figure/decimal: the flag python-brace-format");
    // gettext's judge sees an argument that is lost, too, and what is no PO file.
    CHECK(msgfmt(replaced(po, "avec {place}\"", "avec {lieu}\"")) != 0);
    CHECK(msgfmt(replaced(po, "msgid \"BLOCKED\"", "msgid BLOCKED")) != 0);
}

TEST_CASE("the template for translators is made of the rows", "[words]") {
    auto const path = in_sources("src/words/po/legwork.pot");
    if (bytes_of(path) != pot()) std::ofstream(path + ".new", std::ios::binary) << pot();
    CHECK(bytes_of(path) == pot());
    CHECK(msgfmt(pot()) == 0);
}
