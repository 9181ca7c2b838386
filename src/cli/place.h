// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where in the file a finding points.
#pragma once

#include "job/places.h"
#include "rules/finding.h"

namespace legwork {

Place place_of(Places const& places, Where const& where);

} // namespace legwork
