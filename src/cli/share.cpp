// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/share.h"

#include "units/failure.h"

#include <fmt/format.h>

#include <filesystem>
#include <vector>

namespace legwork {

namespace fs = std::filesystem;

namespace {

bool lies_in(fs::path const& file, fs::path const& folder) {
    auto const relative = file.lexically_relative(folder);
    return !relative.empty() && *relative.begin() != "..";
}

std::vector<fs::path> places(std::string const& name) {
    std::error_code failed;
    auto const program = fs::read_symlink("/proc/self/exe", failed);
    std::vector<fs::path> found;
    if (!failed) found.push_back((program.parent_path() / LEGWORK_SHARE_FROM_BIN / name).lexically_normal());
    if (!failed && lies_in(program, LEGWORK_BUILD_FOLDER)) found.push_back(fs::path(LEGWORK_SOURCE_FOLDER) / name);
    found.push_back(fs::path(LEGWORK_SHARE_INSTALLED) / name);
    return found;
}

} // namespace

std::string share_folder(std::string const& name) {
    std::string looked;
    for (auto const& folder : places(name)) {
        std::error_code failed;
        if (fs::is_directory(folder, failed)) return folder.string();
        looked += (looked.empty() ? "" : ", ") + folder.string();
    }
    throw Failure(fmt::format("the folder \"{}\" that comes with legwork is missing; install it anew (looked at {})",
                              name, looked));
}

} // namespace legwork
