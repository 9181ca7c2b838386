// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// `balance --write`: the plan's spaces into the job file, in place.
#pragma once

#include "cli/session.h"
#include "job/write.h"

#include <optional>
#include <string>
#include <vector>

namespace legwork {

struct Saved {
    bool asked = false;
    int changes = 0;
    std::string file, before;   // `before` is empty when the file had these spaces already
    std::optional<Session> now; // the job as written
};

// The values that differ from the file's, as TOML: 7 for a full space, "7b" in quotes for a half.
std::vector<Edit> spaces_to_save(Job const& job, Plan const& plan);

// Throws Failure when it cannot be written, or when the file was changed since it was read.
Saved save_spaces(Session const& session, Plan const& plan);

} // namespace legwork
