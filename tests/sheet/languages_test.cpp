// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A language changes words and nothing else: shown by a French directory, and by one whose every phrase is "#17#".
#include "labels_fixture.h"
#include "sheet/directory.h"
#include "sheet/labels.h"
#include "sheet/labels_list.h"
#include "sheet/tape_notes.h"
#include "words/rows.h"

#include "catch.h"
#include <fmt/format.h>

#include <regex>
#include <set>

using namespace legwork;
using namespace legwork::sheet_test;

namespace {

// Every phrase as the number of its row, with its arguments behind; a whole id would be cut where the words are not.
Catalogue ids() {
    std::vector<std::string> patterns;
    for (Row const& r : kRows) {
        std::string pattern = fmt::format("#{}#", row_number(r.id));
        std::string_view const english = r.english;
        for (auto at = blank_in(english, 0); at.begin != english.npos; at = blank_in(english, at.end))
            pattern += fmt::format("{{{}}}", at.name);
        patterns.push_back(std::move(pattern));
    }
    return {"ids", std::move(patterns)};
}

Ask in_space(std::string code) {
    auto a = ask(std::move(code));
    a.findings.clear();
    return a;
}

// The English words of all phrases, without arguments, long enough to be told from names.
std::set<std::string> english_pieces() {
    std::set<std::string> pieces;
    for (Row const& r : kRows) {
        if (r.id.starts_with("load/topic-")) continue; // single words of every day, which names of circuits have too
        std::string_view const english = r.english;
        std::size_t done = 0;
        auto const keep = [&](std::string_view piece) {
            while (piece.starts_with(' ')) piece.remove_prefix(1);
            while (piece.ends_with(' ')) piece.remove_suffix(1);
            if (piece.size() >= 6) pieces.emplace(piece);
        };
        for (auto at = blank_in(english, 0); at.begin != english.npos; at = blank_in(english, at.end)) {
            keep(english.substr(done, at.begin - done));
            done = at.end;
        }
        keep(english.substr(done));
    }
    return pieces;
}

std::string run_together(std::vector<Sheet> const& sheets) {
    auto words = all_words(sheets);
    std::ranges::replace(words, '\n', ' ');
    return words;
}

Form directory_letter() {
    Form f;
    f.name = "directory-letter";
    f.sheet = "directory";
    f.width = 215.9;
    f.height = 279.4;
    return f;
}

std::string found_in(std::string const& words, std::set<std::string> const& pieces) {
    for (auto const& piece : pieces)
        if (words.find(piece) != words.npos) return piece;
    return {};
}

} // namespace

TEST_CASE("languages: no English phrase is left on a French directory", "[sheet][words]") {
    EvenWidths const widths;
    auto const a = in_space("CE 2024");
    auto pieces = english_pieces();
    for (auto const* same : {"Circuit", "legwork print"}) pieces.erase(same); // in both languages
    std::erase_if(pieces, [](std::string const& p) { return p.find("legwork print") != p.npos; });
    auto const input = a.input(widths);
    // The scan is no use unless it finds them where they are.
    CHECK(found_in(run_together(compose_directory(input, directory_letter())), pieces) != "");
    CHECK(found_in(run_together(compose_directory(input.in(*catalogue("fr")), directory_letter())), pieces) == "");
}

TEST_CASE("languages: ids for words change no page, no line and no label but their words", "[sheet][words]") {
    EvenWidths const widths;
    auto const other = ids();
    for (auto const* code : {"CE 2024", "NEC 2023"}) {
        auto const a = in_space(code);
        auto const input = a.input(widths);
        auto const said = run_together(compose_directory(input.in(other), directory_letter()));
        CHECK(said.find(fmt::format("#{}#", row_number("directory/title"))) != said.npos);
        std::regex const id("#[^#]*#");
        CHECK(found_in(std::regex_replace(said, id, " "), english_pieces()) == "");
        auto const labels = compose_labels(input.in(other), labels_letter());
        CHECK(found_in(std::regex_replace(run_together(labels), id, " "), english_pieces()) == "");
        auto const places = [&](Catalogue const& catalogue) {
            std::vector<std::string> marks;
            for (auto const& sheet : compose_directory(input.in(catalogue), directory_letter()))
                for (auto const& page : sheet.pages)
                    for (auto const& t : texts(page))
                        if (std::ranges::any_of(a.job.circuits,
                                                [&](typed::Circuit const& c) { return c.mark == t.words; }))
                            marks.push_back(t.words);
            return marks;
        };
        CHECK(places(other) == places(english()));
        // The same labels, tip and keep at each end, whatever they say.
        auto const count = [&](Catalogue const& catalogue) {
            auto const building = resolve(a.job);
            std::size_t n = 0;
            for (auto const& end : cable_ends(building, cable_runs(building, *code_book(code)), catalogue))
                n += end.labels.size() * 100 + end.markers.size();
            return n;
        };
        CHECK(count(other) == count(english()));
    }
}
