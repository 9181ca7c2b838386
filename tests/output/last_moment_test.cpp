// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What an editor, a failing system or a kill does between two steps of a replacement.

#include "output/files.h"
#include "output/replace.h"
#include "system_calls.h"
#include "temporary_folder.h"
#include "units/failure.h"

#include "catch.h"

#include <csignal>
#include <cstring>
#include <filesystem>
#include <fstream>

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

using namespace legwork;
namespace fs = std::filesystem;
using Names = std::vector<std::string>;

namespace {

enum class Editor { renames, writes_in_place };

void save(std::string const& file, std::string const& text, Editor editor) {
    auto const at = editor == Editor::renames ? file + ".tmp" : file;
    std::ofstream(at, std::ios::trunc | std::ios::binary) << text;
    if (editor == Editor::renames) fs::rename(at, file);
}

std::string failure_of(std::function<void()> const& act) {
    try {
        act();
    } catch (Failure const& e) {
        return e.what();
    }
    return "";
}

// In a child that is killed right before the `number`th call of that name.
void killed_before(std::string const& name, int number, std::function<void()> const& act) {
    auto const child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        BeforeCalls const hook([&](SystemCall const& call) {
            if (call.name == name && call.number == number) ::kill(::getpid(), SIGKILL);
            return 0;
        });
        try {
            act();
        } catch (...) {
        }
        ::_exit(0);
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
}

} // namespace

TEST_CASE("a file that cannot be read again is not called changed: the cause is told", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    auto const error = GENERATE(EMFILE, EIO, EACCES);
    auto const look = GENERATE(0, 1); // before the exchange and after it
    BeforeCalls const hook([&, seen = 0](SystemCall const& call) mutable {
        bool const reads = call.name == "open" && (call.flags & O_ACCMODE) == O_RDONLY &&
                           (call.flags & O_DIRECTORY) == 0 && call.path.find("shed") != std::string::npos &&
                           call.path.find("before") == std::string::npos;
        return reads && seen++ == look ? error : 0;
    });
    REQUIRE_THAT(failure_of([&] { replace_file(file, "one", "two"); }),
                 Contains("cannot read " + file + " again: ") && Contains(std::strerror(error)));
    REQUIRE(contents(file) == "one");
    REQUIRE(folder.names() == Names{"shed.toml"});
}

TEST_CASE("a save in the last moment stands, and nothing else is left", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    write_file(folder / "shed.before.toml", "zero");
    auto const editor = GENERATE(Editor::renames, Editor::writes_in_place);
    auto const theirs = GENERATE(std::string("theirs"), std::string("one"), std::string());
    int saves = 0;
    BeforeCalls const hook([&](SystemCall const& call) {
        if (call.is_exchange() && saves++ == 0) save(file, theirs, editor);
        return 0;
    });
    auto const replaced = replace_file(file, "one", "two");
    REQUIRE(saves > 0);
    REQUIRE(replaced.done == (theirs == "one")); // saved, and nothing changed
    REQUIRE(contents(file) == (replaced.done ? "two" : theirs));
    if (replaced.done) return;
    REQUIRE(contents(folder / "shed.before.toml") == "zero");
    REQUIRE(folder.names() == Names{"shed.before.toml", "shed.toml"});
}

TEST_CASE("a save at any call of a replacement stands somewhere", "[output][replace]") {
    auto const editor = GENERATE(Editor::renames, Editor::writes_in_place);
    bool saved = true;
    int done = 0, left = 0;
    for (int at = 0; saved; ++at) {
        TemporaryFolder const folder;
        auto const file = folder / "shed.toml";
        write_file(file, "one");
        saved = false;
        std::optional<ReplacedFile> replaced;
        {
            BeforeCalls const hook([&, n = 0](SystemCall const&) mutable {
                if (n++ == at) save(file, "theirs", editor), saved = true;
                return 0;
            });
            replaced = replace_file(file, "one", "two");
        }
        ++(replaced->done ? done : left);
        auto const names = folder.names();
        CAPTURE(at, names, replaced->done);
        if (saved) REQUIRE(std::ranges::any_of(names, [&](auto const& n) { return contents(folder / n) == "theirs"; }));
        if (!replaced->done) REQUIRE(names == Names{"shed.toml"});
        if (replaced->done) REQUIRE(names == Names{"shed.before.toml", "shed.toml"});
    }
    REQUIRE(done >= 2); // without a save, and with one after the exchange
    REQUIRE(left >= 5);
}

TEST_CASE("when the exchange back meets another save, every text is kept and told", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    auto const editor = GENERATE(Editor::renames, Editor::writes_in_place);
    BeforeCalls const hook([&, saves = 0](SystemCall const& call) mutable {
        if (call.is_exchange()) save(file, ++saves == 1 ? "first" : "second", editor);
        return 0;
    });
    auto const told = failure_of([&] { replace_file(file, "one", "two"); });
    REQUIRE_THAT(told, Contains("saved twice") && Contains("the earlier text stands in " + file) &&
                           Contains("the later one in " + (folder / "shed.meanwhile.toml")) &&
                           Contains(folder / "shed.before.toml"));
    REQUIRE(contents(file) == "first");
    REQUIRE(contents(folder / "shed.meanwhile.toml") == "second");
    REQUIRE(contents(folder / "shed.before.toml") == "one");
    REQUIRE(folder.names() == Names{"shed.before.toml", "shed.meanwhile.toml", "shed.toml"});
}

TEST_CASE("an exchange back that fails loses nothing", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    BeforeCalls const hook([&, exchanges = 0](SystemCall const& call) mutable {
        if (!call.is_exchange()) return 0;
        if (++exchanges == 1) return save(file, "theirs", Editor::renames), 0;
        return EIO;
    });
    REQUIRE_THAT(failure_of([&] { replace_file(file, "one", "two"); }),
                 Contains("Input/output error") && Contains("that text stands in " + (folder / "shed.meanwhile.toml")));
    REQUIRE(contents(file) == "two");
    REQUIRE(contents(folder / "shed.meanwhile.toml") == "theirs");
    REQUIRE(contents(folder / "shed.before.toml") == "one");
}

TEST_CASE("where names cannot be exchanged, a rename does", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    auto const error = GENERATE(ENOSYS, EINVAL, EPERM);
    auto const saves = GENERATE(false, true);
    BeforeCalls const hook([&](SystemCall const& call) {
        if (call.name != "renameat2") return 0;
        if (call.is_exchange() && saves) save(file, "theirs", Editor::renames);
        return error;
    });
    auto const replaced = replace_file(file, "one", "two");
    REQUIRE(replaced.done != saves);
    REQUIRE(contents(file) == (saves ? "theirs" : "two"));
    REQUIRE(folder.names() == (saves ? Names{"shed.toml"} : Names{"shed.before.toml", "shed.toml"}));
    if (!saves) REQUIRE(contents(folder / "shed.before.toml") == "one");
}

TEST_CASE("whatever call fails, names and texts are as they were, however often it is tried", "[output][replace]") {
    auto const name = GENERATE(as<std::string>{}, "open", "fsync", "linkat", "rename", "renameat2");
    auto const error = GENERATE(EIO, ENOSPC);
    Names const before{"shed.before-2.toml", "shed.before.toml", "shed.toml"};
    int failed = 0, number = 0;
    for (bool reached = true; reached; ++number) {
        TemporaryFolder const folder;
        auto const file = folder / "shed.toml";
        write_file(folder / "shed.before-2.toml", "minus one");
        write_file(folder / "shed.before.toml", "zero");
        write_file(file, "one");
        for (int round = 0; round < 3; ++round) {
            bool met = false, done = false;
            std::string told;
            {
                BeforeCalls const hook([&](SystemCall const& call) {
                    met = met || (call.name == name && call.number == number);
                    return fail(name, number, error)(call);
                });
                told = failure_of([&] { done = replace_file(file, "one", "two").done; });
            }
            reached = met;
            CAPTURE(name, number, round, told, folder.names());
            if (done || contents(file) == "two") { // it got over it, or said that only the power could undo it
                REQUIRE((done || told.find("a power cut may still undo") != std::string::npos));
                REQUIRE(contents(folder / "shed.before.toml") == "one");
                REQUIRE(contents(folder / "shed.before-2.toml") == "zero");
                REQUIRE(contents(folder / "shed.before-3.toml") == "minus one");
                REQUIRE(folder.names().size() == 4);
                break;
            }
            ++failed;
            REQUIRE_THAT(told, Contains(std::strerror(error)));
            REQUIRE(folder.names() == before);
            REQUIRE(contents(file) == "one");
            REQUIRE(contents(folder / "shed.before.toml") == "zero");
            REQUIRE(contents(folder / "shed.before-2.toml") == "minus one");
        }
    }
    CAPTURE(name, number);
    REQUIRE((failed > 0 || name == "rename")); // the one rename that there is puts the file in the place of its copy
}

TEST_CASE("killed before any call, the next run leaves no strays and no second copy", "[output][replace]") {
    auto const nameless = GENERATE(true, false); // drafts: a file system with them or without
    auto const name = GENERATE(as<std::string>{}, "open", "fsync", "linkat", "rename", "renameat2", "unlink");
    int const calls = name == "open" || name == "fsync" ? 4 : 1;
    for (int number = 0; number < calls; ++number) {
        if (name == "linkat" && !nameless) continue;
        if (name == "unlink") continue; // none in a good run
        TemporaryFolder const folder;
        auto const file = folder / "shed.toml";
        write_file(file, "one");
        killed_before(name, number, [&] {
            if (nameless) replace_file(file, "one", "two");
            // The same with the one call refused that makes nameless drafts.
            BeforeCalls const hook([&](SystemCall const& call) {
                if (call.name == name && call.number == number) ::kill(::getpid(), SIGKILL);
                return (call.flags & O_TMPFILE) == O_TMPFILE && call.name == "open" ? EOPNOTSUPP : 0;
            });
            replace_file(file, "one", "two");
        });
        auto const after_kill = folder.names();
        CAPTURE(nameless, name, number, after_kill);
        auto const now = contents(file);
        REQUIRE((now == "one" || now == "two"));
        REQUIRE(replace_file(file, now, "three").done);
        REQUIRE(contents(file) == "three");
        REQUIRE(contents(folder / "shed.before.toml") == now);
        if (now == "two") REQUIRE(contents(folder / "shed.before-2.toml") == "one");
        REQUIRE(folder.names().size() == (now == "two" ? 3 : 2));
    }
}

TEST_CASE("a save before a kill in the moment of the exchange gets a name and is told", "[output][replace]") {
    TemporaryFolder const folder;
    auto const file = folder / "shed.toml";
    write_file(file, "one");
    auto const child = ::fork();
    REQUIRE(child >= 0);
    if (child == 0) {
        BeforeCalls const hook([&, exchanges = 0](SystemCall const& call) mutable {
            if (call.is_exchange() && ++exchanges == 1) save(file, "theirs", Editor::renames);
            if (call.is_exchange() && exchanges == 2) ::kill(::getpid(), SIGKILL);
            return 0;
        });
        replace_file(file, "one", "two");
    }
    int status = 0;
    REQUIRE(::waitpid(child, &status, 0) == child);
    REQUIRE(WIFSIGNALED(status));
    REQUIRE(contents(file) == "two");
    write_file(folder / "sheet.pdf", "x"); // another run in the folder leaves it alone
    auto const told = failure_of([&] { replace_file(file, "two", "three"); });
    REQUIRE_THAT(told, Contains("killed") && Contains(folder / "shed.meanwhile.toml"));
    REQUIRE(contents(file) == "two");
    REQUIRE(contents(folder / "shed.meanwhile.toml") == "theirs");
    REQUIRE(replace_file(file, "two", "three").done);
    REQUIRE(folder.names() ==
            Names{"shed.before-2.toml", "shed.before.toml", "shed.meanwhile.toml", "shed.toml", "sheet.pdf"});
}
