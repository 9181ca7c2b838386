// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A DC panel behind the AC circuit of its power supply. Source: what goes in is what comes out over the efficiency.
#include "balance/balance.h"
#include "building/resolve.h"

#include "catch.h"

using namespace legwork;

namespace {
typed::Panel panel(std::string name, SupplyKind kind) {
    typed::Panel p;
    p.name = std::move(name);
    p.spaces = 8;
    p.supply = typed::Supply{.name = "", .kind = kind, .amps = {}, .leg = Leg::a, .off = {}};
    return p;
}

typed::Circuit circuit(std::string mark, std::string in, std::optional<VoltAmperes> load) {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.panel = std::move(in);
    c.load = load;
    return c;
}

// Lamps and a fridge at 12 V behind PS, beside a light on AC.
typed::Job cabin() {
    typed::Job job;
    job.panels = {panel("Main", SupplyKind::split_120_240), panel("Low", SupplyKind::dc_12)};
    job.panels[1].feeder = typed::FeederName{"Main", "PS"};
    job.circuits = {circuit("L1", "Main", 500_VA), circuit("PS", "Main", 50_VA), circuit("D1", "Low", 60_VA),
                    circuit("D2", "Low", 120_VA)};
    job.circuits[2].use = "lighting";
    return job;
}

VoltAmperes drawn(typed::Job const& job) { return circuit_named(resolve(job), "PS")->load.value(); }
} // namespace

TEST_CASE("power supply: a DC panel has its own source, and knows the circuit it hangs on", "[building][dc]") {
    auto const b = resolve(cabin());
    Panel const &main = b.panels[0], &low = b.panels[1];
    Circuit const& ps = *circuit_named(b, "PS");
    REQUIRE(low.is_dc());
    REQUIRE(low.feeds.size() == 1);
    REQUIRE(low.power_supply == &ps);
    REQUIRE(low.efficiency == 900'000);
    REQUIRE(ps.supplies_dc == std::vector<Panel const*>{&low});
    // It is no sub-panel: neither end is a feeder.
    REQUIRE_FALSE(low.feeder_said);
    REQUIRE((!low.above && !low.feeder && main.below.empty() && ps.feeds.empty() && !ps.feeds_loads()));
}

TEST_CASE("power supply: its circuit draws what the DC panel draws over the efficiency", "[building][dc]") {
    auto job = cabin();
    REQUIRE(drawn(job) == 200_VA); // 180 / 0.9
    job.panels[1].efficiency = 850'000;
    REQUIRE(drawn(job) == 212_VA); // 211.76, rounded up
    job.circuits[3].load.reset();
    REQUIRE(drawn(job) == 71_VA); // of what is known: 60 / 0.85 = 70.6
    job.circuits[3].measured = 2_A;
    REQUIRE(drawn(job) == 99_VA); // 60 + 2 A x 12 V = 84 VA
    job.circuits[3].measured.reset();
    job.circuits[3].load_amps = 10_A;
    REQUIRE(drawn(job) == 212_VA);
    job.circuits[3].off = true;
    REQUIRE(drawn(job) == 71_VA);
    SECTION("its own load counts while nothing is known behind it") {
        job.circuits[2].load.reset();
        REQUIRE(drawn(job) == 50_VA);
        job.circuits.resize(2);
        REQUIRE(drawn(job) == 50_VA);
    }
    SECTION("a question is answered") {
        job.circuits[1].load.reset();
        job.circuits[1].asked = {"load"};
        REQUIRE(circuit_named(resolve(job), "PS")->asked.empty());
        job.circuits.resize(2);
        REQUIRE(circuit_named(resolve(job), "PS")->asked.size() == 1);
    }
}

TEST_CASE("power supply: several on one circuit, and panels behind panels, add up", "[building][dc]") {
    auto job = cabin();
    job.panels.push_back(panel("Lower", SupplyKind::dc_24));
    job.panels.push_back(panel("Far", SupplyKind::dc_12));
    job.panels[2].feeder = typed::FeederName{"Main", "PS"};
    job.panels[2].efficiency = 500'000;
    job.panels[3].feeder = typed::FeederName{"Low", "D2"};
    job.circuits.push_back(circuit("E1", "Lower", 100_VA));
    job.circuits.push_back(circuit("F1", "Far", 30_VA));
    REQUIRE(drawn(job) == 300_VA); // (60 + 30) / 0.9 + 100 / 0.5
}

TEST_CASE("power supply: in a situation its circuit has the share of what hangs behind it", "[building][dc]") {
    auto job = cabin();
    typed::Situation night{"Night", 0, {{"lighting", 1'000'000}}, {{"D2", 250'000}}, {}};
    job.situations = {night};
    auto b = resolve(job);
    REQUIRE(b.situations[0].share[1] == 500'000); // (60 x 1 + 120 x 0.25) / 180
    // 200 VA x 0.5 on whichever leg it lands.
    auto const plan = balance(b);
    auto const at = plan.panels[0].situations.at(1);
    REQUIRE(at.leg_a_va + at.leg_b_va == 100);
    REQUIRE(plan.panels[0].situations[0].leg_a_va + plan.panels[0].situations[0].leg_b_va == 700);
    REQUIRE(recheck(b, plan, false).empty());
    job.situations[0].by_mark["PS"] = 1'000'000; // said of itself
    REQUIRE(resolve(job).situations[0].share[1] == 1'000'000);
    job.situations[0] = {"Thirds", 0, {{"lighting", 1'000'000}}, {}, {}};
    REQUIRE(resolve(job).situations[0].share[1] == 333'334); // rounded up
}
