// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <stdexcept>

namespace legwork {

// What a person did not type wrong: a file that cannot be written, a font that is missing. Caught once, in main (exit
// 3).
struct Failure : std::runtime_error {
    using std::runtime_error::runtime_error;
};

} // namespace legwork
