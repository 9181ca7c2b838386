// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "building/building.h"
#include "job/job.h"

namespace legwork {

// The building of a job, in one pass after reading. Total: what a name does not lead to is left empty.
Building resolve(typed::Job const& job);

} // namespace legwork
