// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// All that stands in a folder, as a value.
#pragma once

#include <map>
#include <string>

#include <sys/types.h>

namespace faults {

// A file with what a person set on it.
struct Standing {
    std::string bytes;
    mode_t mode = 0640;
    uid_t owner = 0;
    gid_t group = 0;
    std::string note; // the extended attribute user.note, where the file system has such
    bool operator==(Standing const&) const = default;
};

using Folder = std::map<std::string, Standing>; // by name, "sheets/labels.pdf" for one in a folder below

Folder standing_in(std::string const& folder);
void lay_out(std::string const& folder, Folder const& wanted); // and nothing else

// Somebody else's file with a note on it: what a replaced file must not lose. The caller's own where it is not root.
Standing somebodys(std::string bytes);

// A draft of legwork's: hidden, never to be found after a run that ended by itself.
bool is_stray(std::string const& name);
bool is_kept(std::string const& name); // "shed.before.toml" and its like

} // namespace faults
