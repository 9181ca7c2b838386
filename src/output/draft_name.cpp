// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/draft_name.h"

#include "output/files.h"

#include <charconv>

#include <unistd.h>

namespace legwork {

namespace {

constexpr std::string_view kPrefix = ".legwork-";
// With all that stands before it, within the shortest limit of a file system that is in use (143 bytes).
constexpr std::size_t kMostOfTarget = 60;

bool is_hexadecimal(std::string_view word) {
    return !word.empty() && word.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

template <class Number>
bool reads(std::string_view word, Number& number) {
    auto const [end, error] = std::from_chars(word.data(), word.data() + word.size(), number);
    return error == std::errc() && end == word.data() + word.size();
}

// Up to the next "-", which goes as well.
std::string_view next_part(std::string_view& rest) {
    auto const part = rest.substr(0, rest.find('-'));
    rest.remove_prefix(std::min(rest.size(), part.size() + 1));
    return part;
}

std::string read_boot() {
    std::string why;
    auto const id = read_file("/proc/sys/kernel/random/boot_id", 64, why);
    auto const first = id ? id->substr(0, 8) : "";
    return is_hexadecimal(first) ? first : "0";
}

} // namespace

std::string const& this_boot() {
    static std::string const boot = read_boot();
    return boot;
}

std::string cut_target(std::string_view target) { return std::string(target.substr(0, kMostOfTarget)); }

std::string draft_name(std::uint64_t inode, int n, std::string_view target) {
    return std::string(kPrefix) + this_boot() + '-' + std::to_string(::getpid()) + '-' + std::to_string(inode) + '-' +
           std::to_string(n) + '-' + cut_target(target);
}

std::optional<DraftName> read_draft_name(std::string_view name) {
    if (!name.starts_with(kPrefix)) return std::nullopt;
    name.remove_prefix(kPrefix.size());
    DraftName read;
    int number = 0;
    read.boot = next_part(name);
    if (!is_hexadecimal(read.boot) || !reads(next_part(name), number)) return std::nullopt;
    if (name.empty()) return DraftName{}; // .legwork-PID-N, as they once were
    if (!reads(next_part(name), read.inode) || !reads(next_part(name), number) || name.empty()) return std::nullopt;
    read.target = name;
    return read;
}

} // namespace legwork
