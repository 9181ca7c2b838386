// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Disks that can do less than the system's own: what works there works as ever, and the same is promised.
// Source: the manual pages of the calls (EPERM of link(2), EOPNOTSUPP and EISDIR of open(2) with O_TMPFILE, EINVAL of
// renameat2(2) "the filesystem does not support one of the flags", ENOTSUP of xattr(7), ENOLCK of flock(2)).

#include "walk.h"

#include "catch.h"

#include <iostream>

using namespace faults;

namespace {

// The scene with files that this disk can hold.
Scene without_notes(Scene scene) {
    for (auto* const folder : {&scene.before, &scene.after})
        for (auto& [name, file] : *folder) file.note.clear();
    return scene;
}

Lacks const kMemoryStick{
    {Kind::link, EPERM}, {Kind::nameless, EOPNOTSUPP}, {Kind::exchange, EINVAL}, {Kind::attribute, EOPNOTSUPP}};

void check(Walk const& walk) {
    std::cout << walk.report() << '\n';
    CHECK(walk.complaints().empty());
}

} // namespace

TEST_CASE("a disk without links, nameless files, exchange, attributes or locks: all is written as ever",
          "[faults][poor]") {
    auto const lacks = GENERATE(Lacks{{Kind::link, EPERM}}, Lacks{{Kind::nameless, EOPNOTSUPP}},
                                Lacks{{Kind::nameless, EISDIR}}, Lacks{{Kind::exchange, EINVAL}},
                                Lacks{{Kind::exchange, ENOSYS}}, Lacks{{Kind::attribute, EOPNOTSUPP}}, kMemoryStick);
    for (auto const& scene : scenes()) {
        TemporaryFolder const folder;
        auto const poor = without_notes(scene);
        lay_out(folder.path(), poor.before);
        auto const ran = run(folder.path(), poor.words, {.lacks = lacks});
        CAPTURE(poor.name, lacks.size(), static_cast<unsigned>(lacks.begin()->first), ran.err);
        CHECK(ran.status == 0);
        CHECK(ran.out == poor.good.out);
        CHECK(standing_in(folder.path()) == poor.after);
    }
}

TEST_CASE("a memory stick, killed at any call", "[faults][poor]") {
    for (auto const& scene : {balance_write(), print_over_older(), new_job()}) {
        Walk walk(without_notes(scene), kMemoryStick);
        walk_kills(walk);
        check(walk);
    }
}

TEST_CASE("a memory stick, whatever call fails", "[faults][poor]") {
    auto tried = is_long_walk() ? scenes() : std::vector{balance_write(), new_job()};
    for (auto const& scene : tried) {
        Walk walk(without_notes(scene), kMemoryStick);
        walk_refusals(walk);
        walk_short(walk);
        check(walk);
    }
}
