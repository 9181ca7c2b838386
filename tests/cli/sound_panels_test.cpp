// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The sound panels of tests/sound/ (see rules/sound_test.cpp) through balance and print: nothing fails, nothing is
// told beside what check tells, and no sheet is a draft.
#include "calls.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <filesystem>

using nlohmann::json;
namespace fs = std::filesystem;

TEST_CASE("sound panels: every sheet is printed, final and without a word", "[cli][print][sound]") {
    TemporaryFolder const folder;
    for (auto const& entry : fs::directory_iterator(in_sources("tests/sound"))) {
        if (entry.path().extension() != ".toml") continue;
        auto const name = entry.path().filename().string();
        auto const called = call({"print", entry.path().string(), "--out", folder / name, "--format", "svg", "--json"});
        CAPTURE(name, called.err);
        REQUIRE(called.status == 0);
        CHECK(called.err.find("dir-name-too-long") == std::string::npos);
        auto const files = json::parse(called.out)["files"];
        CHECK(files.size() >= 3);
        for (auto const& f : files) {
            auto const page = contents(f["path"].get<std::string>());
            CHECK(page.find("DRAFT") == std::string::npos);
            CHECK(page.find("PROPOSED") == std::string::npos);
        }
    }
}

TEST_CASE("sound panels: balance leaves every one as it is", "[cli][balance][sound]") {
    for (auto const& entry : fs::directory_iterator(in_sources("tests/sound"))) {
        if (entry.path().extension() != ".toml") continue;
        auto const called = call({"balance", entry.path().string(), "--json"});
        CAPTURE(entry.path().filename().string(), called.err);
        REQUIRE(called.status == 0);
        auto const told = json::parse(called.out);
        for (auto const& panel : told.at("panels")) {
            CHECK(panel["moves"] == 0);
            CHECK(panel["proven"] == true);
        }
    }
}
