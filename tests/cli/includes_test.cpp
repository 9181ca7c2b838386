// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folders' one direction: DEVELOPERS.md's table, kept by a test since the linker does not see headers.

#include "catch.h"
#include "source_folder.h"

#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>

namespace fs = std::filesystem;
using Folders = std::set<std::string>;

namespace {

std::map<std::string, Folders> may_include() {
    // What the person typed ends at the building: no rule, search or sheet sees the job file.
    Folders const judged{"units", "words", "panel", "codebook", "building", "balance", "cable"};
    auto with = [](Folders some, std::initializer_list<std::string> more) {
        some.insert(more);
        return some;
    };
    return {{"units", {}},
            {"words", {"units"}},
            {"toml", {"units"}},
            {"job", {"units", "toml"}},
            {"panel", {"units", "job"}},
            {"codebook", {"units", "words"}},
            {"building", {"units", "job", "panel", "codebook"}},
            {"balance", {"units", "panel", "building"}},
            {"cable", {"units", "words", "codebook", "building"}},
            {"demand", {"units", "words", "codebook", "building"}},
            {"reckon", with(judged, {"demand"})},
            {"rules", with(judged, {"demand", "reckon"})},
            {"page", {}},
            {"propose", with(judged, {"reckon", "rules"})},
            {"sheet", with(judged, {"toml", "demand", "reckon", "rules", "page"})},
            {"draw", {"page", "units"}}, // of units only Failure
            {"output", {"draw", "units"}},
            {"cli",
             with(judged, {"toml", "job", "demand", "reckon", "rules", "propose", "page", "sheet", "draw", "output"})}};
}

std::string folder_of(fs::path const& file) {
    auto const relative = file.lexically_relative(in_sources("src"));
    return *relative.begin();
}

} // namespace

TEST_CASE("each folder includes only what lies below it", "[includes]") {
    auto const allowed = may_include();
    std::regex const include("^#include \"([a-z]+)/");
    int seen = 0;
    for (auto const& entry : fs::recursive_directory_iterator(in_sources("src"))) {
        if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
        auto const folder = folder_of(entry.path());
        if (folder == "main.cpp") continue;
        CAPTURE(entry.path().string());
        REQUIRE(allowed.contains(folder));
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            std::smatch found;
            if (!std::regex_search(line, found, include)) continue;
            ++seen;
            CAPTURE(line);
            REQUIRE((found[1] == folder || allowed.at(folder).contains(found[1])));
        }
    }
    REQUIRE(seen > 100);
}

TEST_CASE("one file knows the library that takes a command line apart", "[includes]") {
    std::vector<std::string> knowing;
    for (auto const& entry : fs::recursive_directory_iterator(in_sources("src"))) {
        if (!entry.is_regular_file()) continue;
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);)
            if (line.starts_with("#include <CLI/")) knowing.push_back(entry.path().filename().string());
    }
    REQUIRE(knowing == std::vector<std::string>{"parser.cpp"});
}

TEST_CASE("only the reader, the drawing and the commands know their libraries", "[includes]") {
    std::regex const library("^#include <(toml|cairo|pango|fontconfig|CLI|nlohmann)");
    std::map<std::string, Folders> const home{{"toml", {"toml"}},       {"cairo", {"draw"}}, {"pango", {"draw"}},
                                              {"fontconfig", {"draw"}}, {"CLI", {"cli"}},    {"nlohmann", {"cli"}}};
    for (auto const& entry : fs::recursive_directory_iterator(in_sources("src"))) {
        if (entry.path().extension() != ".h" && entry.path().extension() != ".cpp") continue;
        std::ifstream file(entry.path());
        for (std::string line; std::getline(file, line);) {
            std::smatch found;
            if (!std::regex_search(line, found, library)) continue;
            CAPTURE(entry.path().string(), line);
            REQUIRE(home.at(found[1]).contains(folder_of(entry.path())));
        }
    }
}
