// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What may be done to a conductor whose colour does not say its job, as the CE Code has it.
#pragma once

#include "codebook/code_book.h"

namespace legwork::ce {

using namespace how_read;

template <Source kWhiteAsHot>
inline constexpr RemarkingTable kRemarking{
    .white_as_hot_in_cable = {Remarking::allowed, kWhiteAsHot, "tape-white-as-hot"},
    .white_as_hot_in_conduit = {Remarking::never, seen, "tape-white-as-hot/conduit"},
    .white_in_switch_loop = {Remarking::not_asked, seen, "tape-white-as-hot/switch-loop"},
    .large_from = Gauge::awg1, // larger than No. 2
    .small_as_neutral_in_cable = {Remarking::disputed, seen, "tape-as-neutral"},
    .small_as_neutral_in_conduit = {Remarking::never, seen, "tape-as-neutral/conduit"},
    .large_as_neutral = {Remarking::allowed, seen, "tape-as-neutral/large"},
    .green = {Remarking::never, seen, "tape-green"},
};

} // namespace legwork::ce
