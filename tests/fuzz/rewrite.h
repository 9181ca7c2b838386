// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What `--write` promises of a job file, with no disk.
#pragma once

#include "cli/session.h"
#include "job/job.h"
#include "job/write.h"

#include <string>
#include <vector>

namespace fuzz {

// Puts the edits in, as a command does, and opens the job again. Promised: it can be done; outside the edited values
// every byte is the same; read again it is exactly `wanted`, where what is written is no longer asked for.
legwork::Session rewritten(legwork::Session const& before, std::vector<legwork::Edit> const& edits,
                           legwork::typed::Job const& wanted);

} // namespace fuzz
