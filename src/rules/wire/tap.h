// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Taps: the smaller wires that may leave a cooking circuit for one of its appliances.
#pragma once

#include "rules/rule.h"

namespace legwork {

// Of a circuit with a breaker: what is wrong with its taps. True where it has one whose size is known.
bool judge_taps(Case const& c, Circuit const& circuit, Inspection& seen);

} // namespace legwork
