// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/folder.h"

#include "units/failure.h"

#include <vector>

#include <fcntl.h>

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

void make_folders(fs::path const& path) {
    if (path.empty()) return;
    std::error_code failed;
    std::vector<fs::path> missing;
    for (auto at = path; !at.empty() && !fs::exists(at, failed); at = at.parent_path()) missing.push_back(at);
    fs::create_directories(path, failed);
    if (failed && !fs::is_directory(path)) throw Failure(cannot("make the folder", path.string(), failed.value()));
    for (auto const& made : missing) Folder(made.parent_path()).flush();
}

} // namespace legwork
