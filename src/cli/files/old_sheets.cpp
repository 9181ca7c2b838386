// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/files/old_sheets.h"

#include "output/files.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <filesystem>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kLargestSheet = std::size_t{64} * 1024 * 1024; // bytes; a long PDF has one or two million

// FNV-1a, 64 bits.
std::uint64_t digest(std::string_view bytes) {
    std::uint64_t sum = 0xCBF29CE484222325;
    for (char const c : bytes) sum = (sum ^ static_cast<unsigned char>(c)) * 0x100000001B3;
    return sum;
}

bool is_named_like(std::string const& name, std::set<std::string> const& sheets, std::set<std::string> const& formats) {
    auto const ends = [&](std::string const& format) { return name.ends_with("." + format); };
    auto const begins = [&](std::string const& sheet) {
        return name.starts_with(sheet + "-") || name.starts_with(sheet + ".");
    };
    return std::ranges::any_of(formats, ends) && std::ranges::any_of(sheets, begins);
}

bool carries(std::string const& path, std::string const& mark, OldSheets& found) {
    std::string why;
    auto const bytes = read_file(path, kLargestSheet, why);
    if (!bytes) found.unknown.push_back(path + ": " + why);
    return bytes && bytes->find(mark) != std::string::npos;
}

// Links are not followed, and nothing else than an ordinary file is opened. False as well when it cannot be known.
bool is_plain(std::string const& path, OldSheets& found) {
    std::error_code failed;
    auto const is = fs::symlink_status(path, failed);
    if (is.type() == fs::file_type::none) found.unknown.push_back(path + ": " + failed.message());
    return fs::is_regular_file(is);
}

} // namespace

std::string job_mark(Building const& building, std::string const& file) {
    auto const name = !building.name.empty() ? "name " + building.name
                      : file == "-"          ? ""
                                             : "file " + fs::path(file).filename().string();
    return name.empty() ? "" : fmt::format("legwork-job-{:016x}", digest(name));
}

void find_pages_beyond(std::string const& folder, std::string const& stem, std::string const& format, int pages,
                       std::set<std::string> const& written, OldSheets& found) {
    for (int page = pages + 1;; ++page) {
        auto const path = (fs::path(folder) / fmt::format("{}-{}.{}", stem, page, format)).lexically_normal().string();
        if (!is_plain(path, found)) return;
        if (!written.contains(fs::path(path).filename().string())) found.beyond.push_back(path);
    }
}

void find_gone(std::string const& folder, std::string const& mark, std::set<std::string> const& sheets,
               std::set<std::string> const& formats, std::set<std::string> const& written, OldSheets& found) {
    if (mark.empty()) return;
    std::error_code failed;
    for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed)) {
        auto const name = at->path().filename().string(), path = at->path().lexically_normal().string();
        if (written.contains(name) || std::ranges::count(found.beyond, path) > 0) continue;
        if (is_named_like(name, sheets, formats) && is_plain(path, found) && carries(path, mark, found))
            found.gone.push_back(path);
    }
    if (failed) found.unknown.push_back(folder + ": " + failed.message());
    std::ranges::sort(found.gone);
}

} // namespace legwork
