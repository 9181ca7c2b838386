// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Random panels behind feeders, and what tables and arithmetic by hand say of them.
#pragma once

#include "job/job.h"

#include <array>
#include <string>
#include <vector>

namespace legwork::testing {

bool chance(int of);
std::string any_edition();
Length any_length(int most_metres);

// A circuit of panel "Shop" with all its sizes, in this space.
typed::Circuit in_shop(std::string mark, int space, bool one_pole = false);

struct Shop {
    typed::Job job; // panel "Main" with feeder "SP" first, and what is behind it in panel "Shop"
    std::vector<std::string> branches;
};
// Behind a feeder of one pole nothing has two, and one hot reaches both legs.
Shop any_shop(typed::Circuit feeder);

// What a feeder's wire is good for: NEC 334.80 holds cable to 60 °C; above 100 A terminals take 75 °C (NEC 110.14(C),
// CE 4-006).
int ampacity_of_feeder(Gauge gauge, Amps breaker, typed::Circuit const& feeder, bool nec);

// Amperes on each leg, by hand: what runs for hours and the largest motor at 125 %.
std::array<double, 2> weighed_legs(typed::Job const& job, bool nec);

} // namespace legwork::testing
