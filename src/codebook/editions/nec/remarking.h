// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What may be done to a conductor whose colour does not say its job, as the NEC has it.
#pragma once

#include "codebook/code_book.h"

namespace legwork::nec {

using namespace how_read;

// `in_cable`: 200.6(E). Its Exception No. 1 lets the conductors of a multiconductor cable be marked at their ends: in
// 2017 only where qualified persons alone service it, which no dwelling and no small building is; from 2020 on without
// that condition, and some argue still.
constexpr RemarkingTable remarking(Remarking in_cable) {
    return {
        .white_as_hot_in_cable = {Remarking::allowed, seen, "tape-white-as-hot"},
        .white_as_hot_in_conduit = {Remarking::never, seen, "tape-white-as-hot/conduit"},
        .white_in_switch_loop = {Remarking::allowed, seen, "tape-white-as-hot/switch-loop"},
        .large_from = Gauge::awg4,
        .small_as_neutral_in_cable = {in_cable, seen, "tape-as-neutral"},
        .small_as_neutral_in_conduit = {Remarking::never, seen, "tape-as-neutral/conduit"},
        .large_as_neutral = {Remarking::allowed, seen, "tape-as-neutral/large"},
        .green = {Remarking::never, seen, "tape-green"},
    };
}
inline constexpr RemarkingTable kQualifiedOnly = remarking(Remarking::never),
                                kAtTheEnds = remarking(Remarking::disputed);

} // namespace legwork::nec
