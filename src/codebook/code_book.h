// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The tables and section numbers of one code edition. Rules ask the book; they never ask which edition it is.
#pragma once

#include "codebook/source.h"
#include "units/gauge.h"
#include "units/quantity.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class Family { nec, ce };

struct CodeBook {
    std::string_view edition; // "NEC 2023"
    Family family;
    // The tables of this edition follow; see the .cpp files beside.
};

// Null when there is no such edition.
CodeBook const* code_book(std::string_view edition);
std::vector<std::string> editions(); // "CE 2018", ... "NEC 2023"

} // namespace legwork
