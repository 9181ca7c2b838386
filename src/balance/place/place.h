// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Spaces for everybody, once the legs are chosen.
#pragma once

#include "balance/seats/room.h"

#include <optional>
#include <vector>

namespace legwork {

// One entry a circuit of the panel; empty: no space.
using Slots = std::vector<std::vector<Spot>>;

// The slots of each circuit of the model (empty: left out), with exactly the moves that the signs and the rooming
// cost. Who stays is not touched; all others are placed as neatly as these legs allow: pairs first, then singles,
// each by the cheapest assignment in which nobody is out of reach. None when the rooming leaves no such layout.
std::optional<Slots> place(PanelModel const& model, Signs const& signs, Rooming const& rooming);

} // namespace legwork
