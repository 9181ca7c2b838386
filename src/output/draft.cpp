// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/draft.h"

#include "output/attributes.h"
#include "output/draft_name.h"
#include "output/files.h"
#include "output/names.h"
#include "units/failure.h"

#include <array>

#include <fcntl.h>
#include <sys/file.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

std::string way_to(int descriptor) { return "/proc/self/fd/" + std::to_string(descriptor); }

// Without a name, where the system can give it one later.
Descriptor open_nameless(Folder const& folder, mode_t mode) {
    Descriptor opened(::open(folder.path().c_str(), O_TMPFILE | O_RDWR | O_CLOEXEC, mode));
    if (opened.open() && ::access(way_to(opened.number()).c_str(), F_OK) != 0) return Descriptor(); // no /proc here
    return opened;
}

void copy_all(int from, int to, std::string const& shown) {
    std::array<char, 65536> piece{};
    for (off_t at = 0;;) {
        auto const got = ::pread(from, piece.data(), piece.size(), at);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) throw Failure(cannot("write", shown, errno));
        if (got == 0) return;
        write_all(to, {piece.data(), static_cast<std::size_t>(got)}, shown);
        at += got;
    }
}

} // namespace

Draft::Draft(Folder const& folder, std::string target, std::string shown, mode_t mode)
    : folder_(folder), target_(std::move(target)), shown_(std::move(shown)), file_(open_nameless(folder, mode)) {
    if (!file_.open()) {
        open_named(mode);
        return;
    }
    ::flock(file_.number(), LOCK_EX | LOCK_NB); // nobody else can have it
    if (::fstat(file_.number(), &facts_) != 0) throw Failure(cannot("write", shown_, errno));
}

Draft::~Draft() {
    // After an exchange a text of somebody else may stand under that name.
    if (!name_.empty() && stands_at(name_)) ::unlink(name_.c_str());
}

void Draft::open_named(mode_t mode) {
    for (int n = 0;; ++n) {
        auto const name = folder_ / draft_name(0, n, target_);
        Descriptor made(::open(name.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, mode));
        if (!made.open() && errno == EEXIST) continue;
        if (!made.open()) throw Failure(cannot("write", shown_, errno));
        // A sweeping run may be faster, between the two calls that make a locked file: it takes this one away.
        if (::flock(made.number(), LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK) continue;
        if (::fstat(made.number(), &facts_) != 0) {
            int const error = errno;
            ::unlink(name.c_str());
            throw Failure(cannot("write", shown_, error));
        }
        if (facts_.st_nlink == 0) continue;
        file_ = std::move(made);
        name_ = name;
        return;
    }
}

void Draft::write(std::string_view bytes) { write_all(file_.number(), bytes, shown_); }

void Draft::keep(int old) { keep_attributes(file_.number(), old, shown_); }

void Draft::begin_flush() { ::sync_file_range(file_.number(), 0, 0, SYNC_FILE_RANGE_WRITE); }

void Draft::flush() {
    if (::fsync(file_.number()) != 0) throw Failure(cannot("write", shown_, errno));
}

bool Draft::still_holds(std::string_view bytes) const {
    std::string now(bytes.size() + 1, '\0'); // one more tells a longer text
    std::size_t have = 0;
    while (have < now.size()) {
        auto const got = ::pread(file_.number(), now.data() + have, now.size() - have, static_cast<off_t>(have));
        if (got < 0 && errno == EINTR) continue;
        if (got <= 0) break;
        have += static_cast<std::size_t>(got);
    }
    return std::string_view(now).substr(0, have) == bytes;
}

bool Draft::stands_at(fs::path const& path) const {
    struct stat there {};
    return ::lstat(path.c_str(), &there) == 0 && there.st_ino == facts_.st_ino && there.st_dev == facts_.st_dev;
}

int Draft::give_name(fs::path const& name) {
    if (!name_.empty()) {
        int const error = move_to_free_name(name_, name);
        if (error == 0) name_ = name;
        return error;
    }
    // By way of /proc: to link a descriptor itself (AT_EMPTY_PATH) is a privilege.
    if (::linkat(AT_FDCWD, way_to(file_.number()).c_str(), AT_FDCWD, name.c_str(), AT_SYMLINK_FOLLOW) != 0)
        return errno;
    name_ = name;
    return 0;
}

void Draft::become_named() {
    Descriptor const nameless = std::move(file_);
    open_named(0600);
    copy_all(nameless.number(), file_.number(), shown_);
    keep_attributes(file_.number(), nameless.number(), shown_);
    flush();
}

void Draft::refused(int error) {
    // A file system that knows files without a name but cannot name them later.
    bool const has_no_links =
        error == EPERM || error == ENOTSUP || error == ENOENT || error == EXDEV || error == EMLINK;
    if (!name_.empty() || !has_no_links) throw Failure(cannot("write", shown_, error));
    become_named();
}

bool Draft::put_new() {
    for (auto const target = folder_ / target_;;) {
        int const error = give_name(target);
        if (error == EEXIST) return false;
        if (error == 0) return name_.clear(), true;
        refused(error);
    }
}

void Draft::take_name() {
    for (int n = 0;; ++n) {
        int const error = give_name(folder_ / draft_name(facts_.st_ino, n, target_));
        if (error == 0) return;
        if (error != EEXIST) refused(error);
    }
}

void Draft::put_over() {
    if (name_.empty()) take_name();
    if (::rename(name_.c_str(), (folder_ / target_).c_str()) != 0) throw Failure(cannot("write", shown_, errno));
    name_.clear();
}

} // namespace legwork
