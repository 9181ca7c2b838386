// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/outbuilding.h"

#include <array>

namespace legwork {

namespace {
constexpr OutbuildingSupplies nec(int feeders) {
    return {.one_only = true, .feeders_from_one_panel = {feeders, Source::memory}, .other_volts = {2, Source::memory}};
}
constexpr std::array kNec{nec(1), nec(6), nec(6)}; // 2017, 2020, 2023
constexpr OutbuildingSupplies kCe{
    .one_only = false, .feeders_from_one_panel = {1, Source::practice}, .other_volts = {1, Source::practice}};
} // namespace

OutbuildingSupplies const& outbuilding_supplies(CodeBook const& book) {
    return book.family == Family::nec ? kNec[book.column] : kCe;
}

} // namespace legwork
