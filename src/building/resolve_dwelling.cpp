// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// [dwelling]: the words of its groups are uses and marks.
#include "building/resolving.h"

namespace legwork {

void resolve_dwelling(Resolving& r) {
    if (!r.job.dwelling) return;
    typed::Dwelling const& said = *r.job.dwelling;
    Dwelling d;
    d.area = said.area;
    d.area_units = said.area_units;
    d.basement = said.basement;
    d.small_appliance_circuits = said.small_appliance_circuits;
    d.laundry_circuits = said.laundry_circuits;
    d.thermostats = said.thermostats;
    d.asked = said.asked;
    for (auto const& group : said.together) {
        Together together;
        for (std::string const& word : group) {
            if (Circuit const* c = r.circuit(word)) together.circuits.push_back(c);
            if (Use const* use = use_named(word)) together.uses.push_back(use);
        }
        d.together.push_back(std::move(together));
    }
    if (said.peak) d.peak = {said.peak->amps, said.peak->days};
    if (said.energy_management) {
        Dwelling::Managed managed{said.energy_management->limit, {}};
        for (std::string const& mark : said.energy_management->circuits)
            if (Circuit const* c = r.circuit(mark)) managed.circuits.push_back(c);
        d.managed = std::move(managed);
    }
    r.building.dwelling = std::move(d);
}

} // namespace legwork
