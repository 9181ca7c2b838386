// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The need-* rules, one function each: what must be there. need.cpp has their table.
#pragma once

#include "check/say.h"

namespace legwork {} // namespace legwork
