// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// ctest calls each test by its name, and a name that matches none passes in silence: so none may hold what CMake splits
// lists at, or begin like an option.

#include "catch.h"
#include "source_folder.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <regex>

namespace fs = std::filesystem;

TEST_CASE("every test can be called by its name", "[names]") {
    std::regex const named("(?:^|\n)(?:TEST_CASE|SCENARIO)\\(\\s*\"([^\"]*)\"");
    int seen = 0;
    for (auto const& entry : fs::recursive_directory_iterator(in_sources("tests"))) {
        if (entry.path().extension() != ".cpp") continue;
        std::ifstream file(entry.path());
        std::string const text{std::istreambuf_iterator<char>(file), {}};
        for (std::sregex_iterator at(text.begin(), text.end(), named), end; at != end; ++at) {
            std::string const name = (*at)[1];
            CAPTURE(entry.path().string(), name);
            CHECK(name.find_first_of(";\\") == std::string::npos);
            CHECK_FALSE(name.starts_with('-'));
            CHECK_FALSE(name.ends_with(' '));
            ++seen;
        }
    }
    REQUIRE(seen > 400);
}
