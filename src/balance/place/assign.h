// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include <cstdint>
#include <optional>
#include <vector>

namespace legwork {

constexpr std::int64_t kForbidden = std::int64_t{1} << 50;

// The column of each row so that the costs add up to the least (the Hungarian method with potentials, rows^2 x
// columns steps). Rows not more than columns; costs below 2^40 or kForbidden; none when a row cannot have a
// column. Among equal sums the first that the method meets taking rows and columns in order: the same every time.
std::optional<std::vector<int>> cheapest_assignment(std::vector<std::vector<std::int64_t>> const& cost);

} // namespace legwork
