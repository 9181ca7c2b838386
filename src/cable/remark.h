// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tape that a conductor's colour and job ask for under one code.
#pragma once

#include "cable/conductors.h"

namespace legwork {

// Sets remark, tape, why and reference of a conductor that has its job. `colors`: all insulated ones of its cable, so
// that the tape differs from each.
void remark(Conductor& c, std::vector<std::string> const& colors, CableTask const& task, CodeBook const& book);

} // namespace legwork
