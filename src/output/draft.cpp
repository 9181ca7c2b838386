// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/draft.h"

#include "output/files.h"
#include "units/failure.h"

#include <fcntl.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

// Short, so that it fits wherever the target's own name does.
fs::path free_name_beside(fs::path const& target) {
    for (int n = 0;; ++n) {
        auto path = target.parent_path() / (".legwork-" + std::to_string(::getpid()) + "-" + std::to_string(n));
        struct stat there {};
        if (::lstat(path.c_str(), &there) != 0) return path;
    }
}

} // namespace

Draft::Draft(fs::path const& target, std::string shown)
    : path_(free_name_beside(target)),
      shown_(std::move(shown)),
      file_(::open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666)) { // less what the umask takes away
    if (!file_.open()) throw Failure(cannot("write", shown_, errno));
}

Draft::~Draft() {
    if (!in_place_) ::unlink(path_.c_str());
}

void Draft::write(std::string_view bytes) { write_all(file_.number(), bytes, shown_); }

void Draft::flush() {
    if (::fsync(file_.number()) != 0) throw Failure(cannot("write", shown_, errno));
}

void Draft::close() {
    // Some file systems tell of a full disk only here.
    if (!file_.close()) throw Failure(cannot("write", shown_, errno));
}

void Draft::rename_to(fs::path const& target) {
    close();
    if (::rename(path_.c_str(), target.c_str()) != 0) throw Failure(cannot("write", shown_, errno));
    in_place_ = true;
}

bool Draft::link_to(fs::path const& target) {
    close();
    if (::link(path_.c_str(), target.c_str()) == 0) return true;
    if (errno == EEXIST) return false;
    // A file system without links (a memory stick): the name is taken first, then the draft put on it.
    Descriptor const claim(::open(target.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666));
    if (!claim.open() && errno == EEXIST) return false;
    if (!claim.open()) throw Failure(cannot("write", shown_, errno));
    rename_to(target);
    return true;
}

} // namespace legwork
