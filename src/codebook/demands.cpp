// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/demands.h"

namespace legwork {

namespace {
constexpr Demands kNec{
    .every_pair_off_together = true, .tied_singles_count = true, .names_outlive_people = true, .up_is_on = true};
constexpr Demands kCe{
    .every_pair_off_together = false, .tied_singles_count = false, .names_outlive_people = false, .up_is_on = false};
} // namespace

Demands const& demands(CodeBook const& book) { return book.family == Family::nec ? kNec : kCe; }

} // namespace legwork
