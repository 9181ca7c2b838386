// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "output/descriptor.h"

#include <system_error>

namespace legwork {

std::string reason(int error) { return std::error_code(error, std::generic_category()).message(); }

std::string cannot(std::string const& act, std::string const& path, int error) {
    return "cannot " + act + " " + path + ": " + reason(error);
}

} // namespace legwork
