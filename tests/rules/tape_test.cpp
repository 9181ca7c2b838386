// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"
#include "wire_jobs.h"

using namespace legwork;
using namespace legwork::testing;

namespace {
constexpr std::string_view kEditions[] = {"NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"};

typed::Circuit colored(typed::Circuit c, std::vector<std::string> colors) {
    c.colors = std::move(colors);
    return c;
}
} // namespace

TEST_CASE("tape-white-as-hot: taped in cable, never in conduit", "[check][tape]") {
    // Sources: NEC 200.7(C); CE 4-030 (2015: 4-036), conduit seen.
    auto c = circuit("12/2", 20_A, 2);
    for (auto const edition : kEditions) {
        REQUIRE(verdict("tape-white-as-hot", c, edition) == 'N');
        REQUIRE(verdict("tape-white-as-hot", circuit("12/2", 20_A), edition) == '-');
        REQUIRE(verdict("tape-white-as-hot", colored(c, {"red", "black"}), edition) == '-');
    }
    auto const found = of("tape-white-as-hot", job_of({c}), "NEC 2023");
    REQUIRE(found[0].fix ==
            "Wrap red tape all round the white wire at both ends and wherever it can be reached and seen.");
    REQUIRE(found[0].reference.section == "200.7(C)(1)");
    c.wiring = Wiring::conduit;
    for (auto const edition : kEditions) REQUIRE(verdict("tape-white-as-hot", c, edition) == 'E');
    REQUIRE(verdict("tape-white-as-hot", colored(c, {"red", "black"}), "NEC 2023") == '-');
}

TEST_CASE("tape-white-as-hot: several pieces of one circuit are one note", "[check][tape]") {
    auto c = circuit("10/2", 20_A, 2);
    c.run.push_back({"12/2", from_mm(4000), ""});
    REQUIRE(verdict("tape-white-as-hot", c, "NEC 2023") == 'N');
}

TEST_CASE("tape-white-as-hot: cables alike are one note, each circuit in it", "[check][tape]") {
    auto first = circuit("12/2", 20_A, 2), second = circuit("14/2", 15_A, 2), third = circuit("12/2", 20_A, 2);
    second.mark = "K2";
    third.mark = "K3";
    third.wiring = Wiring::conduit;
    auto const found = of("tape-white-as-hot", job_of({first, second, third}), "NEC 2023");
    REQUIRE(found.size() == 2);
    REQUIRE(found[0].where.circuits == std::vector<std::string>{"K1", "K2"});
    REQUIRE(found[0].message.starts_with("K1 (12/2) and K2 (14/2): the white wire is hot."));
    REQUIRE(found[1].severity == Severity::error);
}

TEST_CASE("tape-white-as-hot: a switch loop by family", "[check][tape]") {
    // Source: NEC 200.7(C)(1); CE 4-036(2) of 2015: not re-marked when the black is the return.
    auto c = circuit("14/2", 15_A);
    c.switch_loop = true;
    REQUIRE(verdict("tape-white-as-hot", c, "NEC 2023") == 'N');
    REQUIRE(verdict("tape-white-as-hot", c, "CE 2024") == '-');
    c.run.push_back({"14/2", from_mm(4000), "Switch by the door"});
    REQUIRE(verdict("tape-white-as-hot", c, "NEC 2023") == 'N');
}

TEST_CASE("tape-as-neutral: by family, size and wiring", "[check][tape]") {
    // Sources: NEC 200.6(A), (B)(4), (E) Exception No. 1 of 2017, 2020 and 2023; CE 4-028(1), (4) of 2009 and what a
    // code answerer said against it.
    auto const c = colored(circuit("12/2", 20_A), {"red", "black"});
    for (auto const edition : kEditions)
        REQUIRE(verdict("tape-as-neutral", c, edition) == (edition == "NEC 2017" ? 'E' : 'W'));
    auto existing = c;
    existing.existing = true;
    REQUIRE(verdict("tape-as-neutral", existing, "NEC 2017") == 'E');
    REQUIRE(verdict("tape-as-neutral", existing, "NEC 2023") == 'W');
    REQUIRE(verdict("tape-as-neutral", colored(circuit("6/2", 50_A), {"red", "black"}), "NEC 2017") == 'E');
    REQUIRE(verdict("tape-as-neutral", colored(circuit("6/2", 50_A), {"red", "black"}), "NEC 2023") == 'W');
    REQUIRE(verdict("tape-as-neutral", colored(circuit("4/2", 60_A), {"red", "black"}), "NEC 2023") == 'N');
    REQUIRE(verdict("tape-as-neutral", colored(circuit("4/2", 60_A), {"red", "black"}), "CE 2024") == 'W');
    REQUIRE(verdict("tape-as-neutral", colored(circuit("1/2", 100_A), {"red", "black"}), "CE 2024") == 'N');
    REQUIRE(verdict("tape-as-neutral", circuit("12/2", 20_A), "NEC 2023") == '-');
    auto conduit = c;
    conduit.wiring = Wiring::conduit;
    for (auto const edition : kEditions) REQUIRE(verdict("tape-as-neutral", conduit, edition) == 'E');
    REQUIRE(of("tape-as-neutral", job_of({conduit}), "NEC 2023")[0].reference.section == "200.6(A)");
    REQUIRE(of("tape-as-neutral", job_of({c}), "NEC 2023")[0].reference.section == "200.6(E)");
}

TEST_CASE("tape-as-neutral: nothing says to tape it white where that is forbidden", "[check][tape]") {
    auto const found = of("tape-as-neutral", job_of({colored(circuit("12/2", 20_A), {"red", "black"})}), "NEC 2017");
    REQUIRE(found[0].fix.find("tape") == std::string::npos);
    REQUIRE(found[0].message.find("white tape") == std::string::npos);
    REQUIRE(found[0].where.key == "colors");
    auto const asked = of("tape-as-neutral", job_of({colored(circuit("12/2", 20_A), {"red", "black"})}), "NEC 2020");
    REQUIRE_THAT(asked[0].fix, Contains("Ask the inspector") && Contains("at both ends and in every box"));
}

TEST_CASE("tape-green: never hot, never neutral", "[check][tape]") {
    // Source: NEC 250.119; CE 4-032.
    for (auto const edition : kEditions) {
        REQUIRE(verdict("tape-green", colored(circuit("12/2", 20_A), {"black", "green"}), edition) == 'E');
        REQUIRE(verdict("tape-green", colored(circuit("12/2", 20_A, 2), {"black", "green"}), edition) == 'E');
        REQUIRE(verdict("tape-green", colored(circuit("12/2", 20_A), {"black", "white", "green"}), edition) == '-');
    }
}

TEST_CASE("tape-: a cable that must be replaced gets no tape advice, DC none of this", "[check][tape]") {
    auto range = used(circuit("8/2", 40_A, 2), "range", 8000_VA);
    REQUIRE(verdict("tape-white-as-hot", range, "NEC 2023") == '-');
    auto const dc = job_of({colored(circuit("12/2", 10_A), {"red", "black"})}, SupplyKind::dc_12);
    REQUIRE(verdict("tape-as-neutral", dc, "NEC 2023") == '-');
}
