// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/files.h"

#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <csignal>
#include <filesystem>

#include <fcntl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace legwork;
namespace fs = std::filesystem;

namespace {

mode_t mode_of(std::string const& path) {
    struct stat there {};
    REQUIRE(::stat(path.c_str(), &there) == 0);
    return there.st_mode & 07777;
}

} // namespace

TEST_CASE("a file is written whole, parents made, and read back", "[output]") {
    TemporaryFolder const folder;
    auto const path = folder / "a/b/sheet.pdf";
    std::string const bytes("%PDF\0\n\xff end", 12);
    write_file(path, bytes);
    REQUIRE(contents(path) == bytes);
    write_file(path, "shorter");
    REQUIRE(contents(path) == "shorter");
    REQUIRE(folder.names("a/b") == std::vector<std::string>{"sheet.pdf"});
}

TEST_CASE("a new file gets what the umask leaves, a replaced one keeps its mode", "[output]") {
    TemporaryFolder const folder;
    auto const old_mask = ::umask(027);
    write_file(folder / "new", "x");
    ::umask(old_mask);
    REQUIRE(mode_of(folder / "new") == 0640);
    ::chmod((folder / "new").c_str(), 0604);
    write_file(folder / "new", "y");
    REQUIRE(mode_of(folder / "new") == 0604);
}

TEST_CASE("a link is replaced, never followed: it could lead to the job", "[output]") {
    TemporaryFolder const folder;
    write_file(folder / "job.toml", "job");
    fs::create_symlink("job.toml", folder / "labels.pdf");
    fs::create_symlink("nowhere", folder / "load.pdf");
    write_files({{folder / "labels.pdf", "new"}, {folder / "load.pdf", "new"}});
    REQUIRE(contents(folder / "job.toml") == "job");
    REQUIRE_FALSE(fs::is_symlink(folder / "labels.pdf"));
    REQUIRE(contents(folder / "labels.pdf") == "new");
    REQUIRE(contents(folder / "load.pdf") == "new");
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml", "labels.pdf", "load.pdf"});
}

TEST_CASE("only ordinary files are ever replaced, and the reason is told", "[output]") {
    TemporaryFolder const folder;
    fs::create_directory(folder / "taken");
    REQUIRE_THROWS_WITH(write_file(folder / "taken", "x"), Contains("taken") && Contains("directory"));
    REQUIRE(::mkfifo((folder / "pipe").c_str(), 0600) == 0);
    REQUIRE_THROWS_WITH(write_file(folder / "pipe", "x"), Contains("not an ordinary file"));
    write_file(folder / "plain", "x");
    REQUIRE_THROWS_WITH(write_file(folder / "plain/below", "x"), Contains("cannot make the folder"));
    REQUIRE_THROWS_AS(write_file("", "x"), Failure);
    REQUIRE(contents(folder / "plain") == "x");
}

TEST_CASE("a disk that fills up midway leaves the old file and nothing beside it", "[output]") {
    // A limit on file size stands in for the full disk: the same call fails, midway, with an error of the system.
    TemporaryFolder const folder;
    write_file(folder / "sheet.pdf", "old");
    auto const child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        std::signal(SIGXFSZ, SIG_IGN);
        rlimit const limit{4096, 4096};
        ::setrlimit(RLIMIT_FSIZE, &limit);
        try {
            write_file(folder / "sheet.pdf", std::string(100'000, 'x'));
        } catch (Failure const&) {
            ::_exit(7);
        }
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFEXITED(status));
    REQUIRE(WEXITSTATUS(status) == 7);
    REQUIRE(contents(folder / "sheet.pdf") == "old");
    REQUIRE(folder.names() == std::vector<std::string>{"sheet.pdf"});
}

TEST_CASE("a full device is told", "[output]") {
    int const full = ::open("/dev/full", O_WRONLY | O_CLOEXEC);
    REQUIRE(full >= 0);
    REQUIRE_THROWS_WITH(write_all(full, "x", "standard output"),
                        Contains("standard output") && Contains("No space left"));
    ::close(full);
}

TEST_CASE("a new file never takes the place of another, not even of a dangling link", "[output]") {
    TemporaryFolder const folder;
    REQUIRE(write_new_file(folder / "job.toml", "mine"));
    REQUIRE_FALSE(write_new_file(folder / "job.toml", "other"));
    REQUIRE(contents(folder / "job.toml") == "mine");
    fs::create_symlink("nowhere", folder / "link");
    REQUIRE_FALSE(write_new_file(folder / "link", "x"));
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml", "link"});
}

TEST_CASE("reading stops one byte past the limit, and tells why it cannot", "[output]") {
    TemporaryFolder const folder;
    write_file(folder / "ten", "0123456789");
    std::string why;
    REQUIRE(read_file(folder / "ten", 10, why) == "0123456789");
    REQUIRE(read_file(folder / "ten", 4, why) == "01234");
    REQUIRE(read_file("/dev/zero", 100, why)->size() == 101);
    REQUIRE_FALSE(read_file(folder / "none", 10, why));
    REQUIRE(why == "No such file or directory");
    REQUIRE_FALSE(read_file(folder.path(), 10, why));
    REQUIRE(why == "Is a directory");
}

TEST_CASE("a panel's name becomes part of a file's name", "[output]") {
    auto const [name, stem] = GENERATE(table<std::string, std::string>({
        {"Main", "Main"},
        {"Sub panel, north", "Sub-panel-north"},
        {"  ..//etc/passwd  ", "etc-passwd"},
        {"Été 2", "Ete-2"},
        {"Atelier d'été n° 1", "Atelier-d-ete-n-1"},
        {"Straße Æ", "Strasse-AE"},
        {"", "panel"},
        {"---", "panel"},
        {"\xd7\xa9\xd7\x9c", "panel"},
        {"\xc3", "panel"},
        {"a\xf0\x9f\x94\x8c"
         "b",
         "a-b"},
    }));
    CAPTURE(name);
    REQUIRE(file_stem(name) == stem);
    REQUIRE(file_stem(std::string(5000, 'x')).size() == 100);
}
