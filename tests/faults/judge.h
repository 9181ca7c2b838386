// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What is promised of every run, whatever goes wrong in it.
#pragma once

#include "scene.h"

#include <string>
#include <vector>

namespace faults {

using Complaints = std::vector<std::string>;

// Each file old or new and whole; no draft left by a run that ended by itself; exit status 0 only where all is done as
// undisturbed; else 3, or 2 with nothing touched, the cause told; sheets that stayed old beside new ones named.
Complaints judged(Scene const& scene, Fault const& fault, Ran const& ran, Folder const& now);

// After the next run, undisturbed, all stands as if nothing had gone wrong, and nothing else does. Plays that run.
Complaints judged_next(Scene const& scene, std::string const& folder);

bool has_text(Folder const& folder, std::string const& text); // under any name that is not a draft's

std::string listed(Complaints const& complaints);

} // namespace faults
