// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The folder balance/: which space each circuit gets, so that the legs are even and few wires move. Two questions are
// asked of it, both below; each panel goes the same way:
//
//     Building --loads.h--> what each circuit puts on a leg, situation by situation
//              --model/---> units (a single, a pair, a two-pole breaker) and cells (spaces, line by line)
//              --legs/----> on which leg each unit is: the least |A - B| for each number of moves, with its proof
//              --seats/---> room for that: who stays, who makes way, where pairs find two neighbouring cells
//              --place/---> a space for everybody else: large breakers near the main, rooms together
//              --tally.h--> the sums of the plan, which recheck/ counts again with no code of the search
//
//     space   1     3     5     7     9       A line of cells: neighbours are on opposite legs, so a pair takes
//     leg     A     B     A     B     A       one of each wherever it sits. Its sign is + with its first half on
//           [ K1    K2 ][ WH    WH ][ L1 ]    leg A, a single's on leg A; a two-pole breaker has none.
//
// The legs are chosen without asking where anybody stands, but for how many singles each leg has room for; seats/ then
// says what that costs in moves. That is what makes the search small.
#pragma once

#include "balance/plan.h"

namespace legwork {

// What may stand where. Live, unblocked spaces only; full-size breakers only (halves that are typed in stay as they are
// where the panel takes them, and count; no new ones are placed). A two-pole breaker: two neighbours of one column on
// two legs. A multiwire pair: two neighbours of one column on two legs, on a bus with a leg a column two facing spaces;
// a pair with no tie may also keep the two spaces it has today if they are on two legs, either way round. A circuit
// that must move, or is new, lands only where its wires reach. `fixed` circuits stay; what no move can make legal then
// is a plan with no placements that says why. On a panel with one live leg, on bridged legs and on DC only room is
// looked for.

struct BalanceOptions {
    bool best = false;            // the least imbalance itself, not just near it
    std::optional<int> max_moves; // the best with at most so many moves
    // A hard stop only, shared among the panels; its use is told in the plan. Each panel has a plan all the same.
    std::optional<double> seconds;
};

// Proposes spaces for every circuit, moving present ones where that evens the legs. Never fails: an impossible panel
// has no placements and says why. Sub-panels first; each feeder adds its panel's legs to the panel above.
Plan balance(Building const& building, BalanceOptions const& options = {});

// The panel as the file has it: circuits with a space stay there, legal or not; those without are placed as well as
// can be with nobody moved. Also carries the least imbalance that moves could reach, found within about a second's
// worth of counted steps, and `seconds` if they are given.
Plan as_filed(Building const& building, std::optional<double> seconds = {});

// Recounts everything from the job with no code of the search: each slot used once and on the panel, blocked and dead
// spaces empty, fixed circuits at home, two-pole breakers on two legs of one column, imbalances and moves as
// claimed. One sentence a fault; empty when the plan holds. `as_filed` plans may break what the file itself breaks.
std::vector<std::string> recheck(Building const& building, Plan const& plan, bool filed);

} // namespace legwork
