// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/folder.h"

#include "units/failure.h"

#include <fcntl.h>
#include <sys/stat.h>

namespace legwork {

namespace fs = std::filesystem;

Folder::Folder(fs::path path)
    : path_(path.empty() ? fs::path(".") : std::move(path)),
      opened_(::open(path_.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC)) {
    if (!opened_.open() && errno != EACCES) throw Failure(cannot("open the folder", path_.string(), errno));
}

void Folder::flush() const {
    if (!opened_.open() || ::fsync(opened_.number()) == 0) return;
    if (errno == EINVAL || errno == ENOTSUP || errno == ENOSYS) return;
    throw Failure(cannot("bring to the disk the folder", path_.string(), errno));
}

void Folder::flush_written(std::string const& written) const {
    try {
        flush();
    } catch (Failure const& e) {
        throw Failure(written + " is written, but a power cut may still undo that: " + e.what());
    }
}

void make_folders(fs::path const& path) {
    struct stat there {};
    bool const stands = path.empty() || ::stat(path.c_str(), &there) == 0;
    int const error = stands ? ENOTDIR : errno;
    if (path.empty() || (stands && S_ISDIR(there.st_mode))) return;
    if (error != ENOENT) throw Failure(cannot("make the folder", path.string(), error));
    make_folders(path.parent_path());
    if (::mkdir(path.c_str(), 0777) != 0 && errno != EEXIST)
        throw Failure(cannot("make the folder", path.string(), errno));
    Folder(path.parent_path()).flush();
}

} // namespace legwork
