// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a circuit's outlets are and where they stand, for the rules that judge by place.
#pragma once

#include "codebook/protection.h"
#include "job/job.h"

namespace legwork {

// From room, name, use and building; of a circuit that names no building, its panel's.
RoomPlaces places_of(Job const& job, Circuit const& circuit);
Outlets outlets_of(Job const& job, Circuit const& circuit);

} // namespace legwork
