// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cli/save_edits.h"

namespace legwork {

// For people, to `out`: each circuit with the sizes proposed, the reckoning line by line with its section, and what is
// to be found out; then what was written.
void list_proposals(Session const& session, std::vector<Proposal> const& proposed, Rewrite const& saved,
                    Streams& streams);

} // namespace legwork
