// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// From the calculated load to amperes, to the smallest service or feeder, and to what is left of the present one.
#pragma once

#include "demand/load.h"

namespace legwork {

struct ServiceWire {
    std::optional<Gauge> copper, aluminium; // nothing: larger than 4/0, or not in our tables
    int celsius = 0;                        // of the terminals that it holds for; 0: by a table for dwellings
    Reference reference;
};

// Amperes of each hot, where one-pole loads stand unevenly.
struct LineAmps {
    std::int64_t even_va = 0, a_va = 0, b_va = 0; // what both hots share, and what each has alone
    Amps a, b;
    std::int64_t as_total_va = 0; // a load shared evenly that would ask as much as the heavier line does
    Phrase arithmetic;            // of the heavier line's amperes
    bool other_season = false;    // while the other of heating and cooling runs, which is less in all

    bool a_is_heavier() const { return a > b; }
    Amps heavier() const { return a > b ? a : b; }
};

struct ServiceSize {
    Amps amps;                     // of the total, shared evenly; to the nearest milliampere
    std::optional<LineAmps> lines; // where a hot carries more than that
    std::optional<Amps> neutral_amps;
    Phrase neutral_words; // the arithmetic of it
    Amps
        to_carry; // of the heavier line; what a rating is held against: a fraction under half an ampere may be left out
    std::optional<Amps> floor; // the least size for this dwelling, whatever its load
    Reference floor_reference;
    bool floor_is_load = false;  // it holds for the load, not for the disconnect alone
    std::optional<Amps> service; // smallest standard size; nothing where something is unknown or none is large enough
    Reference size_reference;
    std::vector<ServiceWire> wires;      // for that size; the first is what is usual, others for other terminals
    std::optional<std::int64_t> left_va; // of the present rating, for what takes both hots; below 0 it is overloaded;
                                         // nothing where not known
    bool fits = true;                    // the load within the present rating, when that is known
    std::optional<Amps>
        largest_circuit; // breaker of the largest two-pole (else one-pole) circuit that still fits, at a
                         // continuous load that counts in full; nothing where none does or none is known
};

ServiceSize service_size(LoadQuestion const& q, LoadCalculation const& load);

// Whether a load of so many VA is within this rating.
bool carries(LoadQuestion const& q, std::int64_t va, Amps rating);

} // namespace legwork
