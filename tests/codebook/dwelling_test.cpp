// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sources: NEC 210.11(C)(1) to (4): two small-appliance circuits, one each for laundry, bathroom and garage, of 20 A;
// CE 26-654, 26-722(d): two counter circuits with two receptacles each. What stands as memory there is from memory
// here.
#include "codebook/cite.h"
#include "codebook/dwelling.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("the circuits of a dwelling, by edition", "[codebook]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        CodeBook const& book = *code_book(edition);
        bool const nec = book.family == Family::nec;
        auto const& kitchen = household_circuits(book, Household::kitchen);
        REQUIRE(kitchen.circuits.value == 2);
        REQUIRE(kitchen.amps.has_value() == nec);
        REQUIRE(counter_circuit(book).receptacles_most.has_value() == !nec);
        if (!nec) REQUIRE(counter_circuit(book).receptacles_most->value == 2);
        for (auto const part : {Household::laundry, Household::bath, Household::garage}) {
            auto const& need = household_circuits(book, part);
            REQUIRE(need.circuits.value == 1);
            REQUIRE(need.amps.has_value() == nec);
            if (nec) REQUIRE((need.amps->value == 20 && need.own));
        }
        // New in 2023: the garage's circuit may serve the rest of the garage.
        auto const& garage = household_circuits(book, Household::garage);
        REQUIRE(garage.with_lighting == (!nec || edition == "NEC 2023"));
        REQUIRE_FALSE(household_circuits(book, Household::laundry).always);
        REQUIRE(household_circuits(book, Household::outdoor).always);
        // CE 26-654(b), (c), 26-656(g) as notes on 2021 tell them.
        bool const since_2021 = !nec && edition != "CE 2018";
        REQUIRE((book.household.utility.get() != nullptr) == since_2021);
        REQUIRE(household_circuits(book, Household::outdoor).in_flats == (edition == "CE 2018")); // NEC 210.52(E)(1)
        if (since_2021) REQUIRE(household_circuits(book, Household::laundry).with_places.empty());
    }
}

TEST_CASE("what wants a circuit of its own names uses and sections that there are", "[codebook]") {
    for (auto const& edition : editions())
        for (OwnCircuit const& own : code_book(edition)->own_circuits.rows) {
            CAPTURE(edition, own.use);
            Use const* use = use_named(own.use);
            REQUIRE((use && use->dedicated));
            REQUIRE(has_citation(own.topic));
            REQUIRE(cite(*code_book(edition), own.topic).section.empty() == (own.source == Source::practice));
            for (auto const other : own.with) REQUIRE(use_named(other));
        }
    for (auto const& edition : editions()) REQUIRE_FALSE(own_circuit(*code_book(edition), "lighting", 1));
}

TEST_CASE("a central vacuum is read from its name", "[codebook]") {
    REQUIRE(guess_use("Central vacuum", "", 1, {}) == "central vacuum");
    REQUIRE(guess_use("Central vac, basement", "", 1, {}) == "central vacuum");
    REQUIRE(guess_use("Aspirateur central", "", 1, {}) == "central vacuum");
}
