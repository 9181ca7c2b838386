// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the names of a job lead to. Nothing here is of a code: what is typed is what is found again, as a thing.
#include "building/resolve.h"

#include "catch.h"

#include <algorithm>

using namespace legwork;

namespace {
typed::Panel panel(std::string name, std::optional<SupplyKind> kind) {
    typed::Panel p;
    p.name = std::move(name);
    p.spaces = 8;
    if (kind) p.supply = typed::Supply{.name = "", .kind = *kind, .amps = {}, .leg = Leg::a, .off = {}};
    return p;
}

typed::Circuit circuit(std::string mark, std::string panel = "Main") {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.panel = std::move(panel);
    return c;
}

typed::Segment piece(std::string kind, std::string to = "") { return {std::move(kind), from_mm(5000), std::move(to)}; }

// A main panel, a shed behind the feeder SP, a pair K1 and K2 whose cable is said on one member, two pieces on K2.
typed::Job lake_house() {
    typed::Job job;
    job.panels = {panel("Main", SupplyKind::split_120_240), panel("Shed", std::nullopt)};
    job.panels[1].feeder = typed::FeederName{"Main", "SP"};
    auto k1 = circuit("K1"), k2 = circuit("K2"), sp = circuit("SP"), d1 = circuit("D1", "Shed");
    k1.multiwire = k2.multiwire = "K";
    k1.run = {piece("12/3", "Counter box")};
    k2.run = {piece(""), piece("12/2")};
    k2.run.front().length.reset();
    k2.tie = Tie::handle_tie;
    k2.wiring = Wiring::conduit;
    sp.poles = 2;
    sp.run = {piece("6/3")};
    d1.use = "lighting";
    d1.run = {piece("14/2", "Counter box")};
    job.circuits = {k1, sp, k2, d1};
    return job;
}
} // namespace

TEST_CASE("building: panels and feeders know each other", "[building]") {
    auto const b = resolve(lake_house());
    Panel const &main = b.panels[0], &shed = b.panels[1];
    Circuit const& sp = *circuit_named(b, "SP");
    REQUIRE(shed.above == &main);
    REQUIRE(shed.feeder == &sp);
    REQUIRE(main.below == std::vector<Panel const*>{&shed});
    REQUIRE(sp.fed_panel() == &shed);
    REQUIRE(sp.feeds_loads());
    REQUIRE(main.above == nullptr);
    REQUIRE(shed.feeds.size() == 1);
    REQUIRE(shed.feeds[0].kind == SupplyKind::split_120_240); // the sources of the panel above
    REQUIRE(main.circuits.size() == 3);
    REQUIRE(shed.circuits == std::vector<Circuit const*>{circuit_named(b, "D1")});
    REQUIRE(circuit_named(b, "D1")->panel == &shed);
    REQUIRE(circuit_named(b, "D1")->use->name == "lighting");
    REQUIRE_FALSE(circuit_named(b, "SP")->use);
}

TEST_CASE("building: what one member of a pair says of its cable holds for both", "[building]") {
    auto const b = resolve(lake_house());
    REQUIRE(b.pairs.size() == 1);
    Circuit const &k1 = *b.pairs[0].first, &k2 = *b.pairs[0].second;
    REQUIRE(k1.partner() == &k2);
    REQUIRE(k2.partner() == &k1);
    REQUIRE(b.pairs[0].tie == Tie::handle_tie);
    REQUIRE(k2.cable_mark() == "K1+K2");
    REQUIRE(k2.run.size() == 2);
    REQUIRE(k2.run[0].kind->name == "12/3");
    REQUIRE(k2.run[0].length == from_mm(5000));
    REQUIRE(k2.run[0].to == "Counter box");
    REQUIRE(k1.run.size() == 1);
    REQUIRE(k1.wiring == Wiring::conduit);
    auto copy = k1; // a copy is still the same circuit to its pair
    copy.breaker = 15_A;
    REQUIRE(copy.partner() == &k2);
}

TEST_CASE("building: each run has two ends, and two ends of one name are one box", "[building]") {
    auto const b = resolve(lake_house());
    REQUIRE(b.runs.size() == 4);
    REQUIRE(b.runs[0].mark == "K1+K2");
    REQUIRE(b.runs[0].from.panel == &b.panels[0]);
    REQUIRE(b.runs[0].to.box->name == "Counter box");
    REQUIRE(b.runs[1].mark == "K2"); // where the pair splits
    REQUIRE(b.runs[1].segment == 1);
    REQUIRE(b.runs[1].from.box == b.runs[0].to.box);
    REQUIRE_FALSE(b.runs[1].to.box->named);
    REQUIRE(b.runs[2].is_feeder());
    REQUIRE(b.runs[2].to.panel == &b.panels[1]);
    REQUIRE(b.runs[3].to.box == b.runs[0].to.box);
    REQUIRE(b.boxes.size() == 2);
}

TEST_CASE("building: boxes that go by a circuit's name only are never one", "[building]") {
    auto job = lake_house();
    job.circuits = {circuit("L1"), circuit("L2")};
    for (auto& c : job.circuits) c.name = "Porch light";
    auto const b = resolve(job);
    REQUIRE(b.boxes.size() == 2);
    REQUIRE(b.runs[0].to.called == b.runs[1].to.called);
    REQUIRE(b.runs[0].to.box != b.runs[1].to.box);
}

TEST_CASE("building: a cable of its own ends where its words say", "[building]") {
    auto job = lake_house();
    typed::Cable cable;
    cable.mark = "S1";
    cable.kind = "cat6";
    cable.from = "Counter box";
    cable.to = "Roof";
    job.cables = {cable};
    auto const b = resolve(job);
    Run const& run = b.runs.back();
    REQUIRE(run.carries.empty());
    REQUIRE_FALSE(run.is_home_run());
    REQUIRE(run.from.box == b.runs[0].to.box);
    REQUIRE(run.to.box == nullptr);
    REQUIRE(run.to.called == "Roof");
    REQUIRE(run.piece.kind->name == "cat6");
}

TEST_CASE("building: one answer to whether it is direct current", "[building]") {
    typed::Job job;
    job.panels = {panel("Batteries", SupplyKind::dc_24), panel("Galley", std::nullopt),
                  panel("Main", SupplyKind::split_120_240), panel("No source", std::nullopt)};
    job.panels[1].feeder = typed::FeederName{"Batteries", "G"};
    job.circuits = {circuit("G", "Batteries"), circuit("P1", "Galley"), circuit("K1"), circuit("X", "Nowhere")};
    auto const b = resolve(job);
    REQUIRE(b.panels[0].is_dc());
    REQUIRE(b.panels[1].is_dc()); // by the panel above
    REQUIRE_FALSE(b.panels[2].is_dc());
    REQUIRE_FALSE(b.panels[3].is_dc());
    REQUIRE(circuit_named(b, "P1")->on_dc());
    REQUIRE_FALSE(circuit_named(b, "K1")->on_dc());
    REQUIRE_FALSE(circuit_named(b, "X")->on_dc());
    REQUIRE(circuit_named(b, "X")->panel == nullptr);
}

TEST_CASE("building: a mark beats a use, and what neither names has the share of the rest", "[building]") {
    auto job = lake_house();
    job.circuits[0].use = "lighting";
    typed::Situation evening;
    evening.name = "Evening";
    evening.other = 250'000;
    evening.by_use["lighting"] = 800'000;
    evening.by_mark["K1"] = 0;
    job.situations = {evening};
    auto const b = resolve(job);
    REQUIRE(b.situations[0].share == std::vector<std::int64_t>{0, 250'000, 250'000, 800'000});
}

TEST_CASE("building: the words of a dwelling's groups are circuits and uses", "[building]") {
    auto job = lake_house();
    job.circuits[3].use = "air conditioner";
    typed::Dwelling home;
    home.together = {{"K1", "air conditioner"}};
    home.energy_management = typed::EnergyManagement{40_A, {"K2"}};
    job.dwelling = home;
    auto const b = resolve(job);
    REQUIRE(b.dwelling->together[0].has(*circuit_named(b, "K1")));
    REQUIRE(b.dwelling->together[0].has(*circuit_named(b, "D1")));
    REQUIRE_FALSE(b.dwelling->together[0].has(*circuit_named(b, "K2")));
    REQUIRE(b.dwelling->managed->has(*circuit_named(b, "K2")));
}

TEST_CASE("building: names that lead nowhere are left empty", "[building]") {
    typed::Job job;
    job.panels = {panel("Loop", std::nullopt)};
    job.panels[0].feeder = typed::FeederName{"Gone", "G"};
    auto c = circuit("A", "Gone");
    c.runs_with = {"B"};
    c.use = "moon base";
    c.outlets = {"99-1R"};
    c.run = {piece("no kind")};
    job.circuits = {c};
    job.accepts = {{"dir-vague", "", "", "Z", ""}};
    auto const b = resolve(job);
    REQUIRE(b.panels[0].feeder_said);
    REQUIRE(b.panels[0].feeder == nullptr);
    REQUIRE(b.panels[0].above == nullptr);
    REQUIRE(b.panels[0].feeds.empty());
    REQUIRE(b.circuits[0].use == nullptr);
    REQUIRE(b.circuits[0].outlets.empty());
    REQUIRE(b.circuits[0].lists_outlets);
    REQUIRE(b.circuits[0].run[0].kind == nullptr);
    REQUIRE(b.circuits[0].runs_with.empty());
    REQUIRE(b.accepts[0].circuit == nullptr);
    REQUIRE(resolve(typed::Job{}).panels.empty());
}

TEST_CASE("building: a building can be moved, and all still point at each other", "[building]") {
    auto first = resolve(lake_house());
    auto const b = std::move(first);
    for (Circuit const& c : b.circuits)
        REQUIRE(std::ranges::any_of(b.panels, [&](Panel const& p) { return c.panel == &p; }));
    REQUIRE(b.pairs[0].first->partner() == b.pairs[0].second);
    REQUIRE(b.pairs[0].first == circuit_named(b, "K1"));
    REQUIRE(b.runs[0].to.box == &b.boxes.front());
}

TEST_CASE("building: a load in amperes is at the circuit's own volts", "[building]") {
    // Source: apparent power is volts times amperes; 120/208: 208 V between two phases of a wye.
    auto const [kind, poles, va] = GENERATE(table<SupplyKind, int, VoltAmperes>({
        {SupplyKind::split_120_240, 1, 1440_VA},
        {SupplyKind::split_120_240, 2, 2880_VA},
        {SupplyKind::wye_120_208, 1, 1440_VA},
        {SupplyKind::wye_120_208, 2, 2496_VA},
        {SupplyKind::bridged_120, 1, 1440_VA},
        {SupplyKind::bridged_120, 2, 2880_VA}, // runs on no such source; its nameplate is of 240 V
        {SupplyKind::dc_12, 1, 144_VA},
        {SupplyKind::dc_48, 2, 576_VA}, // both poles of one bus
    }));
    typed::Job job;
    job.panels = {panel("Main", kind)};
    job.circuits = {circuit("K1")};
    job.circuits[0].poles = poles;
    job.circuits[0].load_amps = 12_A;
    CAPTURE(kind, poles);
    REQUIRE(resolve(job).circuits[0].load == va);
}

TEST_CASE("building: of several sources the first that gives the circuit volts counts for amperes", "[building]") {
    typed::Job job;
    job.supplies = {
        typed::Supply{.name = "Cord", .kind = SupplyKind::bridged_120, .amps = {}, .leg = Leg::a, .off = {}},
        typed::Supply{.name = "Grid", .kind = SupplyKind::wye_120_208, .amps = {}, .leg = Leg::a, .off = {}}};
    job.panels = {panel("Main", std::nullopt)};
    job.panels[0].supplies = {"Cord", "Grid"};
    job.circuits = {circuit("K1")};
    job.circuits[0].poles = 2;
    job.circuits[0].load_amps = 12_A;
    REQUIRE(resolve(job).circuits[0].load == 2496_VA);
}

TEST_CASE("building: what says exactly the name of a [[box]] meets there", "[building]") {
    auto job = lake_house();
    typed::Box counter{"Counter box", "2-gang", {}, {"receptacle"}, false, {}},
        far{"Far box", "", Volume{524'000'000}, {}, {}, {}};
    job.boxes = {far, counter, {"Nobody's box", "", {}, {}, {}, {}}};
    typed::Cable on_to;
    on_to.mark = "W1";
    on_to.kind = "12/2";
    on_to.from = "Counter box";
    on_to.to = "Far box";
    on_to.carries = {"K2", "K1"};
    on_to.role = "on to";
    job.cables = {on_to};
    auto const b = resolve(job);
    REQUIRE(b.boxes.size() == 4); // the three, and where K2 ends
    REQUIRE(b.boxes[0].volume == Volume{524'000'000});
    REQUIRE(b.boxes[0].room.empty());
    REQUIRE(b.boxes[1].listed);
    REQUIRE(b.boxes[1].devices == std::vector<std::string>{"receptacle"});
    REQUIRE(b.boxes[1].clamps == false);
    REQUIRE_FALSE(b.boxes[3].listed);
    REQUIRE(b.runs[0].to.box == &b.boxes[1]);
    REQUIRE(b.runs[3].to.box == &b.boxes[1]);
    Run const& piece = b.runs.back();
    REQUIRE(piece.from.box == &b.boxes[1]);
    REQUIRE(piece.to.box == &b.boxes[0]);
    REQUIRE(piece.role == RunRole::on_to);
    REQUIRE(piece.carries == std::vector<Circuit const*>{circuit_named(b, "K1"), circuit_named(b, "K2")});
    // A [[cable]] it stays, though it carries circuits.
    REQUIRE_FALSE((piece.of_circuit || piece.is_home_run() || piece.is_feeder()));
    REQUIRE(cable_named(b, "W1") == &piece);
}

TEST_CASE("building: a circuit's name alone leads to no [[box]]", "[building]") {
    typed::Job job;
    job.panels = {panel("Main", SupplyKind::split_120_240)};
    job.circuits = {circuit("K1")};
    job.circuits[0].name = "Counter";
    job.boxes = {{"Counter", "", {}, {}, {}, {}}};
    auto const b = resolve(job);
    REQUIRE(b.boxes.size() == 2);
    REQUIRE_FALSE(b.runs[0].to.box->listed);
}

TEST_CASE("building: a situation knows the supply that it names", "[building]") {
    typed::Job job;
    job.supplies = {
        typed::Supply{.name = "Grid", .kind = SupplyKind::split_120_240, .amps = {}, .leg = Leg::a, .off = {}},
        typed::Supply{.name = "Generator", .kind = SupplyKind::bridged_120, .amps = {}, .leg = Leg::a, .off = {}}};
    job.panels = {panel("Main", std::nullopt)};
    job.panels[0].supplies = {"Grid", "Generator"};
    job.situations = {{"Outage", 500'000, {}, {}, "Generator"}, {"Evening", 500'000, {}, {}, {}}};
    auto const b = resolve(job);
    REQUIRE(b.situations[0].supply == &b.supplies[1]);
    REQUIRE(b.situations[1].supply == nullptr);
}
