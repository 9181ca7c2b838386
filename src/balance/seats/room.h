// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Making room, once it is known on which leg everything shall be: the fewest further moves, and where everybody then
// is. LineRoom where all wires reach all spaces and few pairs stand apart, else SeatRoom.
#pragma once

#include "balance/effort.h"
#include "balance/legs/legs.h"

#include <memory>
#include <optional>
#include <vector>

namespace legwork {

// What becomes of a unit.
enum class Fate { home, keep_a, keep_b, lift };

struct Rooming {
    std::vector<Fate> fate;      // of each unit; a unit that is held or has no place today: home or lift
    std::vector<int> other_cell; // keep_a, keep_b: where the other half goes; else -1
    std::vector<bool> empty;     // cells that nothing stands on after that; lifted and new units go here
    // Upper cells for the pairs and two-pole breakers that go there, as many as those; none: any that hold them.
    std::optional<std::vector<int>> sites;
};

class Room {
public:
    virtual ~Room() = default;

    // Least moves beyond what the signs alone cost; kImpossible when no layout has room. Not certain: the effort ended,
    // or not every case was looked at; then it may take fewer.
    struct Extra {
        int moves = kImpossible;
        bool is_certain = true;
    };
    virtual Extra extra_moves(Signs const& signs, Effort& effort) const = 0;
    // None when there is no room, or none was found.
    virtual std::optional<Rooming> rooming(Signs const& signs, Effort& effort) const = 0;

    // The fewest moves for which any layout is possible with `least` to `most` singles on leg A, of all moves; and
    // signs that do it (0: any). None when there is no layout at all; not certain: or when none was found.
    struct Fewest {
        std::optional<int> moves;
        Signs signs;
        bool is_certain = true;
    };
    virtual Fewest fewest_moves(int least, int most, Effort& effort) const = 0;

    // Where it stands matters for the legs of these units beyond their count: not every choice has a layout.
    virtual std::vector<int> const& bound_units() const = 0;
    // A layout with these legs is known to exist, whatever it moves.
    virtual bool stands(Signs const& signs, Effort& effort) const = 0;
    // The problem without the choices that no layout leaves open.
    virtual LegProblem narrowed(LegProblem problem, Effort& effort) const = 0;
};

// `model` must outlive it.
std::unique_ptr<Room> room_of(PanelModel const& model);

} // namespace legwork
