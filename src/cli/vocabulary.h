// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "job/read.h"

namespace legwork {

std::vector<std::string> rule_names(); // every id that can be explained

// The words of the code book's tables, for the reader, which lies below them.
Vocabulary vocabulary();

} // namespace legwork
