// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sizes that tables of the trade and published answers give, and the reckoning beside them.
#include "proposed_jobs.h"

#include <catch2/catch.hpp>

#include <iostream>

using namespace legwork;
using namespace legwork::testing;

TEST_CASE("a storage water heater of 4500 W is on 25 A and 10 AWG", "[propose]") {
    // Source: NEC 422.13, 210.20(A), 240.6(A), 240.4(D): 18.75 A x 125 % = 23.4 A, next standard breaker 25 A; 12 AWG
    // stops at 20 A.
    auto const job = job_of({bare("water heater", 4500_VA, 2)});
    REQUIRE(sized(job, "NEC 2023") == "25 A 10/2");
    std::cout << steps_of(proposed(job, "NEC 2023"));
    std::cout << steps_of(proposed(job, "CE 2024"));
    std::cout << steps_of(proposed(job_of({bare("baseboard", 3600_VA, 2)}), "CE 2024"));
    std::cout << steps_of(proposed(job_of({bare("range", 12000_VA, 2)}), "NEC 2017"));
    std::cout << steps_of(proposed(job_of({bare("bathroom", {})}), "NEC 2017"));
    std::cout << steps_of(proposed(job_of({bare("", {})}), "NEC 2017"))
              << proposed(job_of({bare("", {})}), "NEC 2017").find_out << "\n";
}
