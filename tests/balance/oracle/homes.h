// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random panels of real sizes, every circuit standing legally today, and the bare numbers of their balance.
#pragma once

#include "balance/oracle/exhaustive.h"
#include "job/job.h"

namespace legwork::oracle {

struct Home {
    int spaces = 42;
    int situations = 1; // 1: none named, so "connected"
    int two_poles = 4, pairs = 4, empty = 2;
    int largest = 1900; // VA of a one-pole circuit
};

// One panel "Main": the two-poles and pairs of `home`, `empty` spaces, one-pole circuits in all others.
typed::Job random_home(std::uint64_t seed, Home const& home);

// Where every circuit stands today and need not give way, only legs count: each unfixed one-pole circuit and each
// unfixed pair chooses one of two legs.
struct Decision {
    std::vector<std::int64_t> d; // A - B when on leg A (of a pair: its first circuit)
    bool on_a = false;           // today
    int cost = 1;                // moves when it changes legs: 2 for a pair
    bool counts = true;          // takes one space of its leg; a pair takes one of each whatever it does
};
struct Legs {
    std::vector<std::int64_t> constant; // of the fixed circuits
    std::vector<Decision> decisions;
    int least_on_a = 0, most_on_a = 0; // one-pole circuits that find a space on leg A
};
// Of a job whose circuits all stand legally today, without halves.
Legs legs(typed::Job const& job, typed::Panel const& panel);

} // namespace legwork::oracle
