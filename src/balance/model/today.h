// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "balance/model/model.h"

namespace legwork {

// Says of each unit of the model what of today's layout may stay, and puts up the walls of what is held.
void judge_today(PanelModel& model, ModelOptions const& options);

} // namespace legwork
