// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where the two hots of a multiwire pair land. The questions about it are asked one after the other, and the first
// fault speaks for those that would only follow from it.
#pragma once

#include "panel/feeds.h"
#include "panel/layout.h"
#include "rules/rule.h"

#include <array>
#include <optional>
#include <vector>

namespace legwork {

// In this order the first one speaks and silences the rest.
enum class PlaceFault { two_panels, same_space, legs_in_phase, same_leg, not_adjacent };

struct PairPlace {
    std::optional<PlaceFault> fault;
    // Which could be answered: not what a fault before it silences, nor what hangs on a space that it does not have.
    std::array<bool, 5> answered{};
    bool is_answered(PlaceFault q) const { return answered[static_cast<std::size_t>(q)]; }
};
PairPlace pair_place(Case const& c, Pair const& p);
std::optional<PlaceFault> place_fault(Case const& c, Pair const& p);

// The verdict on one of the questions; `say` tells the fault of a pair.
Verdict judge_place(Case const& c, PlaceFault question, Finding (*say)(Case const& c, Pair const& p));

// The source under which both hots of a pair would rise and fall together, if there is one.
std::optional<Feed> in_phase_feed(std::vector<Feed> const& sources);

std::optional<Spot> spot_of(Case const& c, Circuit const& circuit); // its first space; nothing without one
std::string place_word(Case const& c, Circuit const& circuit);      // "K1 (space 7)"

} // namespace legwork
