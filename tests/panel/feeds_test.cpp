// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What feeds a sub-panel: the sources above, of which its own supply may only take away.
#include "job/job.h"
#include "panel/feeds.h"

#include "catch.h"

using namespace legwork;

namespace {
// A panel on a source of one leg B and one of two hots, and a sub-panel that says `own`.
typed::Job with_sub_panel(std::optional<typed::Supply> own) {
    typed::Job job;
    job.supplies = {{"Inlet", SupplyKind::one_leg_120, {}, Leg::b, {}},
                    {"Grid", SupplyKind::split_120_240, {}, {}, {}}};
    job.panels.resize(2);
    job.panels[0].name = "Main", job.panels[0].spaces = 8, job.panels[0].supplies = {"Inlet", "Grid"};
    job.panels[1].name = "Shed", job.panels[1].spaces = 4, job.panels[1].feeder = typed::FeederName{"Main", "SP"};
    job.panels[1].supply = std::move(own);
    return job;
}
} // namespace

TEST_CASE("a sub-panel has the sources above as they are", "[panel]") {
    auto const job = with_sub_panel({});
    auto const found = feeds(job, job.panels[1]);
    REQUIRE(found.size() == 2);
    CHECK((found[0].kind == SupplyKind::one_leg_120 && found[0].leg == Leg::b));
    CHECK(found[1].kind == SupplyKind::split_120_240);
}

TEST_CASE("a sub-panel in phase does not move the live leg of a source above", "[panel]") {
    auto const job = with_sub_panel(typed::Supply{"", SupplyKind::bridged_120, {}, Leg::a, {}});
    auto const found = feeds(job, job.panels[1]);
    REQUIRE(found.size() == 2);
    CHECK((!energizes(found[0], Leg::a) && energizes(found[0], Leg::b)));
    CHECK(found[1].kind == SupplyKind::bridged_120);
}

TEST_CASE("a sub-panel on one hot has that one, whatever the source", "[panel]") {
    auto const leg = GENERATE(Leg::a, Leg::b);
    auto const job = with_sub_panel(typed::Supply{"", SupplyKind::one_leg_120, {}, leg, {}});
    for (Feed const& f : feeds(job, job.panels[1])) {
        CHECK((f.kind == SupplyKind::one_leg_120 && f.leg == leg));
        CHECK((energizes(f, leg) && !energizes(f, other(leg))));
    }
}
