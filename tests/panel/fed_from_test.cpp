// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the words of `fed_from` tell. Common usage, no source.
#include "panel/fed_from.h"

#include <catch2/catch.hpp>

using namespace legwork;

TEST_CASE("fed_from names a panel above", "[panel]") {
    auto const words = GENERATE("House panel, spaces 18 and 20: 60 A", "Yard disconnect, 100 A",
                                "Breaker 14 downstairs", "Building distribution, floor 1", "FEEDER FROM THE BARN",
                                "Panneau de la maison", "House", "From the barn", "Tablero general");
    CAPTURE(words);
    CHECK(names_a_panel_above(words));
}

TEST_CASE("fed_from names no panel above", "[panel]") {
    auto const words = GENERATE("", "Meter, north wall", "Meter on the pole, 40 ft east", "Utility transformer",
                                "Meter, house wall", "Pole behind the garage", "Compteur, mur nord", "\xff\xfe");
    CAPTURE(words);
    CHECK_FALSE(names_a_panel_above(words));
}
