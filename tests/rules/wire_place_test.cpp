// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: NEC 334.12(B) (a trade magazine); other types and all of CE from memory; that NMD90 may be damp and not wet:
// three makers' sheets. Depths: Table 300.5 on a trade page.
#include "building/resolve.h"
#include "codebook/stock/guess_where.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
Make laid(std::string kind, WirePlace where) {
    return one_pole("C1", 1).called("Lights").cable(std::move(kind)).with([=](typed::Circuit& c) { c.where = where; });
}
std::string at(std::string kind, WirePlace where, std::string_view edition) {
    return says("wire-place", job({laid(std::move(kind), where)}), edition);
}
} // namespace

TEST_CASE("wire-place: the cable of dry rooms where it is not dry", "[check][wire]") {
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) {
        CAPTURE(edition);
        CHECK(at("12/2", WirePlace::damp, edition) == "error C1");
        CHECK(at("12/2", WirePlace::wet, edition) == "error C1");
        CHECK(at("12/2", WirePlace::outdoors, edition) == "error C1");
        CHECK(at("12/2", WirePlace::buried, edition) == "error C1; note C1"); // and how deep
        CHECK(at("12/2", WirePlace::dry, edition).empty());
        CHECK(at("12/2 UF", WirePlace::wet, edition).empty());
        CHECK(at("12/2 UF", WirePlace::buried, edition) == "note C1");
    }
    for (auto const edition : {"CE 2018", "CE 2024"}) {
        CAPTURE(edition);
        CHECK(at("12/2", WirePlace::damp, edition).empty());
        CHECK(at("12/2", WirePlace::wet, edition) == "warning C1");
        CHECK(at("12/2", WirePlace::outdoors, edition) == "warning C1");
        CHECK(at("12/2 NMWU", WirePlace::wet, edition).empty());
        CHECK(at("12/2 NMWU", WirePlace::buried, edition) == "note C1");
    }
}

TEST_CASE("wire-place: other types, and those of another country", "[check][wire]") {
    CHECK(at("14/2 AC", WirePlace::damp, "NEC 2023") == "warning C1"); // from memory
    CHECK(at("14/2 AC", WirePlace::dry, "NEC 2023").empty());
    CHECK(at("14/2 MC", WirePlace::wet, "NEC 2023") == "warning C1"); // as its sheath is marked
    CHECK(at("12/3 NMWU", WirePlace::outdoors, "NEC 2023") == "warning C1");
    CHECK(at("12/3 UF", WirePlace::outdoors, "CE 2024") == "warning C1");
    CHECK(at("6/3 TECK", WirePlace::buried, "CE 2024") == "note C1");
    auto large = laid("2/0/3", WirePlace::wet);
    large.c.metal = Metal::aluminium; // whether it is sheathed cable is not told by its size
    CHECK(says("wire-place", job({large}), "NEC 2023") == "warning C1");
}

TEST_CASE("wire-place: wires in conduit have no sheath to judge, only a depth", "[check][wire]") {
    auto wet = laid("12/2", WirePlace::wet), buried = laid("12/2", WirePlace::buried);
    wet.c.wiring = buried.c.wiring = Wiring::conduit;
    CHECK(says("wire-place", job({wet}), "NEC 2023").empty());
    CHECK(says("wire-place", job({buried}), "NEC 2023") == "note C1");
}

TEST_CASE("wire-place: a name that stands in the open proposes it, and is told", "[check][wire]") {
    auto const dock = one_pole("D1", 1).called("Dock outlets", "Dock");
    CHECK(says("wire-place", job({dock}), "NEC 2023") == "warning D1");
    CHECK(says("wire-place", job({dock}), "CE 2024") == "warning D1");
    auto const told = found("job-assumed", job({dock}));
    REQUIRE(told.size() == 2);
    CHECK(told[0].message == "The cable of D1 is taken to run outdoors, as the names say.");
    auto inside = dock;
    inside.c.where = WirePlace::dry;
    CHECK(says("wire-place", job({inside}), "NEC 2023").empty());
    CHECK(says("wire-place", job({Make(dock).cable("12/2 UF")}), "NEC 2023").empty());
    CHECK(says("wire-place", job({Make(dock).old()}), "NEC 2023").empty()); // nobody looked how it lies
    CHECK(says("wire-place", job({one_pole("R1", 1).called("Receptacle, front porch")}), "NEC 2023").empty());
    auto const under_a_roof = one_pole("R1", 1).called("Receptacles, centre posts", "Greenhouse");
    CHECK(says("wire-place", job({under_a_roof}), "NEC 2023").empty());
}

TEST_CASE("wire-place: of a run in pieces the one that ends in the open", "[check][wire]") {
    auto piece = [](std::string kind, std::string to) {
        return typed::Segment{std::move(kind), from_mm(4000), std::move(to)};
    };
    auto c = one_pole("D1", 1).called("Dock outlets").with([&](typed::Circuit& made) {
        made.run = {piece("12/3", "Boat bay box"), piece("12/2 UF", "Dock head box")};
    });
    CHECK(says("wire-place", job({c}), "NEC 2023").empty());
    c.c.run[1].kind = "12/2";
    CHECK(says("wire-place", job({c}), "NEC 2023") == "warning D1");
    c.c.run[1].where = WirePlace::wet;
    CHECK(says("wire-place", job({c}), "NEC 2023") == "error D1");
    c.c.run[1].where = WirePlace::unsaid;
    c.c.where = WirePlace::dry; // all of it
    CHECK(says("wire-place", job({c}), "NEC 2023").empty());
}

TEST_CASE("wire-place: of a pair either may say where the home run lies", "[check][wire]") {
    auto made = pair_job({1}, {3});
    made.circuits[1].where = WirePlace::wet;
    CHECK(says("wire-place", made, "NEC 2023") == "error K1 K2");
    made.circuits[0].run[0].kind = "12/3 UF";
    CHECK(says("wire-place", made, "NEC 2023").empty());
}

TEST_CASE("wire-place: a [[cable]] says where it lies, and a cable to another building is asked for", "[check][wire]") {
    auto made = job({one_pole("L1", 1)});
    typed::Cable cable;
    cable.mark = "S1";
    cable.kind = "12/2";
    cable.where = WirePlace::wet;
    made.cables.push_back(cable);
    CHECK(says("wire-place", made, "NEC 2023") == "error S1");
    made.cables[0].kind = "cat6"; // no power cable
    CHECK(says("wire-place", made, "NEC 2023").empty());
    auto shed = one_pole("SH", 1).called("Lights").with([](typed::Circuit& c) { c.building = "Shed"; });
    CHECK(says("wire-place", job({shed}), "NEC 2023") == "note SH");
}

TEST_CASE("wire-place: what stands in the open, and what only reads so", "[check][wire]") {
    for (auto const words : {"Dock outlets, shore post", "Yard lights", "Lamp post, drive", "Dock head box",
                             "Poteau du quai", "Farola del muelle", "Back yard", "YARD POLE", "Pier"}) {
        CAPTURE(words);
        CHECK(stands_in_the_open(words));
    }
    for (auto const words :
         {"Outlets, loading dock", "Receptacle by the yard door", "Compressor, yard side", "Post office", "Front porch",
          "Bedroom, four-poster", "Two pole breaker", "Docking station", "", "\xff\xfe"}) {
        CAPTURE(words);
        CHECK_FALSE(stands_in_the_open(words));
    }
}
