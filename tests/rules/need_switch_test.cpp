// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A neutral at switches. Sources: NEC 404.2(C) (raceways, other rooms and receptacle loads are let off), CE 4-022: from
// 2018 at every control location; trade pages on both.
#include "job/job.h"
#include "protection_jobs.h"

#include "catch.h"

using namespace made;

namespace {
constexpr auto kRule = "need-neutral-at-switch";

Make loop(std::string use, std::string room) {
    return at(std::move(use), std::move(room)).with([](typed::Circuit& c) { c.switch_loop = true; });
}
Make listed_loop(std::string kind) {
    return loop("lighting", "Hall").with([&](typed::Circuit& c) {
        c.run = {{"14/2", from_mm(5000), "Hall light"}, {kind, from_mm(3000), "Hall switch"}};
    });
}
} // namespace

TEST_CASE("need-neutral-at-switch: by place, both families", "[check][need]") {
    auto const [use, room, in_nec, in_ce] = GENERATE(table<std::string, std::string, std::string, std::string>({
        {"lighting", "Hall", "WWW", "WWW"},
        {"lighting", "Bathroom", "WWW", "WWW"},
        {"lighting", "", "WWW", "WWW"},
        {"lighting", "Garage", "---", "WWW"}, // CE: every control location
        {"lighting", "Crawl space", "---", "WWW"},
        {"receptacles", "Living room", "---", "WWW"},
    }));
    CAPTURE(use, room);
    REQUIRE(nec(kRule, loop(use, room)) == in_nec);
    REQUIRE(ce(kRule, loop(use, room)) == in_ce);
    REQUIRE(nec(kRule, at(use, room)) == "---");
    REQUIRE(nec(kRule, loop(use, room).old()) == "---");
    REQUIRE(ce(kRule, loop(use, room).old()) == "---");
    REQUIRE(letter(kRule, job({loop(use, room)}), "CE 2024") == "-");
}

TEST_CASE("need-neutral-at-switch: a loop that is listed is looked at", "[check][need]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(letter(kRule, listed_loop("14/2"), edition) == "W");
        REQUIRE(letter(kRule, listed_loop("14/3"), edition) == "-");
    }
    auto const f = found(kRule, home({listed_loop("14/2")}), "CE 2021").at(0);
    REQUIRE_THAT(f.message, Contains("14/2") && Contains("CE 2021 4-022"));
    REQUIRE_THAT(f.fix, Contains("14/3"));
    auto const in_conduit = loop("lighting", "Hall").with([](typed::Circuit& c) { c.wiring = Wiring::conduit; });
    REQUIRE(nec(kRule, in_conduit) == "---");
    REQUIRE(ce(kRule, in_conduit) == "WWW");
}
