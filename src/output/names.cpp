// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/names.h"

#include "output/descriptor.h"
#include "units/failure.h"

#include <cstdio>

#include <fcntl.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

int rename_with(fs::path const& from, fs::path const& to, unsigned flags) {
    return ::renameat2(AT_FDCWD, from.c_str(), AT_FDCWD, to.c_str(), flags) == 0 ? 0 : errno;
}

// Where the system cannot rename without replacing: a second name, then the first one away. Where it has no second
// names either (a memory stick): the name is taken by an empty file, and that is replaced.
int move_by_steps(fs::path const& from, fs::path const& to) {
    if (::link(from.c_str(), to.c_str()) == 0) {
        if (::unlink(from.c_str()) == 0) return 0;
        int const error = errno;
        ::unlink(to.c_str());
        return error;
    }
    if (errno == EEXIST) return EEXIST;
    Descriptor const claim(::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    if (!claim.open()) return errno;
    if (::rename(from.c_str(), to.c_str()) == 0) return 0;
    int const error = errno;
    ::unlink(to.c_str());
    return error;
}

} // namespace

bool has_no_exchange(int error) { return error == ENOSYS || error == EINVAL || error == ENOTSUP || error == EPERM; }

int exchange_names(fs::path const& one, fs::path const& other) { return rename_with(one, other, RENAME_EXCHANGE); }

int move_to_free_name(fs::path const& from, fs::path const& to) {
    int const error = rename_with(from, to, RENAME_NOREPLACE);
    return has_no_exchange(error) ? move_by_steps(from, to) : error;
}

std::optional<struct stat> looked_at(fs::path const& path) {
    struct stat there {};
    if (::lstat(path.c_str(), &there) == 0) return there;
    if (errno == ENOENT || errno == ENOTDIR) return std::nullopt;
    throw Failure(cannot("look at", path.string(), errno));
}

bool stands(fs::path const& path) { return looked_at(path).has_value(); }

} // namespace legwork
