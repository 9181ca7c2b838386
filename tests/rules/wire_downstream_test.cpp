// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "building/resolve.h"
#include "job/job.h"
#include "reckon/wire_downstream.h"
#include "wire_jobs.h"

using namespace legwork;
using namespace legwork::testing;

namespace {
typed::Circuit run(std::vector<std::string> kinds, Amps breaker, int poles = 1) {
    auto c = circuit(kinds.front(), breaker, poles);
    c.run.clear();
    for (auto& kind : kinds) c.run.push_back({std::move(kind), from_mm(5000), ""});
    return c;
}
char note(typed::Circuit c, std::string_view edition = "NEC 2023") {
    return verdict("wire-smaller-downstream", std::move(c), edition);
}
std::string directory_says(typed::Circuit c, std::string_view edition = "NEC 2023") {
    auto const job = job_of({std::move(c)});
    auto const building = resolve(job);
    auto const wire = smaller_wire({building, Plan{}, *code_book(edition)}, building.circuits[0]);
    return wire ? largest_breaker_words(*wire) : "nothing";
}
} // namespace

TEST_CASE("wire-smaller-downstream: a note where a smaller cable follows a larger", "[check][wire]") {
    auto const edition = GENERATE(from_range(editions()));
    CAPTURE(edition);
    REQUIRE(note(run({"12/2", "14/2"}, 15_A), edition) == 'N');
    REQUIRE(note(run({"12/2", "12/2"}, 15_A), edition) == '-');
    REQUIRE(note(run({"14/2", "12/2"}, 15_A), edition) == '-'); // larger behind: the panel shows the smaller
    REQUIRE(note(run({"12/2"}, 20_A), edition) == '-');
    REQUIRE(note(run({"12/2", "14/2"}, 20_A), edition) == '-'); // one fault, and wire-breaker-fits has it
    auto old = run({"12/2", "14/2"}, 15_A);
    old.existing = true;
    REQUIRE(note(old, edition) == 'N');
    old.run[1].kind.clear(); // not known
    REQUIRE(note(old, edition) == '-');
}

TEST_CASE("wire-smaller-downstream: says the size, where it begins and what the directory states", "[check][wire]") {
    auto c = run({"12/2", "14/2"}, 15_A);
    c.run[0].to = "Attic box";
    auto const f = of("wire-smaller-downstream", job_of({c}), "NEC 2023").at(0);
    REQUIRE(f.message == "K1: 14 AWG (14/2) follows 12 AWG after Attic box: its breaker is 15 A at most, whatever the "
                         "wire in the panel is good for.");
    REQUIRE_THAT(f.fix, Contains("max 15 A: 14 AWG downstream"));
}

TEST_CASE("wire-smaller-downstream: the directory's largest breaker is that of wire-breaker-fits", "[check][wire]") {
    REQUIRE(directory_says(run({"8/2", "10/2"}, 30_A)) == "max 30 A: 10 AWG downstream");
    // Source: NEC 240.4(B): 6 AWG, 55 A at 60 °C, stands on the next standard size.
    REQUIRE(directory_says(run({"4/3", "6/3"}, 60_A, 2)) == "max 60 A: 6 AWG downstream");
    // Source: CE 62-114(7), (8): heating on 14 AWG may stand on 20 A.
    auto const heater = used(run({"12/2", "14/2"}, 15_A, 2), "baseboard", 2000_VA);
    REQUIRE(directory_says(heater, "NEC 2023") == "max 15 A: 14 AWG downstream");
    REQUIRE(directory_says(heater, "CE 2024") == "max 20 A: 14 AWG downstream");
    // A motor's breaker goes by its current, an air conditioner's by its nameplate: nothing is stated.
    auto const pump = used(run({"12/2", "14/2"}, 15_A, 2), "well pump", 1100_VA);
    REQUIRE(directory_says(pump).empty());
    REQUIRE(note(pump) == 'N');
    auto cooler = used(run({"10/2", "12/2"}, 25_A, 2), "appliance", 2000_VA);
    cooler.mop = 25_A;
    REQUIRE(directory_says(cooler).empty());
}

TEST_CASE("wire-smaller-downstream: a pair's shared home run counts for both", "[check][wire]") {
    auto first = run({"12/3", "14/2"}, 15_A), second = run({"", "14/2"}, 15_A);
    second.mark = "K2";
    first.multiwire = second.multiwire = "K";
    auto const found = of("wire-smaller-downstream", job_of({first, second}), "CE 2021");
    REQUIRE(found.size() == 2);
    REQUIRE(found[1].where.circuits == std::vector<std::string>{"K2"});
}
