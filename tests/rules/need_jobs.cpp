// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "need_jobs.h"
#include "job/job.h"

#include <algorithm>

namespace made {

std::vector<typed::Circuit> home_circuits() {
    return {one_pole("K1").called("Counter, left", "Kitchen").use("kitchen counter"),
            one_pole("K2").called("Counter, right", "Kitchen").use("kitchen counter"),
            one_pole("RF").called("Refrigerator", "Kitchen").use("refrigerator"),
            one_pole("BA").called("Receptacle by the basin", "Bathroom").use("bathroom"),
            one_pole("LA").called("Washing machine", "Laundry").use("laundry"),
            one_pole("OU").called("Receptacles, porch", "Outside").use("outdoor"),
            one_pole("R1").called("Receptacles", "Living room").use("receptacles"),
            one_pole("L1").called("Lights, all rooms").use("lighting")};
}

std::vector<typed::Circuit> home_without(std::vector<std::string> const& marks) {
    auto circuits = home_circuits();
    std::erase_if(circuits, [&](typed::Circuit const& c) { return std::ranges::find(marks, c.mark) != marks.end(); });
    return circuits;
}

typed::Job dwelling(std::vector<typed::Circuit> circuits) {
    auto made = job(std::move(circuits));
    made.dwelling.emplace();
    return made;
}

typed::Job home_with(typed::Circuit c) {
    auto circuits = home_circuits();
    auto const at = std::ranges::find(circuits, c.mark, &typed::Circuit::mark);
    if (at == circuits.end())
        circuits.push_back(std::move(c));
    else
        *at = std::move(c);
    return dwelling(std::move(circuits));
}

} // namespace made
