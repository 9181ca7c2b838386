// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A panel that is known only as the one that feeds another, and the feeder that stands in no [[circuit]].
#include "balance/balance.h"
#include "building/resolve.h"
#include "building/trial.h"

#include "catch.h"

using namespace legwork;

namespace {
typed::Panel panel(std::string name, std::optional<SupplyKind> kind) {
    typed::Panel p;
    p.name = std::move(name);
    p.spaces = 8;
    if (kind) p.supply = typed::Supply{.name = "", .kind = *kind, .amps = {}, .leg = Leg::a, .off = {}};
    return p;
}

typed::Circuit circuit(std::string mark, std::string in) {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.panel = std::move(in);
    c.load = 600_VA;
    return c;
}

// A suite behind the house's panel, which nobody has listed.
typed::Job suite(std::optional<SupplyKind> narrowed = {}) {
    typed::Job job;
    job.panels = {panel("House", SupplyKind::split_120_240), panel("Suite", narrowed)};
    job.panels[0].listed = false;
    job.panels[0].spaces = 0;
    job.panels[1].feeder = typed::FeederName{"House", "FD"};
    job.panels[1].feeder_breaker = 60_A;
    job.panels[1].feeder_cable = "6/3";
    job.panels[1].feeder_length = from_mm(12000);
    job.circuits = {circuit("K1", "Suite"), circuit("K2", "Suite")};
    return job;
}
} // namespace

TEST_CASE("unlisted: the feeder is a circuit behind those of the file", "[building][unlisted]") {
    auto const b = resolve(suite());
    REQUIRE(b.panels.size() == 1);
    REQUIRE(b.unlisted.size() == 1);
    Panel const &suite_panel = b.panels[0], &house = b.unlisted[0];
    REQUIRE(suite_panel.number == 0);
    REQUIRE_FALSE(house.listed);
    REQUIRE(panel_named(b, "House") == nullptr);
    REQUIRE(b.circuits.size() == 3);
    Circuit const& fd = b.circuits[2];
    REQUIRE(fd.number == 2);
    REQUIRE(fd.mark == "FD");
    REQUIRE_FALSE(fd.listed);
    REQUIRE(fd.panel == &house);
    REQUIRE(fd.poles == 2);
    REQUIRE(fd.breaker == 60_A);
    REQUIRE(fd.fed_panel() == &suite_panel);
    REQUIRE(fd.feeds_loads());
    REQUIRE(suite_panel.feeder == &fd);
    REQUIRE(suite_panel.above == &house);
    REQUIRE(suite_panel.feeder_said);
    REQUIRE(suite_panel.feeds.front().kind == SupplyKind::split_120_240);
    Run const& run = b.runs.back();
    REQUIRE(run.is_feeder());
    REQUIRE(run.is_home_run());
    REQUIRE(run.from.called == "House");
    REQUIRE(run.to.panel == &suite_panel);
    REQUIRE(run.piece.called == "6/3");
    REQUIRE(run.piece.length == from_mm(12000));
}

TEST_CASE("unlisted: a panel of 120 V has a feeder of one pole", "[building][unlisted]") {
    REQUIRE(resolve(suite(SupplyKind::one_leg_120)).circuits[2].poles == 1);
    REQUIRE(resolve(suite(SupplyKind::bridged_120)).circuits[2].poles == 1);
    auto job = suite();
    job.panels[0].supply->kind = SupplyKind::bridged_120; // the house has no more, on both legs
    REQUIRE(resolve(job).circuits[2].poles == 2);
    job.panels[0].supply->kind = SupplyKind::one_leg_120;
    REQUIRE(resolve(job).circuits[2].poles == 1);
}

TEST_CASE("unlisted: what is asked is asked of the feeder", "[building][unlisted]") {
    auto job = suite();
    job.panels[1].feeder_breaker.reset();
    job.panels[1].feeder_cable.clear();
    job.panels[1].feeder_length.reset();
    job.panels[1].asked = {"bus", "feeder_length"};
    auto const b = resolve(job);
    REQUIRE(b.panels[0].asked == std::vector<std::string>{"bus"});
    REQUIRE(b.circuits[2].asked == std::vector<std::string>{"length"});
    REQUIRE(b.circuits[2].run.empty());
}

TEST_CASE("unlisted: nothing of it is balanced", "[building][unlisted][balance]") {
    auto job = suite();
    job.situations = {{"Night", 500'000, {}, {}, {}}};
    auto const b = resolve(job);
    REQUIRE(b.situations[0].share.size() == 3);
    auto const plan = balance(b);
    REQUIRE(plan.panels.size() == 1);
    REQUIRE(placement_of(plan, "FD") == nullptr);
    REQUIRE(recheck(b, plan, false).empty());
}

TEST_CASE("unlisted: a trial with a circuit or sizes more keeps the feeder", "[building][unlisted]") {
    auto const b = resolve(suite());
    auto more = circuit_named(b, "K1");
    Circuit added = *more;
    added.mark = "X1";
    auto const grown = with_circuit(b, added);
    REQUIRE(grown.circuits.size() == 4);
    REQUIRE(grown.panels[0].feeder == circuit_named(grown, "FD"));
    Sizes const sizes{2, 100_A, {"4/3"}}; // of the feeder, that stands in no table
    REQUIRE(circuit_named(with_sizes(b, {&sizes, 1}), "FD")->breaker == 60_A);
}

TEST_CASE("unlisted: a circuit that claims to be in it has no panel", "[building][unlisted]") {
    auto job = suite();
    job.circuits.push_back(circuit("H1", "House")); // no reader lets it through
    auto const b = resolve(job);
    REQUIRE(circuit_named(b, "H1")->panel == nullptr);
    REQUIRE(b.unlisted[0].circuits.size() == 1);
}
