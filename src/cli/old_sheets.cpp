// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "cli/old_sheets.h"

#include "output/files.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>
#include <filesystem>

namespace legwork {

namespace fs = std::filesystem;

namespace {

constexpr std::size_t kLargestSheet = 64 * 1024 * 1024; // bytes; a long PDF has one or two million

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

bool carries(fs::path const& path, std::string const& mark) {
    std::string why;
    auto const bytes = read_file(path.string(), kLargestSheet, why);
    return bytes && bytes->find(mark) != std::string::npos;
}

} // namespace

std::string job_mark(Job const& job, std::string const& file) {
    auto const name = !job.name.empty() ? "name " + job.name
                      : file == "-"     ? ""
                                        : "file " + fs::path(file).filename().string();
    return name.empty() ? "" : fmt::format("legwork-job-{:016x}", digest(name));
}

std::vector<std::string> pages_beyond(std::string const& folder, std::string const& stem, std::string const& format,
                                      int pages) {
    std::vector<std::string> found;
    std::error_code failed;
    for (int page = pages + 1;; ++page) {
        auto const path = fs::path(folder) / fmt::format("{}-{}.{}", stem, page, format);
        if (!fs::exists(path, failed)) return found;
        found.push_back(path.lexically_normal().string());
    }
}

std::vector<std::string> sheets_no_longer_printed(std::string const& folder, std::string const& mark,
                                                  std::set<std::string> const& sheets,
                                                  std::set<std::string> const& formats,
                                                  std::set<std::string> const& written) {
    std::vector<std::string> found;
    std::error_code failed;
    if (mark.empty()) return found;
    for (fs::directory_iterator at(folder, failed), end; !failed && at != end; at.increment(failed)) {
        auto const name = at->path().filename().string();
        std::error_code unknown;
        if (written.contains(name) || !is_named_like(name, sheets, formats)) continue;
        if (!fs::is_regular_file(at->symlink_status(unknown)) || !carries(at->path(), mark)) continue;
        found.push_back(at->path().lexically_normal().string());
    }
    std::ranges::sort(found);
    return found;
}

} // namespace legwork
