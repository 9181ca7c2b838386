// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the documents say is so.

#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"

#include <filesystem>
#include <regex>

namespace {

std::string document(std::string const& name) { return contents(in_sources(name)); }

} // namespace

TEST_CASE("the job file of the README is a job without an error", "[documents]") {
    auto const readme = document("README.md");
    auto const begin = readme.find("```toml\n") + 8;
    auto const job = readme.substr(begin, readme.find("```", begin) - begin);
    TemporaryFolder const folder;
    legwork::write_file(folder / "cabin.toml", job);
    auto const called = call({"check", folder / "cabin.toml"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.out, Contains("0 errors, 0 warnings"));
    REQUIRE(call({"balance", folder / "cabin.toml", "--write"}).status == 0);
}

TEST_CASE("each key that the README shows in a job stands in one that can be read", "[documents]") {
    auto const readme = document("README.md");
    TemporaryFolder const folder;
    int jobs = 0;
    for (auto begin = readme.find("```toml\n"); begin != std::string::npos; begin = readme.find("```toml\n", begin)) {
        begin += 8;
        auto const job = readme.substr(begin, readme.find("```", begin) - begin);
        if (!job.starts_with("job = ") && !job.starts_with("job   = ")) continue; // a part of one
        ++jobs;
        legwork::write_file(folder / "job.toml", job);
        auto const called = call({"check", folder / "job.toml"});
        CAPTURE(called.out, called.err);
        REQUIRE(called.status == 0);
    }
    REQUIRE(jobs == 2);
    auto const starter = document("templates/starter.toml");
    for (auto const* key : {"feeder", "building", "outlets", "existing", "mca", "fuse", "off", "space", "supply"}) {
        CAPTURE(key);
        std::regex const said(std::string("\\b") + key + " *= |\\[\\[" + key + "\\]\\]");
        CHECK(std::regex_search(readme, said));
        CHECK(std::regex_search(starter, said));
    }
}

TEST_CASE("the pictures of the README are there", "[documents]") {
    auto const readme = document("README.md");
    std::regex const picture("\\]\\((examples/[^)]+)\\)");
    for (std::sregex_iterator at(readme.begin(), readme.end(), picture), end; at != end; ++at)
        REQUIRE(std::filesystem::exists(in_sources((*at)[1].str())));
}
