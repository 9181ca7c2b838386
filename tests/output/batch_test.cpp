// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Several files at once: a folder of sheets is of one revision, or it is told which of them are not.

#include "output/files.h"
#include "system_calls.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <filesystem>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace legwork;
namespace fs = std::filesystem;
using Names = std::vector<std::string>;

TEST_CASE("nothing is in its place before all drafts are on the disk, and the folder is last", "[output][batch]") {
    TemporaryFolder const folder;
    write_file(folder / "b.pdf", "old b");
    Names calls;
    {
        BeforeCalls const hook([&](SystemCall const& call) {
            if (call.name == "fsync") calls.emplace_back("disk");
            if (call.name == "linkat" || call.name == "rename")
                if (auto const to = fs::path(call.to).filename().string(); !to.starts_with(".")) calls.push_back(to);
            return 0;
        });
        write_files({{folder / "a.pdf", "a"}, {folder / "b.pdf", "b"}, {folder / "c.pdf", "c"}});
    }
    REQUIRE(calls == Names{"disk", "disk", "disk", "a.pdf", "b.pdf", "c.pdf", "disk"});
    REQUIRE(contents(folder / "b.pdf") == "b");
}

TEST_CASE("a draft that fails leaves all files as they were", "[output][batch]") {
    TemporaryFolder const folder;
    write_file(folder / "a.pdf", "old a");
    write_file(folder / "b.pdf", "old b");
    auto const number = GENERATE(0, 1, 2);
    {
        BeforeCalls const hook(fail("fsync", number, ENOSPC));
        REQUIRE_THROWS_WITH(write_files({{folder / "a.pdf", "a"}, {folder / "b.pdf", "b"}, {folder / "c.pdf", "c"}}),
                            Contains("No space left on device") && !Contains("new already"));
    }
    REQUIRE(contents(folder / "a.pdf") == "old a");
    REQUIRE(contents(folder / "b.pdf") == "old b");
    REQUIRE(folder.names() == Names{"a.pdf", "b.pdf"});
}

TEST_CASE("what fails in the last moment is told with what is new and what is old", "[output][batch]") {
    TemporaryFolder const folder;
    for (auto const* name : {"a.pdf", "b.pdf", "c.pdf"}) write_file(folder / name, "old");
    {
        BeforeCalls const hook(fail("rename", 1, EIO));
        REQUIRE_THROWS_WITH(write_files({{folder / "a.pdf", "new"},
                                         {folder / "b.pdf", "new"},
                                         {folder / "c.pdf", "new"},
                                         {folder / "d.pdf", "new"}}),
                            Contains("b.pdf: Input/output error; new already: " + (folder / "a.pdf") +
                                     "; still the old ones: " + (folder / "b.pdf") + ", " + (folder / "c.pdf") +
                                     "; not there yet: " + (folder / "d.pdf")));
    }
    REQUIRE(contents(folder / "a.pdf") == "new");
    REQUIRE(contents(folder / "b.pdf") == "old");
    REQUIRE(contents(folder / "c.pdf") == "old");
    REQUIRE(folder.names() == Names{"a.pdf", "b.pdf", "c.pdf"});
}

TEST_CASE("what stands in the way of one is told before any is written", "[output][batch]") {
    TemporaryFolder const folder;
    write_file(folder / "a.pdf", "old");
    fs::create_directory(folder / "z.pdf");
    REQUIRE_THROWS_WITH(write_files({{folder / "a.pdf", "new"}, {folder / "z.pdf", "new"}}),
                        Contains("Is a directory"));
    REQUIRE_THROWS_WITH(write_files({{folder / "a.pdf", "new"}, {folder / "none/", "new"}}),
                        Contains("name of a folder"));
    REQUIRE(contents(folder / "a.pdf") == "old");
    REQUIRE(folder.names() == Names{"a.pdf", "z.pdf"});
}

TEST_CASE("one file is spared by any of its names", "[output][batch]") {
    TemporaryFolder const folder;
    auto const job = folder / "job.toml";
    write_file(job, "job");
    fs::create_hard_link(job, folder / "labels.pdf");
    fs::create_directory_symlink(".", folder / "there");
    fs::create_symlink("job.toml", folder / "load.pdf");
    auto const [path, named] = GENERATE(table<std::string, std::string>({
        {"labels.pdf", "job.toml"},
        {"there/labels.pdf", "job.toml"},
        {"job.toml", "labels.pdf"},
        {"load.pdf", "load.pdf"}, // the link by which it was named
    }));
    REQUIRE_THROWS_WITH(write_files({{folder / "other.pdf", "x"}, {folder / path, "x"}}, folder / named),
                        Contains("it is the job file itself"));
    REQUIRE(contents(job) == "job");
    REQUIRE(contents(folder / "load.pdf") == "job");
    REQUIRE_FALSE(fs::exists(folder / "other.pdf"));
    write_files({{folder / "load.pdf", "sheet"}}, job); // a link to it by another name is only replaced
    REQUIRE(contents(job) == "job");
    fs::remove(folder / "load.pdf");
    fs::create_symlink("job.toml", folder / "load.pdf");
}

TEST_CASE("more files than descriptors at first", "[output][batch]") {
    TemporaryFolder const folder;
    std::vector<FileToWrite> files;
    for (int n = 0; n < 300; ++n) files.push_back({folder / std::to_string(n), "x"});
    auto const child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        rlimit const limit{64, 1024};
        ::setrlimit(RLIMIT_NOFILE, &limit);
        try {
            write_files(files);
        } catch (...) {
            ::_exit(7);
        }
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WEXITSTATUS(status) == 0);
    REQUIRE(folder.names().size() == 300);
}
