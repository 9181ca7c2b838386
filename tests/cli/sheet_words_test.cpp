// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What sheets say is phrases, and nothing but widths hangs on their words: shown by a language that turns each phrase
// into its id, on a face whose letters have no width. And a directory in French has no English word on it.

#include "catch.h"
#include "cli/files/form_file.h"
#include "cli/session.h"
#include "ids_language.h"
#include "output/files.h"
#include "sheet/sheets.h"
#include "source_folder.h"
#include "words/say.h"
#include "words/spoken.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <regex>
#include <set>
#include <sstream>

using namespace legwork;
namespace fs = std::filesystem;

namespace {

std::vector<fs::path> jobs() {
    std::vector<fs::path> found;
    for (auto const* folder : {"examples", "tests/cases", "tests/cases/load"})
        for (auto const& entry : fs::directory_iterator(in_sources(folder)))
            if (entry.path().extension() == ".toml" && entry.path().stem() != "unreadable")
                found.push_back(entry.path());
    std::ranges::sort(found);
    return found;
}

std::string bytes_of(fs::path const& path) {
    std::ostringstream bytes;
    bytes << std::ifstream(path, std::ios::binary).rdbuf();
    return bytes.str();
}

Session opened(fs::path const& path, std::string const& bytes) {
    auto made = open_job(path.filename().string(), bytes, {});
    REQUIRE(made.session);
    return std::move(*made.session);
}

SheetInput input_of(Session const& s, TextWidth const& widths, Catalogue const& catalogue) {
    return {s.building, s.plan, s.findings, *s.book, widths, s.file, catalogue};
}

std::vector<Text> texts_of(std::vector<Sheet> const& sheets) {
    std::vector<Text> texts;
    for (Sheet const& sheet : sheets)
        for (Page const& page : sheet.pages)
            for (Mark const& mark : page.marks)
                if (auto const* text = std::get_if<Text>(&mark)) texts.push_back(*text);
    return texts;
}

// Two letters and more, in small ones.
std::set<std::string> words_in(std::string const& text) {
    static std::regex const word("(?:[A-Za-z]|[\xc3-\xc5][\x80-\xbf]){2,}");
    std::set<std::string> words;
    for (std::sregex_iterator at(text.begin(), text.end(), word), end; at != end; ++at) {
        std::string small = at->str();
        for (char& c : small)
            if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        words.insert(small);
    }
    return words;
}

// What stands in the job, and what no language changes.
std::set<std::string> own_words(Session const& s) {
    auto words = words_in(s.bytes);
    words.merge(words_in(s.file + " " + std::string(s.book->edition) + " VA AWG DC"));
    return words;
}

std::vector<std::string> strange(std::vector<Text> const& texts, std::set<std::string> const& known) {
    static std::regex const id("#[a-z]+/[a-z0-9-]+#");
    std::vector<std::string> found;
    for (Text const& text : texts)
        for (std::string const& word : words_in(std::regex_replace(text.words, id, " ")))
            if (!known.contains(word)) found.push_back(word + " in: " + text.words);
    return found;
}

std::string in_french(std::string bytes) {
    static std::regex const said(R"(\n\s*language\s*=[^\n]*)"), code(R"(\n(\s*code\s*=[^\n]*))");
    bytes = std::regex_replace(bytes, said, "");
    return std::regex_replace(bytes, code, "\n$1\nlanguage = \"fr\"", std::regex_constants::format_first_only);
}

} // namespace

TEST_CASE("no place, size, line or page of a sheet hangs on what its phrases say, but by their widths", "[words]") {
    NoWidth const none;
    auto const other = ids_for_words();
    std::size_t compared = 0;
    for (auto const& path : jobs()) {
        auto const s = opened(path, bytes_of(path));
        for (SheetKind const& kind : sheet_kinds()) {
            CAPTURE(path.string(), std::string(kind.name));
            auto const form = default_form(std::string(kind.name));
            auto const in_english = kind.compose(input_of(s, none, english()), form);
            auto const in_ids = kind.compose(input_of(s, none, other), form);
            CHECK(shape_of(in_english) == shape_of(in_ids));
            compared += texts_of(in_english).size();
            if (!kind.names) continue;
            auto const names = kind.names(input_of(s, none, english()), form);
            auto const same = kind.names(input_of(s, none, other), form);
            REQUIRE(names.size() == same.size());
            for (std::size_t i = 0; i < names.size(); ++i) {
                CHECK(names[i].whole == same[i].whole);
                CHECK(names[i].what == same[i].what);
                CHECK(names[i].of.circuits == same[i].of.circuits);
            }
        }
    }
    CHECK(compared > 5000);
}

TEST_CASE("no fixed word stands on a sheet that is not a phrase", "[words]") {
    NoWidth const none;
    auto const other = ids_for_words();
    std::set<std::string> said; // of the directory and the labels: ids
    for (auto const& path : jobs()) {
        auto const s = opened(path, bytes_of(path));
        for (auto const* name : {"directory", "labels", "tape-notes"}) {
            CAPTURE(path.string(), name);
            auto known = own_words(s);
            if (std::string_view(name) == "tape-notes") // messages of check, which are English
                for (Finding const& f : s.findings) known.merge(words_in(f.rule + " " + f.message));
            auto const texts = texts_of(sheet_kind(name)->compose(input_of(s, none, other), default_form(name)));
            CHECK(strange(texts, known) == std::vector<std::string>{});
            // A sheet says only rows of those beginnings for which it is asked whether it is translated.
            auto const sheet = std::ranges::find(spoken_sheets(), name, &SpokenSheet::name);
            REQUIRE(sheet != spoken_sheets().end());
            static std::regex const id("#([a-z]+/[a-z0-9-]+)#");
            for (Text const& text : texts)
                for (std::sregex_iterator at(text.words.begin(), text.words.end(), id), end; at != end; ++at) {
                    auto const row = (*at)[1].str();
                    CAPTURE(row);
                    CHECK((sheet->begin.empty() ||
                           std::ranges::any_of(sheet->begin, [&](auto begin) { return row.starts_with(begin); })));
                    said.insert(row);
                }
        }
    }
    CHECK(said.size() > 100);
}

TEST_CASE("sheets are composed in the language of ids on the real face, too", "[words]") {
    Fonts const widths(in_sources("fonts"));
    auto const other = ids_for_words();
    auto const path = in_sources("examples/boathouse.toml");
    auto const s = opened(path, bytes_of(path));
    for (SheetKind const& kind : sheet_kinds()) {
        auto const form = default_form(std::string(kind.name));
        auto const in_ids = kind.compose(input_of(s, widths, other), form);
        auto const in_english = kind.compose(input_of(s, widths, english()), form);
        REQUIRE(in_ids.size() == in_english.size());
        for (std::size_t i = 0; i < in_ids.size(); ++i) {
            CHECK(in_ids[i].panel == in_english[i].panel);
            CHECK_FALSE(in_ids[i].pages.empty());
        }
    }
}

TEST_CASE("a directory in French has no English word on it, and the other sheets are English whole", "[words]") {
    NoWidth const none;
    std::set<std::string> french;
    for (Row const& row : kRows) {
        static std::regex const blank(R"(\{[a-z]+\})");
        std::vector<Phrase> blanks(arguments_of(row.english), Phrase(std::string()));
        if (row.id.starts_with("note/") || row.id.starts_with("label/") || row.id.starts_with("load/")) continue;
        if (!row.id.starts_with("wire/") && !row.id.starts_with("colour") && !row.id.starts_with("reference/"))
            french.merge(words_in(catalogue("fr")->words(Phrase(row_number(row.id), blanks))));
    }
    REQUIRE(french.contains("couper"));
    REQUIRE_FALSE(french.contains("off"));
    std::size_t seen = 0;
    for (auto const& path : jobs()) {
        CAPTURE(path.string());
        auto const s = opened(path, in_french(bytes_of(path)));
        REQUIRE(s.building.languages == std::vector<std::string>{"fr"});
        for (SheetKind const& kind : sheet_kinds()) {
            auto const form = default_form(std::string(kind.name));
            auto const spoken = input_of(s, none, language_of(kind, s.building));
            auto const sheets = kind.compose(spoken, form);
            if (kind.name != "directory") {
                CHECK(spoken.catalogue.language() == "en");
                continue;
            }
            CHECK(spoken.catalogue.language() == "fr");
            auto known = own_words(s);
            known.insert(french.begin(), french.end());
            CHECK(strange(texts_of(sheets), known) == std::vector<std::string>{});
            for (Sheet const& sheet : sheets) CHECK(sheet.title.find("panel directory") == sheet.title.npos);
            seen += sheets.size();
        }
        bool const told = std::ranges::any_of(s.findings, [](Finding const& f) {
            return f.rule == "job-no-effect" && f.message.find("only the directory is in \"fr\"") != f.message.npos;
        });
        CHECK(told);
    }
    CHECK(seen > 20);
}

TEST_CASE("a French directory shows the French names that the job has", "[words]") {
    NoWidth const none;
    auto const path = in_sources("examples/boathouse.toml");
    auto bytes = in_french(bytes_of(path));
    static std::regex const name("\n *name *= *\"Refrigerator\"");
    REQUIRE(std::regex_search(bytes, name));
    bytes = std::regex_replace(bytes, name, "$&\nname_fr = \"Réfrigérateur\"");
    auto const shown = [&](Session const& s, std::string_view kind, std::string_view words) {
        auto const& k = *sheet_kind(kind);
        auto const texts =
            texts_of(k.compose(input_of(s, none, language_of(k, s.building)), default_form(std::string(kind))));
        return std::ranges::any_of(texts, [&](Text const& t) { return t.words.find(words) != t.words.npos; });
    };
    auto const s = opened(path, bytes);
    CHECK(shown(s, "directory", "Réfrigérateur"));
    CHECK_FALSE(shown(s, "directory", "Refrigerator"));
    CHECK(shown(s, "labels", "Refrigerator"));
    CHECK(std::ranges::none_of(s.findings, [](Finding const& f) {
        return f.rule == "job-no-effect" && f.message.find("name_fr") != f.message.npos;
    }));
}
