// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A file in the making, in the folder of the one it will become. Where the system can, it has no name until the last
// moment, so that a kill leaves nothing; else, and in that moment, a name of draft_name.h and a lock by which sweep.h
// knows that it is alive. For output/ only.
#pragma once

#include "output/folder.h"

#include <string>
#include <string_view>

#include <sys/stat.h>

namespace legwork {

class Draft {
public:
    // Opens an empty draft that becomes `target` in the folder, with the mode less what the umask takes away. `shown`
    // is the name that failures tell. Every step throws Failure.
    Draft(Folder const& folder, std::string target, std::string shown, mode_t mode);
    ~Draft(); // gone again, unless it was put in place
    Draft(Draft const&) = delete;
    Draft& operator=(Draft const&) = delete;

    void write(std::string_view bytes);
    void keep(int old); // what the file of that descriptor is beside its bytes (attributes.h)
    void begin_flush(); // without waiting for it: many drafts then go to the disk together
    void flush();       // to the disk, so that a power cut after the rename finds all of it

    bool put_new();  // at the target; false when something stands there already
    void put_over(); // at the target, in the place of whatever name stands there

    // For an exchange: under a name of its own (`name()` then says which), which tells the draft's inode.
    void take_name();
    std::filesystem::path const& name() const { return name_; }
    bool stands_at(std::filesystem::path const& path) const;
    bool still_holds(std::string_view bytes) const; // false also when it cannot be read

private:
    void open_named(mode_t mode);
    void become_named();
    int give_name(std::filesystem::path const& name); // zero, EEXIST or another error
    void refused(int error);                          // by give_name: tries to be named in another way, or throws

    Folder const& folder_;
    std::string target_, shown_;
    std::filesystem::path name_; // empty: none yet
    Descriptor file_;
    struct stat facts_ {};
};

} // namespace legwork
