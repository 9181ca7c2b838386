// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Where a circuit's outlets stand, as far as codes tell places apart: from the words of its room and name, and its use.
#pragma once

#include "codebook/stock/uses.h"

#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Places of a building, and a few things whose nearness decides as a place does (`sink`, `hot_tub`, `boat_hoist`).
enum class RoomPlace {
    kitchen,
    counter, // the work surface of a kitchen
    dining,  // pantry, breakfast room and the like too
    living,  // family, living, den, library, office, sunroom, recreation and similar rooms
    bedroom,
    loft, // lived in or only stored in: the word does not tell
    hall, // entries too
    stair,
    closet,
    laundry,
    bathroom,
    utility, // mechanical, furnace or boiler room
    basement,
    unfinished_basement,
    finished_basement,
    crawl_space,
    attic,
    garage,
    outbuilding, // shed, barn, pump house and the like: an accessory building
    workshop,    // a room of the house or a building of its own: the word does not tell
    boathouse,
    dock,
    outdoor,
    eaves, // outdoors, out of reach
    house, // "ground floor", "upstairs": some rooms of a home
    sink,
    hot_tub, // pool, spa
    boat_hoist,
};
std::string_view name(RoomPlace place); // "kitchen", "crawl space": as a message says it

class RoomPlaces {
public:
    constexpr RoomPlaces() = default;
    constexpr RoomPlaces(std::initializer_list<RoomPlace> places) {
        for (RoomPlace const p : places) add(p);
    }
    constexpr void add(RoomPlace p) { bits_ |= bit(p); }
    constexpr void add(RoomPlaces more) { bits_ |= more.bits_; }
    constexpr bool has(RoomPlace p) const { return (bits_ & bit(p)) != 0; }
    constexpr bool any_of(RoomPlaces some) const { return (bits_ & some.bits_) != 0; }
    constexpr bool empty() const { return bits_ == 0; }
    constexpr RoomPlaces of(RoomPlaces some) const { // those that are in both
        RoomPlaces both;
        both.bits_ = bits_ & some.bits_;
        return both;
    }
    constexpr RoomPlaces without(RoomPlaces some) const {
        RoomPlaces rest;
        rest.bits_ = bits_ & ~some.bits_;
        return rest;
    }
    friend constexpr bool operator==(RoomPlaces, RoomPlaces) = default;

private:
    static constexpr std::uint32_t bit(RoomPlace p) { return std::uint32_t{1} << static_cast<unsigned>(p); }
    std::uint32_t bits_ = 0;
};

std::vector<std::string> names(RoomPlaces places);

// The places that words name, in English, French and Spanish: "Kitchen and dining" names two, "Hall bath" a bathroom,
// "Studio over garage" no garage, "Laundry closet" both. Common usage, no source. Any bytes may be given.
RoomPlaces places_in(std::string_view words);

// Of those the ones that a circuit serves side by side, as "and" says: "Bathroom and hall". None in "Counter, kitchen",
// where one word tells more of the other.
RoomPlaces joined_places(std::string_view name, std::string_view room);

// What stands there is told to be indoors: the room is, or the name says so ("Indoor head, north wall").
bool told_indoors(std::string_view name, std::string_view room);

// Where a circuit is: what its room says; else its name; else where its use belongs. A use that is a place by itself
// ("outdoor", "bathroom", "kitchen counter") always counts, and so do a sink, an open place or a building that only the
// name tells. `building`: an outbuilding's name. Empty when nothing tells.
RoomPlaces places_of(Use const* use, std::string_view name, std::string_view room, std::string_view building = {});

} // namespace legwork
