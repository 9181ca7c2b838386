// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/sweep.h"

#include <ctime>
#include <optional>

#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::time_t kOldEnough = 24 * 60 * 60; // seconds; a live draft is written within a minute

Descriptor open_to_lock(fs::path const& path) {
    constexpr int how = O_NOFOLLOW | O_NONBLOCK | O_NOCTTY | O_CLOEXEC;
    Descriptor opened(::open(path.c_str(), O_RDWR | how)); // some network disks lock only what may be written
    return opened.open() ? std::move(opened) : Descriptor(::open(path.c_str(), O_RDONLY | how));
}

std::optional<Stray> stray(fs::path const& path) {
    auto const name = read_draft_name(path.filename().string());
    struct stat there {};
    if (!name || ::lstat(path.c_str(), &there) != 0 || !S_ISREG(there.st_mode)) return std::nullopt;
    Stray found{path, *name, false, open_to_lock(path)};
    struct stat held {};
    if (!found.file.open() || ::flock(found.file.number(), LOCK_EX | LOCK_NB) != 0 ||
        ::fstat(found.file.number(), &held) != 0)
        return std::nullopt;
    // Its run may have exchanged it before it ended: who holds the lock knows that nothing changes any more.
    if (::lstat(path.c_str(), &there) != 0 || there.st_ino != held.st_ino || there.st_dev != held.st_dev)
        return std::nullopt;
    bool const locks_are_seen = name->boot == this_boot() && name->boot != "0";
    if (!locks_are_seen && std::time(nullptr) - held.st_mtime < kOldEnough) return std::nullopt;
    found.is_draft = name->inode == 0 || name->inode == held.st_ino;
    return found;
}

} // namespace

void each_stray(Folder const& folder, std::function<void(Stray const&)> const& act) {
    std::error_code failed;
    for (fs::directory_iterator at(folder.path(), failed), end; !failed && at != end; at.increment(failed))
        if (auto const one = stray(at->path())) act(*one);
}

void sweep(Folder const& folder) {
    each_stray(folder, [](Stray const& s) {
        if (s.is_draft) ::unlink(s.path.c_str());
    });
}

} // namespace legwork
