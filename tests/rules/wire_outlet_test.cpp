// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"
#include "wire_jobs.h"

using namespace legwork;
using namespace legwork::testing;

namespace {
char outlet(typed::Circuit c, std::string_view edition) { return verdict("wire-outlet", std::move(c), edition); }
char conductors(typed::Circuit c, std::string_view edition) {
    return verdict("wire-conductors", std::move(c), edition);
}
char conductors(typed::Job const& job, std::string_view edition) { return verdict("wire-conductors", job, edition); }

typed::Circuit with(typed::Circuit c, std::vector<std::string> outlets) {
    c.outlets = std::move(outlets);
    return c;
}
} // namespace

TEST_CASE("wire-outlet: volts and poles", "[check][wire]") {
    // Source: NEMA WD 6 configurations.
    for (auto const edition : {"NEC 2023", "CE 2024"}) {
        CAPTURE(edition);
        REQUIRE(outlet(with(circuit("10/2", 30_A, 2), {"TT-30R"}), edition) == 'E');
        REQUIRE(outlet(with(circuit("10/3", 30_A, 2), {"TT-30R"}), edition) == 'E'); // not even beside a neutral
        REQUIRE(outlet(with(circuit("10/2", 30_A), {"TT-30R"}), edition) == '-');
        REQUIRE(outlet(with(circuit("12/2", 20_A, 2), {"5-20R"}), edition) == 'E');
        REQUIRE(outlet(with(circuit("12/3", 20_A, 2), {"5-20R"}), edition) ==
                '-'); // a hot and the neutral of the cable
        REQUIRE(outlet(with(circuit("12/2", 20_A), {"6-20R"}), edition) == 'E');
        REQUIRE(outlet(with(circuit("12/2", 20_A, 2), {"6-20R"}), edition) == '-');
        REQUIRE(outlet(with(circuit("10/3", 30_A), {"14-30R"}), edition) == 'E');
        REQUIRE(outlet(with(circuit("12/3", 20_A, 2), {"6-20R", "5-20R"}), edition) == '-');
    }
    auto c = with(circuit("10/2", 30_A, 2), {"TT-30R"});
    c.existing = true;
    REQUIRE(outlet(c, "NEC 2023") == 'E');
    REQUIRE(of("wire-outlet", job_of({c}), "NEC 2023")[0].never_accepted);
    REQUIRE(of("wire-outlet", job_of({c}, SupplyKind::wye_120_208), "NEC 2023")[0].message.find("208 V") !=
            std::string::npos);
}

TEST_CASE("wire-outlet: a pair has 240 V between its hots", "[check][wire]") {
    auto first = with(circuit("12/3", 20_A), {"6-20R", "5-20R"}), second = circuit("12/3", 20_A);
    second.mark = "K2";
    first.multiwire = second.multiwire = "K";
    REQUIRE(of("wire-outlet", job_of({first, second}), "NEC 2023").empty());
}

TEST_CASE("wire-outlet: amperes of several receptacles", "[check][wire]") {
    // Source: NEC Table 210.21(B)(3) of 2017 and 2020, and Table 210.24: 15 A 15, 20 A 15 or 20, 30 A 30, 40 A 40
    // or 50. In 2023 the first says "not less than" and the second has not changed: of a larger one readings differ.
    // CE: a 20 A circuit takes 5-20R, from memory.
    REQUIRE(outlet(with(circuit("12/2", 20_A), {"5-15R"}), "NEC 2023") == '-');
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"}) {
        CAPTURE(edition);
        char const wrong = edition == std::string_view("CE 2018") ? 'W' : 'E';
        REQUIRE(outlet(with(circuit("12/2", 20_A), {"5-15R"}), edition) == wrong);
        REQUIRE(outlet(with(circuit("10/2", 30_A), {"5-15R"}), edition) == wrong);
        REQUIRE(outlet(with(circuit("14/2", 15_A), {"5-20R"}), edition) == wrong);
        REQUIRE(outlet(with(circuit("14/2", 15_A), {"5-15R"}), edition) == '-');
        REQUIRE(outlet(with(circuit("10/2", 30_A), {"TT-30R"}), edition) == '-');
        auto old = with(circuit("12/2", 20_A), {"5-15R"});
        old.existing = true;
        REQUIRE(outlet(old, edition) == 'W');
    }
    REQUIRE(outlet(with(circuit("12/2", 20_A), {"5-20R"}), "CE 2024") == '-');
    for (auto const edition : {"NEC 2017", "NEC 2020"}) {
        REQUIRE(outlet(with(circuit("14/2", 15_A), {"5-20R"}), edition) == 'E');
        REQUIRE(outlet(with(circuit("10/2", 30_A), {"5-15R", "5-15R"}), edition) == 'E');
    }
    REQUIRE(outlet(with(circuit("10/2", 30_A), {"5-15R", "5-15R"}), "NEC 2023") == 'E');
    REQUIRE(outlet(with(circuit("14/2", 15_A), {"5-20R"}), "NEC 2023") == 'W');
    REQUIRE(of("wire-outlet", job_of({with(circuit("14/2", 15_A), {"5-20R"})}), "NEC 2023")[0].message.find(
                "Readings of the code differ") != std::string::npos);
    REQUIRE(outlet(with(circuit("14/2", 15_A), {"5-15R"}), "NEC 2023") == '-');
    auto two = with(circuit("8/3", 40_A, 2), {"14-30R"});
    two.outlet_count = 2;
    REQUIRE(outlet(two, "NEC 2023") == 'E');
    two.existing = true;
    REQUIRE(outlet(two, "NEC 2023") == 'W');
    two.outlets = {"14-50R"};
    REQUIRE(outlet(two, "NEC 2023") == '-');
    REQUIRE(of("wire-outlet", job_of({with(circuit("10/2", 30_A), {"5-15R", "5-20R", "5-20R"})}), "NEC 2023").size() ==
            2);
}

TEST_CASE("wire-outlet: amperes of a lone single receptacle", "[check][wire]") {
    // Source: NEC 210.21(B)(1): not less than the circuit; a duplex counts as two.
    auto c = with(circuit("12/2", 20_A), {"5-15R"});
    c.single = true;
    REQUIRE(outlet(c, "NEC 2017") == 'E');
    c.existing = true;
    REQUIRE(outlet(c, "NEC 2017") == 'W');
    REQUIRE(outlet(with(circuit("8/3", 40_A, 2), {"14-30R"}), "NEC 2023") == 'E'); // such types are single
    REQUIRE(outlet(with(circuit("8/3", 40_A, 2), {"14-50R"}), "NEC 2023") == '-');
    REQUIRE(outlet(with(circuit("10/3", 30_A, 2), {"14-50R"}), "NEC 2023") == '-'); // larger is fine
    REQUIRE(outlet(with(circuit("8/3", 40_A, 2), {"14-50R"}), "CE 2024") == '-');
    REQUIRE(outlet(with(circuit("6/3", 60_A, 2), {"14-50R"}), "NEC 2023") == 'E');
    auto welder = used(with(circuit("6/2", 60_A, 2), {"6-50R"}), "welder", 9000_VA);
    REQUIRE(outlet(welder, "NEC 2023") == 'W');
}

TEST_CASE("wire-outlet: types without a ground", "[check][wire]") {
    auto c = with(circuit("10/3", 30_A, 2), {"10-30R"});
    REQUIRE(outlet(c, "NEC 2023") == 'W');
    c.existing = true;
    REQUIRE(outlet(c, "NEC 2023") == '-');
}

TEST_CASE("wire-conductors: a neutral that something uses is in the cable", "[check][wire]") {
    // Source: NEMA WD 6 (14- types have a neutral); NEC 250.140 for ranges and dryers.
    for (auto const edition : {"NEC 2020", "CE 2021"}) {
        CAPTURE(edition);
        auto c = with(circuit("10/2", 30_A, 2), {"14-30R"});
        REQUIRE(conductors(c, edition) == 'E');
        c.existing = true;
        REQUIRE(conductors(c, edition) == 'W');
        REQUIRE(conductors(with(circuit("10/3", 30_A, 2), {"14-30R"}), edition) == '-');
        REQUIRE(conductors(with(circuit("12/2", 20_A, 2), {"6-20R", "5-20R"}), edition) == 'E');
        REQUIRE(conductors(with(circuit("12/3", 20_A, 2), {"6-20R", "5-20R"}), edition) == '-');
        REQUIRE(conductors(used(circuit("10/2", 30_A, 2), "dryer", 5000_VA), edition) == 'W');
        REQUIRE(conductors(used(circuit("10/3", 30_A, 2), "dryer", 5000_VA), edition) == '-');
        REQUIRE(conductors(with(used(circuit("8/2", 40_A, 2), "range", 8000_VA), {"6-50R"}), edition) == '-');
        REQUIRE(conductors(used(circuit("10/2", 30_A, 2), "water heater", 4500_VA), edition) == '-');
        REQUIRE(conductors(circuit("12/2", 20_A), edition) == '-');
    }
}

TEST_CASE("wire-conductors: a wrong receptacle is one fault, a pair another rule's", "[check][wire]") {
    REQUIRE(conductors(with(circuit("10/2", 30_A, 2), {"TT-30R"}), "NEC 2023") == '-');
    auto first = circuit("12/2", 20_A), second = circuit("12/2", 20_A);
    second.mark = "K2";
    first.multiwire = second.multiwire = "K";
    REQUIRE(conductors(job_of({first, second}), "NEC 2023") == '-');
}

TEST_CASE("wire-conductors: what the colours say is there", "[check][wire]") {
    auto c = circuit("12/3", 20_A, 2);
    c.outlets = {"6-20R", "5-20R"};
    c.colors = {"red", "black"};
    REQUIRE(conductors(c, "NEC 2023") == 'E');
    auto one = circuit("12/2", 20_A);
    one.hot = "red";
    auto const found = of("wire-conductors", job_of({one}), "NEC 2023");
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].message ==
            "K1 needs a hot and a neutral; its 12/2 has 2 insulated conductors, and its hot is said to be red.");
}
