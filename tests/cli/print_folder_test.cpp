// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder that a print leaves: of one job and one revision, and what is not is told.

#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"

#include <chrono>
#include <filesystem>
#include <map>

namespace fs = std::filesystem;
using Names = std::vector<std::string>;

namespace {

std::string with(std::string text, std::string const& old, std::string const& now) {
    for (auto at = text.find(old); at != std::string::npos; at = text.find(old, at + now.size()))
        text.replace(at, old.size(), now);
    return text;
}

Names lines_about(std::string const& told, std::string const& words) {
    Names found;
    for (std::size_t at = 0; at < told.size();) {
        auto const end = std::min(told.find('\n', at), told.size());
        if (auto const line = told.substr(at, end - at); line.find(words) != std::string::npos) found.push_back(line);
        at = end + 1;
    }
    return found;
}

} // namespace

TEST_CASE("sheets of a panel that has another name now are told, in every format", "[cli][print]") {
    TemporaryFolder const folder;
    auto const job = folder / "job.toml", out = folder / "out";
    auto const print = [&](std::vector<std::string> more = {}) {
        std::vector<std::string> words{"print", job,        "--out", out,        "--format",
                                       "pdf",   "--format", "svg",   "--format", "png"};
        words.insert(words.end(), more.begin(), more.end());
        auto const called = call(words);
        CAPTURE(called.out, called.err);
        REQUIRE(called.status == 0);
        return lines_about(called.err, "earlier print of this job");
    };
    legwork::write_file(job, small_job());
    REQUIRE(print().empty());
    REQUIRE(print().empty()); // the same again is nothing old
    legwork::write_file(job, with(small_job(), "\"Main\"", "\"House\""));
    auto const told = print();
    CAPTURE(told);
    REQUIRE(told.size() == 8); // the directory and the load calculation of two pages, in three formats
    for (auto const* name : {"directory-Main.pdf", "directory-Main-1.svg", "directory-Main-1.png", "load-Main.pdf",
                             "load-Main-1.svg", "load-Main-1.png", "load-Main-2.svg", "load-Main-2.png"})
        REQUIRE(std::ranges::any_of(told, [&](auto const& line) { return line.find(name) != std::string::npos; }));
    REQUIRE(fs::exists(folder / "out/directory-Main.pdf")); // told, not taken away
    REQUIRE(print({"--sheet", "labels"}).empty());          // of what was not asked for nothing is said
    REQUIRE(print({"--sheet", "directory"}).size() == 3);
}

TEST_CASE("sheets of another job, and files of other names, are nobody's old pages", "[cli][print]") {
    TemporaryFolder const folder;
    auto const out = folder / "out";
    legwork::write_file(folder / "other.toml",
                        with(with(small_job(), "Ridge hut", "Valley hut"), "\"Main\"", "\"Valley\""));
    legwork::write_file(folder / "job.toml", small_job());
    REQUIRE(call({"print", folder / "other.toml", "--out", out}).status == 0);
    legwork::write_file(folder / "out/directory-Old.pdf", "%PDF of a print before sheets carried a mark");
    fs::create_symlink("directory-Valley.pdf", folder / "out/directory-Link.pdf");
    REQUIRE(call({"print", folder / "job.toml", "--out", out}).err.empty());
    // A copy under a name that is no sheet's.
    fs::copy_file(folder / "out/directory-Main.pdf", folder / "out/for the inspector.pdf");
    REQUIRE(call({"print", folder / "job.toml", "--out", out}).err.empty());
    fs::copy_file(folder / "out/directory-Main.pdf", folder / "out/directory-Attic.pdf");
    REQUIRE_THAT(call({"print", folder / "job.toml", "--out", out}).err, Contains("directory-Attic.pdf"));
}

TEST_CASE("a sheet is never written over the job, by whatever name", "[cli][print]") {
    TemporaryFolder const folder;
    auto const job = folder / "labels.pdf"; // a job may be called anything
    legwork::write_file(job, small_job());
    auto const refused = call({"print", job, "--out", folder.path()});
    REQUIRE(refused.status == legwork::exit_not_written);
    REQUIRE_THAT(refused.err, Contains("it is the job file itself"));
    fs::create_hard_link(job, folder / "job.toml");
    REQUIRE(call({"print", folder / "job.toml", "--out", folder.path()}).status == legwork::exit_not_written);
    REQUIRE(folder.names() == Names{"job.toml", "labels.pdf"});
    fs::remove(job);
    fs::create_symlink("job.toml", job);
    REQUIRE(call({"print", folder / "job.toml", "--out", folder.path()}).status == 0);
    REQUIRE(contents(folder / "job.toml") == small_job());
    REQUIRE(contents(job).starts_with("%PDF-"));
    REQUIRE_FALSE(fs::is_symlink(job));
}

TEST_CASE("a print that cannot write one sheet writes none", "[cli][print]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job());
    REQUIRE(call({"print", folder / "job.toml", "--out", folder / "out"}).status == 0);
    auto const old = contents(folder / "out/labels.pdf");
    fs::remove(folder / "out/tape-notes.pdf");
    fs::create_directory(folder / "out/tape-notes.pdf");
    legwork::write_file(folder / "job.toml", with(small_job(), "Bunk room", "Other room"));
    auto const called = call({"print", folder / "job.toml", "--out", folder / "out"});
    REQUIRE(called.status == legwork::exit_not_written);
    REQUIRE_THAT(called.err, Contains("tape-notes.pdf: Is a directory"));
    REQUIRE(contents(folder / "out/labels.pdf") == old);
}

TEST_CASE("print killed at any moment leaves whole sheets, and the next one no strays", "[cli][print][process]") {
    TemporaryFolder const folder;
    auto const job = folder / "job.toml", out = folder / "out";
    auto const revised = with(small_job(), "Bunk room", "Other room");
    std::map<std::string, std::string> before, after;
    auto const started = std::chrono::steady_clock::now();
    for (auto* sheets : {&before, &after}) {
        legwork::write_file(job, sheets == &before ? small_job() : revised);
        REQUIRE(run_process({"print", job, "--out", out}).status == 0);
        for (auto const& name : folder.names("out")) (*sheets)[name] = contents(out + "/" + name);
    }
    auto const whole_run = (std::chrono::steady_clock::now() - started) / 2;
    int unlike = 0;
    for (auto const& [name, bytes] : before) unlike += after[name] != bytes ? 1 : 0;
    REQUIRE(unlike > 4);
    constexpr int rounds = 30;
    for (int n = 0; n < rounds; ++n) {
        legwork::write_file(job, small_job());
        REQUIRE(call({"print", job, "--out", out}).status == 0);
        legwork::write_file(job, revised);
        kill_process({"print", job, "--out", out}, whole_run * n / (rounds - 8));
        for (auto const& [name, bytes] : before) {
            auto const now = contents(out + "/" + name);
            REQUIRE((now == bytes || now == after[name]));
        }
        REQUIRE(call({"print", job, "--out", out}).status == 0);
        REQUIRE(folder.names("out").size() == before.size());
    }
}
