// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/receptacles.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
//                  volts amps hots neutral ground locking single never_two_pole
constexpr std::array kReceptacles{
    Receptacle{"1-15R", 125, 15, 1, true, false, false, false, false},
    Receptacle{"5-15R", 125, 15, 1, true, true, false, false, false},
    Receptacle{"5-20R", 125, 20, 1, true, true, false, false, false},
    Receptacle{"5-30R", 125, 30, 1, true, true, false, true, false},
    Receptacle{"5-50R", 125, 50, 1, true, true, false, true, false},
    Receptacle{"TT-30R", 120, 30, 1, true, true, false, true, true},
    Receptacle{"L5-15R", 125, 15, 1, true, true, true, true, false},
    Receptacle{"L5-20R", 125, 20, 1, true, true, true, true, false},
    Receptacle{"L5-30R", 125, 30, 1, true, true, true, true, false},
    Receptacle{"6-15R", 250, 15, 2, false, true, false, false, false},
    Receptacle{"6-20R", 250, 20, 2, false, true, false, false, false},
    Receptacle{"6-30R", 250, 30, 2, false, true, false, true, false},
    Receptacle{"6-50R", 250, 50, 2, false, true, false, true, false},
    Receptacle{"L6-15R", 250, 15, 2, false, true, true, true, false},
    Receptacle{"L6-20R", 250, 20, 2, false, true, true, true, false},
    Receptacle{"L6-30R", 250, 30, 2, false, true, true, true, false},
    Receptacle{"10-20R", 250, 20, 2, true, false, false, true, false},
    Receptacle{"10-30R", 250, 30, 2, true, false, false, true, false},
    Receptacle{"10-50R", 250, 50, 2, true, false, false, true, false},
    Receptacle{"14-15R", 250, 15, 2, true, true, false, true, false},
    Receptacle{"14-20R", 250, 20, 2, true, true, false, true, false},
    Receptacle{"14-30R", 250, 30, 2, true, true, false, true, false},
    Receptacle{"14-50R", 250, 50, 2, true, true, false, true, false},
    Receptacle{"14-60R", 250, 60, 2, true, true, false, true, false},
    Receptacle{"L14-20R", 250, 20, 2, true, true, true, true, false},
    Receptacle{"L14-30R", 250, 30, 2, true, true, true, true, false},
    Receptacle{"SS2-50R", 250, 50, 2, true, true, true, true, false}, // CS 6364 family, marine and inlets; not in WD 6
};
} // namespace

std::span<Receptacle const> receptacles() { return kReceptacles; }

Receptacle const* receptacle_named(std::string_view name) {
    auto const at = std::ranges::find(kReceptacles, name, &Receptacle::name);
    return at == kReceptacles.end() ? nullptr : &*at;
}

std::vector<Receptacle const*> receptacles_named(std::vector<std::string> const& names) {
    std::vector<Receptacle const*> known;
    for (std::string const& name : names)
        if (Receptacle const* r = receptacle_named(name)) known.push_back(r);
    return known;
}

std::vector<std::string> receptacle_names() {
    std::vector<std::string> names;
    for (Receptacle const& r : kReceptacles) names.emplace_back(r.name);
    return names;
}

} // namespace legwork
