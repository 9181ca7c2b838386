// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is decided is decided by values: outside of what reads a person's own words, no folder that judges, reckons,
// proposes or composes looks for letters in a text. DEVELOPERS.md, "How data flows".

#include "catch.h"
#include "source_folder.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

namespace fs = std::filesystem;

namespace {

const std::set<std::string> kFolders{"cable",    "rules",   "reckon", "demand", "propose", "codebook",
                                     "building", "balance", "cli",    "sheet",  "words"};

// The files that may, and why.
const std::map<std::string, std::string> kMay{
    {"codebook/stock/", "reads words that a person typed, to propose a value"},
    {"rules/directory/", "reads the names that a person gave: possessives, children, relatives"},
    {"rules/need/named_things.cpp", "cuts a name that a person typed into the things that it lists"},
    {"building/resolve_circuits.cpp", "turns typed words into values"},
    {"codebook/editions/checked_edition.h", "names a topic while compiling"},
    {"codebook/signs.cpp", "picks the text of a language by its code"},
    {"rules/job/measure.cpp", "keys of the job file, of which it makes the list"},
    {"reckon/say.cpp", "the situation that has no name in the job goes by that word in plans and JSON"},
    {"sheet/form.cpp", "the sheet that a form's file names"},
    {"sheet/labels_list.cpp", "keys of the job file, as typed"},
    {"sheet/tape_notes_ink.cpp", "names of colours as typed, which it turns into inks"},
    {"words/po.cpp", "keywords of PO files"},
    {"words/colour.cpp", "names of colours as typed, which it turns into phrases"},
    {"propose/sizing.cpp", "topics of the code book, by their ids"},
    {"cli/files/sheet_files.cpp", "formats, as typed on the command line"},
    {"cli/commands/print.cpp", "formats, as typed on the command line"},
    {"cli/commands/check.cpp", "words of options, as typed on the command line"},
    {"cli/files/form_file.cpp", "the ending of a file's name"},
    {"cli/text/measure_list.cpp", "the place of an argument in a row's words"},
    {"cli/call/complete.cpp", "names of shells, as their scripts type them"},
    {"cli/keys/job_schema.cpp", "words of the schema's own language"},
};

std::string in_src(fs::path const& file) { return file.lexically_relative(in_sources("src")).generic_string(); }

std::string const* permit_of(std::string const& file) {
    for (auto const& [may, why] : kMay)
        if (file.starts_with(may)) return &may;
    return nullptr;
}

bool decides_by_letters(std::string const& line) {
    static std::regex const searched(
        R"re((\.|->)(find|rfind|starts_with|ends_with|contains)\(("[^"]*[A-Za-z]|'[A-Za-z]))re");
    static std::regex const compared(R"re((==|!=) "[^"]*[A-Za-z][^"]*"|"[^"]*[A-Za-z][^"]*" (==|!=) )re");
    auto const code = line.substr(0, line.find("// "));
    return std::regex_search(code, searched) || std::regex_search(code, compared);
}

} // namespace

TEST_CASE("what is decided is decided by values, not by letters in a text", "[words]") {
    std::set<std::string> needed; // permits that are
    int seen = 0;
    for (auto const& entry : fs::recursive_directory_iterator(in_sources("src"))) {
        auto const file = in_src(entry.path());
        if (entry.is_directory() || !kFolders.contains(file.substr(0, file.find('/')))) continue;
        ++seen;
        std::ifstream lines(entry.path());
        for (std::string line; std::getline(lines, line);) {
            if (!decides_by_letters(line)) continue;
            CAPTURE(file, line);
            auto const* permit = permit_of(file);
            REQUIRE(permit);
            needed.insert(*permit);
        }
    }
    REQUIRE(seen > 300);
    for (auto const& [may, why] : kMay) {
        CAPTURE(may, why);
        CHECK(needed.contains(may)); // else it goes from the list
    }
}

TEST_CASE("letters looked for in a text are seen by the test that forbids it", "[words]") {
    for (auto const* line :
         {R"(if (to.find("switch") != to.npos) return;)", R"(return color.starts_with("white");)",
          R"(f.rule == "gfci-needed" && x)", R"("connected" != name)", R"(c->name.ends_with("s'"))"}) {
        CAPTURE(line);
        CHECK(decides_by_letters(line));
    }
    for (auto const* line : {R"(text.find(' '))", R"(path == "-")", R"(seen.contains(mark))",
                             R"(fmt::format("{} == {}", a, b))", R"(x; // not by f.rule == "gfci")"}) {
        CAPTURE(line);
        CHECK_FALSE(decides_by_letters(line));
    }
}
