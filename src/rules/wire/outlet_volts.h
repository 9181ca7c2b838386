// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "cable/run.h"
#include "codebook/stock/receptacles.h"

#include <vector>

namespace legwork {

// The type has a place on the poles of this circuit. 120 V types on two poles have one only beside a neutral; 240 V
// types on one pole only in a pair, between its hots. `runs`: of the whole job.
bool volts_fit(std::vector<CableRun> const& runs, Circuit const& circuit, Receptacle const& r);

} // namespace legwork
