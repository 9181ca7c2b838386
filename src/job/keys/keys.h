// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every key of the job file, a file a table. A new key is a row of its table here.
#pragma once

#include "toml/key.h"

namespace legwork {

// The file itself, whose keys are its tables.
extern KeyTable const kJobFileKeys;

} // namespace legwork
