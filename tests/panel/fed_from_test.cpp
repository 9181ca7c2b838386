// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the words of `fed_from` tell. Common usage, no source.
#include "panel/fed_from.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("fed_from names a panel above", "[panel]") {
    auto const words =
        GENERATE("House panel, spaces 18 and 20: 60 A", "Yard disconnect, 100 A", "Breaker 14 downstairs",
                 "Building distribution, floor 1", "FEEDER FROM THE BARN", "Panneau de la maison", "Tableau principal",
                 "House", "From the barn", "Tablero general");
    CAPTURE(words);
    CHECK(named_above(words) == Above::panel);
}

TEST_CASE("fed_from names no panel above", "[panel]") {
    auto const words = GENERATE("", "Meter, north wall", "Meter on the pole, 40 ft east", "Utility transformer",
                                "Meter, house wall", "Pole behind the garage", "Compteur, mur nord", "\xff\xfe");
    CAPTURE(words);
    CHECK(named_above(words) == Above::service);
}

TEST_CASE("fed_from that names a meter and a breaker leaves it open", "[panel]") {
    auto const words = GENERATE("Meter, breaker 100 A", "Meter and disconnect on the pole", "Panneau du compteur");
    CAPTURE(words);
    CHECK(named_above(words) == Above::unclear);
}
