// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// How drafts are named, so that a later run can tell whose they are. For output/ only.
//
//     .legwork-BOOT-PID-INODE-N-TARGET
//
// BOOT: the machine and its start, since processes and locks are known to one kernel only. INODE: of the draft; 0 while
// it is in the making. Another file under a name with an inode came there by an exchange: it is somebody's text.
// TARGET: what it was exchanged with, as far as it fits.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace legwork {

struct DraftName {
    std::string boot;
    std::uint64_t inode = 0;
    std::string target;
};

std::string draft_name(std::uint64_t inode, int n, std::string_view target);
std::optional<DraftName> read_draft_name(std::string_view name); // nothing: no draft of ours
std::string cut_target(std::string_view target);                 // as it stands in a name
std::string const& this_boot();                                  // "0" where the system does not say

} // namespace legwork
