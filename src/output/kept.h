// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The earlier texts of a file, beside it. For output/ only.
#pragma once

#include "output/draft.h"

#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace legwork {

// "shed.toml", 1 -> "shed.before.toml"; 2 -> "shed.before-2.toml"; "shed" -> "shed.before". No two files share one.
std::filesystem::path before_path(std::filesystem::path const& file, int n = 1);
// Moves a text that somebody saved while legwork wrote to "shed.meanwhile.toml", or "shed.meanwhile-2.toml", ...; says
// where it stands now: where it was, when that fails (`error` is then not zero).
std::filesystem::path move_aside(std::filesystem::path const& text, std::filesystem::path const& file, int& error);

// Whether the file holds exactly these bytes. Throws Failure when it cannot be read: that is no answer.
bool holds(std::filesystem::path const& file, std::string_view bytes, std::string const& shown);

// A copy of the old text as before_path(file), the earlier ones moved on by one; all of it undone unless it is told to
// stay. Where the newest of them holds that text already, it serves.
class KeptCopy {
public:
    KeptCopy(Folder const& folder, std::filesystem::path file, std::string shown);
    ~KeptCopy();
    KeptCopy(KeptCopy const&) = delete;
    KeptCopy& operator=(KeptCopy const&) = delete;

    // Drafts the copy, with what the old file is beside its bytes. Throws Failure.
    void draft(std::string_view bytes, int old);
    void put(); // and brings the folder to the disk. Throws Failure.
    void stay() { moved_.clear(), is_put_ = false; }

private:
    void make_way();

    Folder const& folder_;
    std::filesystem::path file_;
    std::string shown_;
    std::optional<Draft> copy_; // nothing: it stood there already
    std::vector<std::pair<std::filesystem::path, std::filesystem::path>> moved_;
    bool is_put_ = false;
};

} // namespace legwork
