// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The circuits that a dwelling must have, and what may share them.
#pragma once

#include "codebook/code_book.h"
#include "codebook/stock/room_place.h"

#include <algorithm>

namespace legwork {

enum class Household { kitchen, laundry, utility, bath, garage, outdoor };

// What the receptacles of one part of a dwelling ask for.
struct HouseholdCircuits {
    bool always;                // in every dwelling; false: in one that has such a place
    Figure circuits;            // at least so many
    std::optional<Figure> amps; // of each of their breakers; nothing: any
    bool own;               // nothing else on them, but for the three below; false: receptacles on any circuit will do
    RoomPlaces with_places; // receptacles there may share them
    bool with_lighting;     // lights of the same place may
    bool with_one_room;     // so may whatever stands in the one room that the circuit serves
    bool basins_only = false; // asked for the receptacles at basins and counters; others in that room may be elsewhere
    bool in_flats = true;     // `always` is of the units of an apartment building too
};
struct HouseholdTable {
    CodePage<HouseholdCircuits> kitchen, laundry, utility, bath, garage, outdoor;
    constexpr CodePage<HouseholdCircuits> const& of(Household part) const {
        switch (part) {
        case Household::kitchen: return kitchen;
        case Household::laundry: return laundry;
        case Household::utility: return utility;
        case Household::bath: return bath;
        case Household::garage: return garage;
        case Household::outdoor: break;
        }
        return outdoor;
    }
};
inline HouseholdCircuits const& household_circuits(CodeBook const& book, Household part) {
    return book.household.of(part).table();
}

// A circuit of kitchen counter receptacles.
struct CounterCircuit {
    bool wall_receptacles_count;            // a circuit of other receptacles of the kitchen is one of those asked for
    std::optional<Figure> receptacles_most; // on one circuit
    std::optional<Figure> one_receptacle_circuits; // circuits that do where the counter has one receptacle
    std::optional<Figure> unsplit_amps; // of a circuit of its own cable, feeding both halves of its receptacles
    RoomPlaces with_places;             // receptacles there may share it
    std::span<std::string_view const> with_uses;
    Source source; // of what may share it
};
inline CounterCircuit const& counter_circuit(CodeBook const& book) { return book.counter.table(); }

// A use that wants a circuit of its own.
struct OwnCircuit {
    std::string_view use;
    std::span<std::string_view const> with; // uses that may share it all the same
    bool one_outlet;                        // and no second outlet on it
    Source source;
    std::string_view topic;             // of cite.h
    int poles = 0;                      // asked of circuits of so many only; 0: of any
    std::optional<Figure> above_w = {}; // asked where its load, if that is known, is more
    std::string_view which = {};        // asked of those only: "in a cupboard or enclosure"
    RoomPlaces let_off = {};            // not asked where the circuit's words say one of these
};
struct OwnCircuitTable {
    std::span<OwnCircuit const> rows;
};
// Null when nothing asks it of this use on a circuit of so many poles.
inline OwnCircuit const* own_circuit(CodeBook const& book, std::string_view use, int poles) {
    auto const rows = book.own_circuits.rows;
    auto const at = std::ranges::find_if(
        rows, [&](OwnCircuit const& row) { return row.use == use && (row.poles == 0 || row.poles == poles); });
    return at == rows.end() ? nullptr : &*at;
}

} // namespace legwork
