// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "folder.h"

#include "temporary_folder.h"

#include <array>
#include <filesystem>
#include <fstream>
#include <stdexcept>

#include <sys/stat.h>
#include <sys/xattr.h>
#include <unistd.h>

namespace faults {

namespace fs = std::filesystem;

namespace {

constexpr auto kNote = "user.note";

bool has_notes() {
    static bool const has = [] {
        TemporaryFolder const folder;
        std::ofstream(folder / "tried") << "x";
        return ::setxattr((folder / "tried").c_str(), kNote, "x", 1, 0) == 0;
    }();
    return has;
}

std::string note_on(std::string const& path) {
    std::array<char, 64> note{};
    auto const size = ::getxattr(path.c_str(), kNote, note.data(), note.size());
    return size > 0 ? std::string(note.data(), static_cast<std::size_t>(size)) : "";
}

void put(std::string const& path, Standing const& file) {
    fs::create_directories(fs::path(path).parent_path());
    std::ofstream(path, std::ios::binary) << file.bytes;
    bool done = file.note.empty() || ::setxattr(path.c_str(), kNote, file.note.data(), file.note.size(), 0) == 0;
    done = ::chown(path.c_str(), file.owner, file.group) == 0 && done;
    done = ::chmod(path.c_str(), file.mode) == 0 && done;
    if (!done) throw std::runtime_error("cannot lay out " + path);
}

} // namespace

Folder standing_in(std::string const& folder) {
    Folder found;
    for (auto const& entry : fs::recursive_directory_iterator(folder)) {
        struct stat file {};
        if (::lstat(entry.path().c_str(), &file) != 0 || S_ISDIR(file.st_mode)) continue;
        found[entry.path().lexically_relative(folder).string()] = {contents(entry.path().string()),
                                                                   file.st_mode & 07777, file.st_uid, file.st_gid,
                                                                   note_on(entry.path().string())};
    }
    return found;
}

void lay_out(std::string const& folder, Folder const& wanted) {
    for (auto const& entry : fs::directory_iterator(folder)) fs::remove_all(entry.path());
    for (auto const& [name, file] : wanted) put(folder + "/" + name, file);
}

Standing somebodys(std::string bytes) {
    bool const root = ::geteuid() == 0;
    return {std::move(bytes), 0640, root ? 1234 : ::geteuid(), root ? 1234 : ::getegid(),
            has_notes() ? "spring inspection" : ""};
}

bool is_stray(std::string const& name) { return fs::path(name).filename().string().starts_with(".legwork"); }

bool is_kept(std::string const& name) { return name.find(".before") != std::string::npos; }

} // namespace faults
