// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/files.h"

#include "output/draft.h"
#include "units/failure.h"

#include <filesystem>

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace legwork {

namespace fs = std::filesystem;

namespace {

void make_parents(std::string const& path) {
    auto const parent = fs::path(path).parent_path();
    std::error_code failed;
    if (!parent.empty()) fs::create_directories(parent, failed);
    if (failed && !fs::is_directory(parent)) throw Failure(cannot("make the folder", parent.string(), failed.value()));
}

fs::path followed(std::string const& path) {
    std::error_code failed;
    auto real = fs::canonical(path, failed);
    return failed ? fs::path(path) : real;
}

} // namespace

void write_file(std::string const& path, std::string_view bytes) {
    if (path.empty()) throw Failure("cannot write a file without a name");
    make_parents(path);
    auto const target = followed(path);
    struct stat old {};
    bool const replaces = ::stat(target.c_str(), &old) == 0;
    if (replaces && S_ISDIR(old.st_mode)) throw Failure(cannot("write", path, EISDIR));
    if (replaces && !S_ISREG(old.st_mode)) throw Failure("cannot write " + path + ": it is not an ordinary file");
    Draft draft(target, path);
    draft.write(bytes);
    if (replaces) draft.keep(old);
    draft.rename_to(target);
}

bool write_new_file(std::string const& path, std::string_view bytes) {
    if (path.empty()) throw Failure("cannot write a file without a name");
    struct stat there {};
    if (::lstat(path.c_str(), &there) == 0) return false;
    make_parents(path);
    Draft draft(path, path);
    draft.write(bytes);
    return draft.link_to(path);
}

std::optional<std::string> read_file(std::string const& path, std::size_t limit, std::string& why) {
    bool const standard_input = path == "-";
    Descriptor const opened(standard_input ? -1 : ::open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY));
    if (!standard_input && !opened.open()) return why = reason(errno), std::nullopt;
    int const from = standard_input ? STDIN_FILENO : opened.number();
    std::string bytes(limit + 1, '\0');
    std::size_t have = 0;
    while (have < bytes.size()) {
        auto const got = ::read(from, bytes.data() + have, bytes.size() - have);
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return why = reason(errno), std::nullopt;
        if (got == 0) break;
        have += static_cast<std::size_t>(got);
    }
    bytes.resize(have);
    return bytes;
}

void write_all(int descriptor, std::string_view bytes, std::string const& name) {
    while (!bytes.empty()) {
        auto const put = ::write(descriptor, bytes.data(), bytes.size());
        if (put < 0 && errno == EINTR) continue;
        if (put < 0) throw Failure(cannot("write", name, errno));
        bytes.remove_prefix(static_cast<std::size_t>(put));
    }
}

} // namespace legwork
