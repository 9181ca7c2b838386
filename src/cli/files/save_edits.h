// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// `--write`: what a command found into the job file, in place.
#pragma once

#include "cli/session.h"
#include "job/write.h"
#include "propose/propose.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

struct Rewrite {
    bool asked = false;
    int changes = 0;
    std::string file, before;   // `before` is empty when there was nothing to change
    std::optional<Session> now; // the job as written
};

// The values that differ from the file's, as TOML: 7 for a full space, "7b" in quotes for a half.
std::vector<Edit> spaces_to_save(Building const& building, Plan const& plan);

// `what` as in "cannot put the spaces into it". Throws Failure when it cannot be written, or when the file was changed
// since it was read.
Rewrite save_edits(Session const& session, std::vector<Edit> const& edits, std::string_view what);
Rewrite save_spaces(Session const& session, Plan const& plan);
// What is proposed, nothing of circuits where something is to be found out first.
Rewrite save_sizes(Session const& session, std::vector<Proposal> const& proposed);

} // namespace legwork
