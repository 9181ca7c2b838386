// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/outlet_count.h"

namespace legwork {

namespace {
// CE 8-304(1)(a), as a trade quiz of 2025 tells it: 12 on a two-wire branch circuit, unless the load is known.
constexpr OutletCount kCe{15_A, 12, Source::seen};
} // namespace

OutletCount const* outlet_count(CodeBook const& book) { return book.family == Family::ce ? &kCe : nullptr; }

} // namespace legwork
