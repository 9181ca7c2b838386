// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What killed runs left behind. For output/ only.
#pragma once

#include "output/descriptor.h"
#include "output/draft_name.h"
#include "output/folder.h"

#include <functional>

namespace legwork {

// A file under a draft's name whose run is gone: its lock could be had, and is held.
struct Stray {
    std::filesystem::path path;
    DraftName name;
    bool is_draft = false; // false: it came there by an exchange, a text of somebody's
    Descriptor file;
};
void each_stray(Folder const& folder, std::function<void(Stray const&)> const& act);

// Takes the drafts of dead runs away. A draft lives as long as its lock is held; where locks may not be seen (another
// machine on a network disk, an earlier start of this one) it also has to be a day old. What came by an exchange stays.
// What cannot be taken away stays, too: that is no reason to write nothing.
void sweep(Folder const& folder);

} // namespace legwork
