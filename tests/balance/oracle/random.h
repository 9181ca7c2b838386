// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random jobs for the judges: small, awkward, the same for the same seed on every machine.
#pragma once

#include "job/job.h"

#include <cstdint>

namespace legwork::oracle {

// std distributions differ between libraries; this does not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : state_(mixed(seed)) {} // mixed: neighbouring seeds must not share a stream
    int below(int n) { return static_cast<int>(next() % static_cast<std::uint64_t>(n)); }
    int from(int low, int high) { return low + below(high - low + 1); }
    bool chance(int percent) { return below(100) < percent; }

private:
    static std::uint64_t mixed(std::uint64_t z) { // splitmix64, public domain
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9ull;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBull;
        return z ^ (z >> 31);
    }
    std::uint64_t next() { return mixed(state_ += 0x9E3779B97F4A7C15ull); }
    std::uint64_t state_;
};

struct RandomPanel {
    int most_spaces = 12;
    int most_situations = 4;
    bool pair_heavy = false;
    bool odd_buses = true;       // by column or listed
    bool halves = false;         // some circuits on half-size breakers today
    bool half_two_poles = false; // and some two-pole breakers, legally or not
    bool reach = false;          // some wires land in few spaces only
    int short_wires = 30;        // so many percent of them,
    int within = 60;             // in so many percent of the spaces
};

// One panel "Main". Some are empty, some full, some illegal today, some impossible.
typed::Job random_job(std::uint64_t seed, RandomPanel const& kind);

// A panel "Main", a sub-panel "Sub" fed by its circuit SP, now and then a third, "Loft", fed by circuit SQ of either.
typed::Job random_job_with_sub_panel(std::uint64_t seed);

// As a job file, for whoever has to look at a case that failed.
std::string as_toml(typed::Job const& job);

} // namespace legwork::oracle
