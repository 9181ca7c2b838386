// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The order of steps is the promise: the new bytes are on the disk under a name of their own, then the old bytes under
// theirs, then one rename swaps the file. Each step alone leaves a whole file under the person's name.

#include "output/replace.h"

#include "output/draft.h"
#include "output/files.h"
#include "units/failure.h"

#include <filesystem>

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

// "shed.toml", 1 -> "shed.before.toml"; 2 -> "shed.before-2.toml". A name without an ending gets ".toml" as well.
fs::path before_path(fs::path const& file, int n) {
    auto const ending = file.has_extension() ? file.extension().string() : ".toml";
    return file.parent_path() / (file.stem().string() + ".before" + (n > 1 ? "-" + std::to_string(n) : "") + ending);
}

bool stands(fs::path const& path) {
    struct stat there {};
    return ::lstat(path.c_str(), &there) == 0;
}

void rename_or_throw(fs::path const& from, fs::path const& to) {
    if (::rename(from.c_str(), to.c_str()) != 0) throw Failure(cannot("write", to.string(), errno));
}

// So that a power cut cannot undo the renames.
void flush_folder(fs::path const& folder) {
    Descriptor const opened(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (opened.open()) ::fsync(opened.number());
}

void fill(Draft& draft, std::string_view bytes, struct stat const& old) {
    draft.write(bytes);
    draft.keep(old);
    draft.flush();
}

bool holds(fs::path const& file, std::string_view bytes) {
    std::string why;
    auto const now = read_file(file.string(), bytes.size(), why);
    return now && *now == bytes;
}

void make_way(fs::path const& file) {
    int free = 1;
    while (stands(before_path(file, free))) ++free;
    for (int n = free; n > 1; --n) rename_or_throw(before_path(file, n - 1), before_path(file, n));
}

} // namespace

Replaced replace_file(std::string const& path, std::string_view old_bytes, std::string_view new_bytes) {
    std::error_code failed;
    auto const file = fs::canonical(path, failed);
    if (failed) throw Failure(cannot("write", path, failed.value()));
    // Two runs at once take turns; the second then finds the file changed.
    Descriptor const lock(::open(file.c_str(), O_RDONLY | O_CLOEXEC));
    struct stat old {};
    if (!lock.open() || ::fstat(lock.number(), &old) != 0) throw Failure(cannot("write", path, errno));
    if (!S_ISREG(old.st_mode)) throw Failure("cannot write " + path + ": it is not an ordinary file");
    if (::access(file.c_str(), W_OK) != 0) throw Failure(cannot("write", path, errno)); // marked as not to be written
    while (::flock(lock.number(), LOCK_EX) != 0 && errno == EINTR) {
    }

    Draft next(file, path), kept(file, path);
    fill(next, new_bytes, old);
    fill(kept, old_bytes, old);
    if (!holds(file, old_bytes)) return {false, file.string(), ""};
    make_way(file);
    auto const before = before_path(file, 1);
    kept.rename_to(before);
    flush_folder(file.parent_path());
    if (!holds(file, old_bytes)) return {false, file.string(), before.string()};
    next.rename_to(file);
    flush_folder(file.parent_path());
    return {true, file.string(), before.string()};
}

} // namespace legwork
