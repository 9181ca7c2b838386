// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/share.h"

#include "units/failure.h"

#include <fmt/format.h>

#include <filesystem>
#include <system_error>
#include <vector>

namespace legwork {

namespace fs = std::filesystem;

namespace {

[[maybe_unused]] bool lies_in(fs::path const& file, fs::path const& folder) {
    auto const relative = file.lexically_relative(folder);
    return !relative.empty() && *relative.begin() != "..";
}

// What is not there needs no reason.
std::string why(std::error_code const& failed) {
    bool const missing = failed == std::errc::no_such_file_or_directory || failed == std::errc::not_a_directory;
    return failed && !missing ? " (" + failed.message() + ")" : "";
}

std::vector<fs::path> places(std::string const& name, std::string& looked) {
    constexpr auto self = "/proc/self/exe";
    std::error_code failed;
    auto const program = fs::read_symlink(self, failed);
    if (failed) looked = self + why(failed);
    std::vector<fs::path> found;
    if (!failed) found.push_back((program.parent_path() / LEGWORK_SHARE_FROM_BIN / name).lexically_normal());
#ifdef LEGWORK_SOURCE_FOLDER // not in a package
    if (!failed && lies_in(program, LEGWORK_BUILD_FOLDER)) found.push_back(fs::path(LEGWORK_SOURCE_FOLDER) / name);
#endif
    found.push_back(fs::path(LEGWORK_SHARE_INSTALLED) / name);
    return found;
}

} // namespace

std::string share_folder(std::string const& name) {
    std::string looked;
    for (auto const& folder : places(name, looked)) {
        std::error_code failed;
        if (fs::is_directory(folder, failed)) return folder.string();
        looked += (looked.empty() ? "" : ", ") + folder.string() + why(failed);
    }
    throw Failure(fmt::format("the folder \"{}\" that comes with legwork was not found; install it anew (looked at {})",
                              name, looked));
}

} // namespace legwork
