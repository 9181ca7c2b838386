// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Results for other programs. The keys are stable; what is not known is null.
#pragma once

#include "cli/problems.h"
#include "cli/session.h"

#include <nlohmann/json.hpp>

namespace legwork {

using Json = nlohmann::ordered_json;

Json problems_json(FileProblems const& found);
Json findings_json(Session const& session);
Json plan_json(Job const& job, Plan const& plan);
void write_json(Json const& value, Streams& streams);

} // namespace legwork
