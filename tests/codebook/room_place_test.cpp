// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: common practice, no source (how people name circuits and rooms).
#include "codebook/stock/room_place.h"

#include "codebook/stock/guess_baths.h"

#include "catch.h"

using namespace legwork;

namespace {
std::string told(RoomPlaces places) {
    std::string all;
    for (std::string const& n : names(places)) all += (all.empty() ? "" : ", ") + n;
    return all;
}
} // namespace

TEST_CASE("places are read from words", "[codebook]") {
    auto const [words, places] = GENERATE(table<std::string, std::string>({
        {"Kitchen", "kitchen"},
        {"Kitchen and dining", "kitchen, dining area"},
        {"Kitchen/dining", "kitchen, dining area"},
        {"Bedrooms, north", "bedroom"},
        {"Hall bath", "bathroom"},
        {"Bedroom closet", "closet"},
        {"Hall and bath", "hall, bathroom"},
        {"Basement bathroom", "bathroom, basement"},
        {"Garage closet", "closet, garage"},
        {"Laundry closet", "closet, laundry area"},
        {"Unfinished basement", "unfinished basement"},
        {"Crawlspace", "crawl space"},
        {"Crawl space light", "crawl space"},
        {"Studio over the garage", "living area"},
        {"Hall outside bathroom", "hall"},
        {"Outside outlet, front", "outdoors"},
        {"Living room, garden side", "living area"},
        {"Counter, left of sink", "kitchen counter, sink"},
        {"Receptacle by the sink", "sink"},
        {"Receptacle near the bathroom", ""},
        {"Boat house", "boathouse"},
        {"Dock, lake post", "dock"},
        {"Front porch", "outdoors"},
        {"Glazed porch", "living area"},
        {"Pool table lights", ""},
        {"Kitchen island", "kitchen, kitchen counter"},
        {"Island receptacles", "kitchen, kitchen counter"},
        {"Island cabin", ""},
        {"Wet bar", "sink"},
        {"Laundry sink", "laundry area, sink"},
        {"Laundry/bath", "laundry area, bathroom"},
        {"Receptacles of bathroom and washer", "laundry area, bathroom"},
        {"Receptacle by the basin", "bathroom"},
        {"Receptacle next to the tub", "bathroom"},
        {"Pool deck", "outdoors"},
        {"Pool outlets", "outdoors, hot tub or pool"},
        {"Finished basement", "finished basement"},
        {"Basement, finished", "finished basement"},
        {"Basement (unfinished)", "unfinished basement"},
        {"Basement, not finished", "unfinished basement"},
        {"Semi-finished basement", "basement"},
        {"Basement bedroom", "bedroom, finished basement"},
        {"Basement and bedroom", "bedroom, basement"},
        {"Master bath", "bathroom"},
        {"Kit recepts", "kitchen"},
        {"Livingroom", "living area"},
        {"Salle de bain", "bathroom"},
        {"Salle à manger et cuisine", "kitchen, dining area"},
        {"Sous-sol", "basement"},
        {"Prises extérieures, galerie", "outdoors"},
        {"Baño", "bathroom"},
        {"Cocina y comedor", "kitchen, dining area"},
        {"RECÁMARA", "bedroom"},
        {"Gardenia", ""},
        {"", ""},
    }));
    CAPTURE(words);
    REQUIRE(told(places_in(words)) == places);
}

TEST_CASE("a circuit's place: room, name, building and use together", "[codebook]") {
    auto const [use, name, room, building, places] =
        GENERATE(table<std::string, std::string, std::string, std::string, std::string>({
            {"receptacles", "All walls", "Kitchen", "", "kitchen"},
            {"receptacles", "Receptacles, bath wall", "Bedroom", "", "bedroom"},
            {"baseboard", "Heaters, garden and lane walls", "Living room", "", "living area"},
            {"receptacles", "Receptacles, porch and walls", "Living room", "", "living area, outdoors"},
            {"receptacles", "Receptacles, porch and north wall", "Living room", "", "living area, outdoors"},
            {"oven", "Deck oven", "Kitchen", "", "kitchen"},
            {"receptacles", "Receptacles", "Shop front", "", ""},
            {"receptacles", "Receptacles, kitchen end", "Main room", "", "kitchen, living area"},
            {"receptacles", "Garage receptacles", "Ground floor", "", "garage"},
            {"receptacles", "Receptacles", "Ground floor", "", "rooms of the house"},
            {"refrigerator", "Refrigerator", "", "", "kitchen"},
            {"refrigerator", "Drinks refrigerator", "Sales floor", "", ""},
            {"refrigerator", "Display case", "Counter", "", ""},
            {"refrigerator", "Refrigerator", "Ground floor", "", "kitchen"},
            {"refrigerator", "Second refrigerator", "Garage", "", "garage"},
            {"kitchen counter", "Counter", "Main room", "", "kitchen, kitchen counter, living area"},
            {"dryer", "Dryer", "Hall closet", "", "closet, laundry area"},
            {"outdoor", "Dock outlets", "Dock", "", "dock"},
            {"outdoor", "Receptacles, north wall", "", "", "outdoors"},
            {"workshop", "Bench receptacles", "", "", "workshop"},
            {"workshop", "Bench receptacles", "", "Barn", "outbuilding"},
            {"receptacles", "Receptacles", "Loft", "Barn", "loft, outbuilding"},
            {"receptacles", "Receptacles", "Bedroom", "Garage", "bedroom"},
            {"receptacles", "Receptacles", "", "North building", "workshop"},
            {"receptacles", "Receptacles", "Storage", "Suite over garage", "rooms of the house"},
            {"receptacles", "Receptacles", "", "Guest house", "rooms of the house"},
            {"receptacles", "Receptacles", "Bedroom", "Bunkie", "bedroom"},
            {"receptacles", "Receptacles", "", "Pump house", "outbuilding"},
            {"outdoor", "Outlets, foot of the stair", "Outside", "", "outdoors"},
            {"receptacles", "Till receptacles", "Counter", "", ""},
            {"refrigerator", "Counter by the fridge", "", "", "kitchen, kitchen counter"},
            {"receptacles", "Counter receptacles", "Kitchen", "", "kitchen, kitchen counter"},
            {"lighting", "Lights, ground floor and bath fan", "", "", "bathroom, rooms of the house"},
            {"", "", "", "", ""},
        }));
    CAPTURE(use, name, room, building);
    REQUIRE(told(places_of(use_named(use), name, room, building)) == places);
}

TEST_CASE("places that a circuit serves side by side", "[codebook]") {
    auto const [name, room, joined] = GENERATE(table<std::string, std::string, std::string>({
        {"Bathroom and hall receptacles", "", "hall, bathroom"},
        {"Kitchen & island", "", "kitchen, kitchen counter"},
        {"Kitchen island", "", ""},
        {"Island and peninsula", "Kitchen", ""},
        {"Counter, kitchen", "", ""},
        {"Outlets", "Hall/bath", "hall, bathroom"},
        {"Lights and plugs, bath", "", ""},
        {"Bedroom, hall and bath", "", "bedroom, hall, bathroom"},
    }));
    CAPTURE(name, room);
    REQUIRE(told(joined_places(name, room)) == joined);
}

TEST_CASE("what is told to be indoors", "[codebook]") {
    for (std::string const name : {"Indoor head", "Heat pump head, north wall", "Unit inside"})
        REQUIRE(told_indoors(name, ""));
    REQUIRE(told_indoors("Heat pump", "Bedroom"));
    REQUIRE_FALSE(told_indoors("Heat pump, bedroom", "")); // it may be what it warms
    REQUIRE_FALSE(told_indoors("Heat pump", "Yard"));
    REQUIRE_FALSE(told_indoors("Heat pump", "Upstairs"));
    REQUIRE_FALSE(told_indoors("Heat pump", ""));
}

TEST_CASE("several bathrooms on one circuit", "[codebook]") {
    for (std::string const name :
         {"Baths", "Both bathrooms", "Hall bath and master bath",
          "Receptacles of hall bath and master bath, hall bath light", "Bathroom and powder room", "Ensuite, hall bath",
          "Bath 1 and bath 2", "Upstairs bath and downstairs bath"}) {
        CAPTURE(name);
        REQUIRE(serves_several_baths(name, ""));
        REQUIRE(serves_several_baths("Outlets", name));
    }
    for (std::string const name :
         {"Bathroom", "Hall bath, hall bath light and fan", "Bathroom receptacle, bathroom fan",
          "Bathroom, tub and basin", "Ensuite bath", "Half bath", "Bathroom and hall"}) {
        CAPTURE(name);
        REQUIRE_FALSE(serves_several_baths(name, ""));
    }
}

TEST_CASE("no bytes upset the reading of places", "[codebook]") {
    for (std::string const text : {"\xC3", "\xC3\xC3\xFF ,,", " and and ", "outside outside outside", "the by the"})
        REQUIRE((places_in(text).empty() || places_in(text) == RoomPlaces{RoomPlace::outdoor}));
}
