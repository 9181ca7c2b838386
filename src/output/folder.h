// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A folder in which names are changed. For output/ only.
#pragma once

#include "output/descriptor.h"

#include <filesystem>
#include <string>

namespace legwork {

class Folder {
public:
    // Opened at once, so that no want of descriptors can keep it from the disk later. Throws Failure.
    explicit Folder(std::filesystem::path path);

    std::filesystem::path const& path() const { return path_; }
    std::filesystem::path operator/(std::string const& name) const { return path_ / name; }
    // To the disk, so that a power cut cannot undo the changes of names. Throws Failure. A folder that may be written
    // to but not read, and a file system that knows no such thing, are left to themselves.
    void flush() const;
    // The same after the last change of a name: the Failure says that `written` stands all the same.
    void flush_written(std::string const& written) const;

private:
    std::filesystem::path path_;
    Descriptor opened_;
};

// Makes the folder and those above it, and brings them to the disk. Throws Failure.
void make_folders(std::filesystem::path const& path);

} // namespace legwork
