// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// "Can I add this?": one more circuit, told in a line, and what the service and every feeder on its way say to it.
#pragma once

#include "reckon/service.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A circuit told in a line: what it is, then in any order its breaker, load, least circuit ampacity, poles and whether
// it is continuous or a motor: "vehicle charger, 40 A, 2 poles, continuous". Without a load it is what its breaker
// allows.
struct AddedCircuit {
    std::optional<Circuit> circuit; // of this panel, with a mark that the job does not have
    std::vector<std::string> taken; // what was taken for granted
    std::string why, fix;           // when it was not understood
};
AddedCircuit added_circuit(std::string_view words, Building const& building, CodeBook const& book, Panel const& panel);

// One panel on the way from the circuit to the service.
struct PanelWithMore {
    PanelLoad before, after;      // by the same method where it allows both
    std::optional<LoadStep> grew; // the counted step that decides; nothing when the circuit adds nothing
    std::int64_t more_va = 0;     // what all of the calculation grew by
    std::optional<bool> fits;     // nothing where a load or the rating is not known
};

struct WithMore {
    Building building; // with the circuit
    Plan plan;
    std::vector<PanelWithMore> panels; // the circuit's own first, the service last; AC only
    std::optional<bool> fits;          // all of them; no as soon as one says no
    Panel const* unlisted = nullptr;   // feeds the last of them, and nobody knows what else
    std::string no_space;              // why the panel has no space for it; empty when it has, or had none before
};
WithMore with_more(Building const& building, Plan const& plan, CodeBook const& book, Circuit const& more,
                   std::optional<LoadMethod> asked = std::nullopt);

} // namespace legwork
