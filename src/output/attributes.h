// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a file is beside its bytes: owner, group, mode, access list, other extended attributes. For output/ only.
#pragma once

#include <string>

namespace legwork {

// Gives `to`, a draft that nobody else can read yet, what `from` has. Throws Failure with the way out where the owner,
// the group, the mode, the access list or an attribute of the user's cannot be kept: the file would then be somebody
// else's, or open to somebody else. Those that are the system's or the file system's to give (security.*, trusted.*
// and the like) are kept as far as it lets us; checksums of the old bytes are not. `shown` is the name that failures
// tell.
void keep_attributes(int to, int from, std::string const& shown);

} // namespace legwork
