// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the system gives too little of, or no right to: the same promises as for a single call that fails.

#include "judge.h"
#include "temporary_folder.h"

#include "catch.h"

#include <csignal>
#include <cstdlib>
#include <sched.h>

#include <sys/mount.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <unistd.h>

using namespace faults;

namespace {

void limit(int what, rlim_t to) {
    rlimit const both{to, to};
    if (::setrlimit(static_cast<__rlimit_resource>(what), &both) != 0) ::_exit(97);
}

// From <linux/capability.h>.
constexpr unsigned long kChown = 0, kPassModes = 1, kReadAnyway = 2, kOwnerAnyway = 3;

// Root without its right to pass modes by is bound by them like anybody, and can still reach the program.
void without(std::initializer_list<unsigned long> capabilities) {
    if (::geteuid() != 0) return;
    for (auto const c : capabilities)
        if (::prctl(PR_CAPBSET_DROP, c, 0, 0, 0) != 0) ::_exit(97);
}
void bound_by_modes() { without({kPassModes, kReadAnyway}); }

// The files of a scene as the caller's own, without notes: for disks and rights that others' would not be laid out
// with.
Scene plain(Scene scene) {
    for (auto* const folder : {&scene.before, &scene.after})
        for (auto& [name, file] : *folder) file = {file.bytes, 0644, ::geteuid(), ::getegid(), ""};
    return scene;
}

// After a run in which `error` was met over and over.
void check_promises(Scene const& scene, int error, Ran const& ran, std::string const& folder) {
    auto const complaints = judged(scene, {.error = error}, ran, standing_in(folder));
    CAPTURE(scene.name, ran.status, ran.err);
    INFO(listed(complaints));
    CHECK(complaints.empty());
}

bool has_mount(std::string const& folder, std::string const& size) {
    return ::mount("legwork-test", folder.c_str(), "tmpfs", 0, ("size=" + size + ",mode=0755").c_str()) == 0;
}

} // namespace

TEST_CASE("a limit on the size of files (ulimit -f) is told, and no signal ends the run", "[faults][limits]") {
    auto const size = GENERATE(0U, 100U, 600U, 4096U, 12000U, 20000U, 40000U, 1000000U);
    for (auto const& scene : scenes()) {
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [size] { limit(RLIMIT_FSIZE, size); });
        INFO("at most " << size << " bytes");
        check_promises(scene, EFBIG, ran, folder.path());
        CHECK((size < 1000000 || ran.status == 0));
        CHECK((size > 100 || ran.status == 3));
    }
}

TEST_CASE("too few files may be open", "[faults][limits]") {
    auto const most = GENERATE(range<rlim_t>(5, 12));
    for (auto const& original : scenes()) {
        auto const scene = plain(original);
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [most] { limit(RLIMIT_NOFILE, most); });
        INFO("at most " << most);
        check_promises(scene, EMFILE, ran, folder.path());
        CHECK((most < 11 || ran.status == 0));
    }
}

TEST_CASE("a folder that may not be written to", "[faults][limits]") {
    for (auto const& original : scenes()) {
        auto const scene = plain(original);
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        ::chmod(folder.path().c_str(), 0555);
        auto const ran = run(folder.path(), scene.words, {}, bound_by_modes);
        ::chmod(folder.path().c_str(), 0755);
        if (ran.status == 97) {
            WARN("the rights of root cannot be dropped here: not tried");
            return;
        }
        check_promises(scene, EACCES, ran, folder.path());
        CHECK(ran.status == 3);
    }
}

TEST_CASE("a job that may not be written, or read", "[faults][limits]") {
    auto const [mode, status] = GENERATE(table<mode_t, int>({{0444, 3}, {0000, 2}}));
    for (auto const& original : {balance_write(), propose_write()}) {
        auto const scene = plain(original);
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const job = folder / "job.toml";
        ::chmod(job.c_str(), mode);
        auto const ran = run(folder.path(), scene.words, {}, bound_by_modes);
        struct stat left {};
        CHECK((::stat(job.c_str(), &left) == 0 && (left.st_mode & 07777) == mode));
        ::chmod(job.c_str(), 0644); // so that we may read it, too
        if (ran.status == 97) {
            WARN("the rights of root cannot be dropped here: not tried");
            return;
        }
        check_promises(scene, EACCES, ran, folder.path());
        CHECK(ran.status == status);
    }
}

TEST_CASE("somebody else's job stays theirs, or is left as it is", "[faults][limits]") {
    if (::geteuid() != 0) {
        WARN("only root can lay out somebody else's file: not tried");
        return;
    }
    for (auto const& original : {balance_write(), propose_write()}) {
        auto scene = original;
        for (auto* const folder : {&scene.before, &scene.after})
            for (auto& [name, file] : *folder) file.mode = 0666;
        TemporaryFolder const folder;
        lay_out(folder.path(), scene.before);
        auto const ran = run(folder.path(), scene.words, {}, [] { without({kChown, kOwnerAnyway}); });
        if (ran.status == 97) {
            WARN("the rights of root cannot be dropped here: not tried");
            return;
        }
        auto const now = standing_in(folder.path());
        CAPTURE(scene.name, ran.status, ran.err);
        CHECK((ran.status == 0 ? now == scene.after : ran.status == 3 && now == scene.before));
        CHECK((ran.status == 0 || ran.err.find("job.toml") != std::string::npos));
    }
}

TEST_CASE("a disk that is full after so many pages", "[faults][limits]") {
    if (::unshare(CLONE_NEWNS) != 0 || ::mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) != 0) {
        WARN("no disk of our own can be mounted here: not tried");
        return;
    }
    for (auto const& original : scenes()) {
        auto const scene = plain(original);
        TemporaryFolder const folder;
        Ran ran;
        ran.status = 3;
        unsigned pages = 1, full = 0; // of 4096 bytes, as tmpfs counts; the first is its own
        for (; ran.status != 0 && pages < 2000; pages += 1 + pages / 8) {
            if (!has_mount(folder.path(), std::to_string(4096 * pages))) {
                WARN("no disk of our own can be mounted here: not tried");
                return;
            }
            bool fits = true;
            try {
                lay_out(folder.path(), scene.before);
                fits = standing_in(folder.path()) == scene.before;
            } catch (std::exception const&) {
                fits = false;
            }
            if (fits) {
                ran = run(folder.path(), scene.words);
                full += ran.status == 0 ? 0 : 1;
                INFO(pages << " pages");
                check_promises(scene, ENOSPC, ran, folder.path());
            }
            ::umount(folder.path().c_str());
        }
        CAPTURE(scene.name);
        CHECK(ran.status == 0);
        CHECK(full > 0);
    }
}
