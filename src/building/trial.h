// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// "What if": a building of its own with one thing changed, to be judged and thrown away. Its things are not those of
// the first one; who is who is told by number.
#pragma once

#include "building/building.h"

#include <span>

namespace legwork {

// Sizes of one circuit; what is not given stays.
struct Sizes {
    std::size_t circuit = 0; // its number
    std::optional<Amps> breaker;
    std::vector<std::string> cables; // kinds, one a piece from the panel outward; an empty one stays
};
Building with_sizes(Building const& building, std::span<Sizes const> sizes);

// With one more circuit at the end of the list; of `more` counts what can be told of it in a line (mark, name, panel,
// use, breaker, poles, tie, load, mca, continuous, motor, interlocked).
Building with_circuit(Building const& building, Circuit const& more);

} // namespace legwork
