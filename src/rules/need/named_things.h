// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What hangs on a circuit as its name lists it: "Fridge and kitchen lights" are two things, "Counter, fridge wall" and
// "Outlet by the furnace" one.
#pragma once

#include "building/building.h"
#include "codebook/stock/room_place.h"
#include "codebook/stock/uses.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A text cut at commas and the like, then at "and", "&", "/"; landmarks ("near the sink", "stove wall") left out.
struct NamePart {
    std::string words;
    std::string places;   // with "of" and "in" and what follows them: "Receptacles of bathroom" are there
    bool alone = true;    // no "and" beside it
    bool slashed = false; // a slash between it and the part before: "Fridge/freezer"
};
std::vector<std::vector<NamePart>> breaths_of(std::string_view name);

// The circuit's use and those its name lists, each once. Plain receptacles count only as "... and outlets": "Freezer,
// garage outlet" is one thing, where it is plugged in.
std::vector<Use const*> things_of(Circuit const& c);

std::string thing_name(Use const& use); // "lights", "garage receptacles", "furnace"

// Other places that the name says in one breath with one of `home`: "Bathroom and hall outlets" of a bathroom the hall.
RoomPlaces places_beside(std::string_view name, RoomPlaces home);

} // namespace legwork
