// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/descriptor.h"

#include <system_error>

namespace legwork {

std::string reason(int error) { return std::error_code(error, std::generic_category()).message(); }

std::string cannot(std::string const& act, std::string const& path, int error) {
    return "cannot " + act + " " + path + ": " + reason(error);
}

void keep_owner_and_mode(int descriptor, struct stat const& old) {
    // The owner first: changing it drops the set-id bits of the mode.
    if (::fchown(descriptor, old.st_uid, old.st_gid) != 0 &&
        ::fchown(descriptor, static_cast<uid_t>(-1), old.st_gid) != 0)
        errno = 0; // not ours to give away: the file is then the caller's, as any new file
    if (::fchmod(descriptor, old.st_mode & 07777) != 0) errno = 0; // a file system without modes
}

} // namespace legwork
