// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "job/read.h"

namespace legwork {

// The words of the code book's tables, for the reader, which lies below them.
Vocabulary vocabulary();

} // namespace legwork
