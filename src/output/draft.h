// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A file in the making beside the one it will become; gone again unless it was put in place. For output/ only.
#pragma once

#include "output/descriptor.h"

#include <filesystem>
#include <string>
#include <string_view>

namespace legwork {

class Draft {
public:
    // Opens an empty draft in the target's folder. `shown` is the name that failures tell. Every step throws Failure.
    Draft(std::filesystem::path const& target, std::string shown);
    ~Draft();
    Draft(Draft const&) = delete;
    Draft& operator=(Draft const&) = delete;

    void write(std::string_view bytes);
    void keep(struct stat const& old) { keep_owner_and_mode(file_.number(), old); }
    void flush(); // to the disk, so that a power cut after the rename finds all of it
    void rename_to(std::filesystem::path const& target);
    bool link_to(std::filesystem::path const& target); // false when something stands there already

private:
    void close();

    std::filesystem::path path_;
    std::string shown_;
    Descriptor file_;
    bool in_place_ = false;
};

} // namespace legwork
