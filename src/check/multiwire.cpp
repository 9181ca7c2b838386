// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/themes.h"

namespace legwork {

std::span<Rule const> multiwire_rules() { return {}; }

} // namespace legwork
