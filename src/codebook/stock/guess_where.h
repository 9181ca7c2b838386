// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a cable runs, as the words for its far end propose it.
#pragma once

#include "codebook/stock/room_place.h"

#include <string_view>

namespace legwork {

// "Dock head box", "Shore post", "Yard lights", "Poteau du quai": what stands away from any wall, so that its cable
// lies outdoors. Not "yard door", "loading dock", "post office": English, French and Spanish, common usage, no source.
// Any bytes may be given.
bool stands_in_the_open(std::string_view words);

// The same of a circuit, `places` being where it is: the posts of a room stand under a roof.
bool stands_in_the_open(std::string_view name, std::string_view room, RoomPlaces places);

} // namespace legwork
