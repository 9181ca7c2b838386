// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <string>

namespace legwork {

// The folder `name` ("templates", "fonts") that comes with the program: beside the installed program, else, for a
// program that still stands in its build folder, the sources', else where it was to be installed. Throws Failure that
// names all places looked at when there is none.
std::string share_folder(std::string const& name);

} // namespace legwork
