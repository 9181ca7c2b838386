// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/replace.h"

#include "output/files.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <csignal>
#include <filesystem>

#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace legwork;
namespace fs = std::filesystem;
using Names = std::vector<std::string>;

TEST_CASE("the old file stays beside the new one, the one before that moves on", "[output][replace]") {
    TemporaryFolder const folder;
    write_file(folder / "shed.toml", "one");
    auto const first = replace_file(folder / "shed.toml", "one", "two");
    REQUIRE(first.done);
    REQUIRE(fs::path(first.before).filename() == "shed.before.toml");
    REQUIRE(replace_file(folder / "shed.toml", "two", "three").done);
    REQUIRE(replace_file(folder / "shed.toml", "three", "four").done);
    REQUIRE(contents(folder / "shed.toml") == "four");
    REQUIRE(contents(folder / "shed.before.toml") == "three");
    REQUIRE(contents(folder / "shed.before-2.toml") == "two");
    REQUIRE(contents(folder / "shed.before-3.toml") == "one");
    REQUIRE(folder.names() == Names{"shed.before-2.toml", "shed.before-3.toml", "shed.before.toml", "shed.toml"});
}

TEST_CASE("a file changed meanwhile is left as it is", "[output][replace]") {
    TemporaryFolder const folder;
    auto const [now] = GENERATE(table<std::string>({{"one, and more"}, {"on"}, {"two"}, {""}}));
    write_file(folder / "shed.toml", now);
    auto const replaced = replace_file(folder / "shed.toml", "one", "new");
    REQUIRE_FALSE(replaced.done);
    REQUIRE(contents(folder / "shed.toml") == now);
    REQUIRE(folder.names() == Names{"shed.toml"});
}

TEST_CASE("names without an ending, links, modes", "[output][replace]") {
    TemporaryFolder const folder;
    fs::create_directory(folder / "real");
    write_file(folder / "real/job", "one");
    ::chmod((folder / "real/job").c_str(), 0640);
    fs::create_symlink("real/job", folder / "link.toml");
    auto const replaced = replace_file(folder / "link.toml", "one", "two");
    REQUIRE(replaced.done);
    REQUIRE(fs::is_symlink(folder / "link.toml"));
    REQUIRE(contents(folder / "real/job") == "two");
    REQUIRE(contents(folder / "real/job.before") == "one"); // beside the file itself
    REQUIRE((fs::status(folder / "real/job").permissions() & fs::perms::mask) == static_cast<fs::perms>(0640));
    REQUIRE(folder.names() == Names{"link.toml", "real"});
}

TEST_CASE("what cannot be replaced is told", "[output][replace]") {
    TemporaryFolder const folder;
    REQUIRE_THROWS_AS(replace_file(folder / "none.toml", "", "x"), Failure);
    REQUIRE_THROWS_AS(replace_file(folder.path(), "", "x"), Failure);
}

TEST_CASE("killed at any moment, the old or the new file stands whole", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    // Large, so that a half written one would be seen; every version tells by its first letter which it is.
    auto const version = [](int n) { return std::string(200'000, static_cast<char>('a' + n % 26)); };
    write_file(file, version(0));
    int kills = 0;
    for (int round = 0; round < 60; ++round) {
        auto const child = ::fork();
        REQUIRE(child >= 0);
        if (child == 0) {
            for (int n = 0;; ++n) {
                auto const now = contents(file);
                try {
                    replace_file(file, now, version(now[0] - 'a' + 1 + n));
                } catch (...) {
                    ::_exit(1);
                }
            }
        }
        ::usleep(static_cast<useconds_t>(500 + round * 331));
        ::kill(child, SIGKILL);
        int status = 0;
        REQUIRE(::waitpid(child, &status, 0) == child);
        kills += WIFSIGNALED(status) ? 1 : 0;
        auto const now = contents(file);
        REQUIRE(now.size() == 200'000);
        REQUIRE(now == std::string(200'000, now[0]));
        for (auto const& name : folder.names()) { // the kept ones too
            if (name.starts_with("shed.before")) REQUIRE(contents(folder / name).size() == 200'000);
            if (name != "shed.toml") fs::remove(folder / name);
        }
    }
    REQUIRE(kills == 60);
}
