// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where cable of a type may be run, and how deep it is buried.
#pragma once

#include "codebook/code_book.h"
#include "units/power_cable.h"

namespace legwork {

enum class MayRun { yes, no, ask }; // ask: it hangs on what the sheath is marked for

struct CablePlaceRow {
    CableType type;
    MayRun damp, wet, outdoors, buried;
    Source source;
};

// Least cover where nothing drives above it, in millimetres.
struct BurialDepths {
    Figure cable, conduit;         // of plastic
    std::optional<Figure> circuit; // a 120 V circuit of at most 20 A behind a GFCI
};

struct CablePlaces {
    std::span<CablePlaceRow const> rows; // a type without a row is none of this code's country
    std::string_view wet_type;           // as typed, what takes all places: "UF"
    BurialDepths burial;
};

inline CablePlaces const& cable_places(CodeBook const& book) { return book.cable_places; }
// Null for a type that this code does not know.
CablePlaceRow const* cable_place_row(CodeBook const& book, CableType type);
// `where` is said or guessed, and no dry place.
MayRun may_run(CablePlaceRow const& row, WirePlace where);

} // namespace legwork
