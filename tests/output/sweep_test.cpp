// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/sweep.h"

#include "output/draft.h"
#include "output/files.h"
#include "system_calls.h"
#include "temporary_folder.h"

#include "catch.h"

#include <ctime>
#include <filesystem>

#include <fcntl.h>
#include <sys/stat.h>

using namespace legwork;
namespace fs = std::filesystem;
using Names = std::vector<std::string>;

namespace {

int no_nameless(SystemCall const& call) {
    return call.name == "open" && (call.flags & O_TMPFILE) == O_TMPFILE ? EOPNOTSUPP : 0;
}

void age(std::string const& path, int hours) {
    timespec const then{std::time(nullptr) - hours * 3600, 0};
    timespec const times[2]{then, then};
    REQUIRE(::utimensat(AT_FDCWD, path.c_str(), times, 0) == 0);
}

// A file as a run leaves it that is killed while its draft has a name.
std::string leave(TemporaryFolder const& folder, std::string const& target) {
    write_file(folder / "draft", "half");
    struct stat there {};
    REQUIRE(::stat((folder / "draft").c_str(), &there) == 0);
    auto const name = draft_name(there.st_ino, 0, target);
    fs::rename(folder / "draft", folder / name);
    return name;
}

} // namespace

TEST_CASE("a draft's name is read back", "[output][sweep]") {
    auto const name = draft_name(77, 3, "My shed, north-1.toml");
    auto const read = read_draft_name(name);
    REQUIRE(read);
    REQUIRE(read->boot == this_boot());
    REQUIRE(read->inode == 77);
    REQUIRE(read->target == "My shed, north-1.toml");
    REQUIRE(draft_name(18446744073709551615U, 999, std::string(255, 'x')).size() <= 143); // the shortest limit in use
    REQUIRE(read_draft_name(draft_name(1, 0, std::string(255, 'x')))->target == cut_target(std::string(255, 'x')));
    for (auto const* other :
         {".legwork", ".legwork-", ".legwork-1", ".legwork-my-notes", ".legwork-12-x", "legwork-1-2", ".legwork-1-2-3",
          ".legwork-1-2-3-4", ".legwork-1-2-3-4-", ".legwork-xyz-2-3-4-job"}) {
        CAPTURE(other);
        REQUIRE_FALSE(read_draft_name(other));
    }
}

TEST_CASE("drafts of dead runs are swept, and nothing else", "[output][sweep]") {
    TemporaryFolder const folder;
    auto const dead = leave(folder, "sheet.pdf");
    auto const exchanged = draft_name(1, 0, "shed.toml"); // another file than the name tells: somebody's text
    write_file(folder / exchanged, "theirs");
    write_file(folder / ".legwork-my-notes", "notes");
    fs::create_symlink(folder / "sheet.pdf", folder / draft_name(0, 7, "link"));
    fs::create_directory(folder / draft_name(0, 8, "folder"));
    write_file(folder / "sheet.pdf", "sheet");
    Names left{exchanged, draft_name(0, 7, "link"), draft_name(0, 8, "folder"), ".legwork-my-notes", "sheet.pdf"};
    std::ranges::sort(left);
    REQUIRE(folder.names() == left);
    REQUIRE(contents(folder / "sheet.pdf") == "sheet");
}

TEST_CASE("a live draft is not swept", "[output][sweep]") {
    TemporaryFolder const folder;
    Folder const here(folder.path());
    std::optional<BeforeCalls> hook;
    auto const nameless = GENERATE(true, false);
    if (!nameless) hook.emplace(no_nameless);
    Draft draft(here, "sheet.pdf", "sheet.pdf", 0600);
    draft.write("half of it");
    if (nameless) draft.take_name();
    hook.reset();
    auto const name = draft.name().string();
    age(name, 1000);
    sweep(here);
    REQUIRE(contents(name) == "half of it");
    REQUIRE(write_new_file(folder / "other.pdf", "x")); // another run
    REQUIRE(contents(name) == "half of it");
    draft.put_over();
    REQUIRE(folder.names() == Names{"other.pdf", "sheet.pdf"});
}

TEST_CASE("where locks may not be seen a draft also has to be a day old", "[output][sweep]") {
    TemporaryFolder const folder;
    // Of another machine, of an earlier start of this one, of a version that had no locks.
    auto const name = GENERATE(as<std::string>{}, ".legwork-0123abcd-17-0-0-sheet.pdf", ".legwork-0-17-0-0-sheet.pdf",
                               ".legwork-4711-0");
    write_file(folder / name, "half");
    sweep(Folder(folder.path()));
    REQUIRE(folder.names() == Names{name});
    age(folder / name, 23);
    sweep(Folder(folder.path()));
    REQUIRE(folder.names() == Names{name});
    age(folder / name, 25);
    sweep(Folder(folder.path()));
    REQUIRE(folder.names().empty());
}

TEST_CASE("a file system without nameless files, or that cannot name them, does as well", "[output][sweep]") {
    TemporaryFolder const folder;
    write_file(folder / "old.pdf", "old");
    ::chmod((folder / "old.pdf").c_str(), 0604);
    auto const refused = GENERATE(as<std::string>{}, "open", "linkat");
    {
        BeforeCalls const hook([&](SystemCall const& call) {
            return refused == "open" ? no_nameless(call) : call.name == "linkat" ? EPERM : 0;
        });
        write_files({{folder / "old.pdf", "new"}, {folder / "sheet.pdf", std::string(100'000, 'x')}});
        REQUIRE(write_new_file(folder / "job.toml", "job"));
        REQUIRE_FALSE(write_new_file(folder / "job.toml", "other"));
    }
    REQUIRE(contents(folder / "old.pdf") == "new");
    REQUIRE(contents(folder / "sheet.pdf") == std::string(100'000, 'x'));
    REQUIRE(contents(folder / "job.toml") == "job");
    REQUIRE(folder.names() == Names{"job.toml", "old.pdf", "sheet.pdf"});
    REQUIRE((fs::status(folder / "old.pdf").permissions() & fs::perms::mask) == static_cast<fs::perms>(0604));
}
