// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Panels below others, neutrals, heat on a wye, supplies of an outbuilding. Conductors and volts are counted (physics);
// sections stand beside what they say.
#include "job/job.h"
#include "made_job.h"

#include "catch.h"

using namespace made;

namespace {
typed::Panel panel(std::string name, std::string feeder = "") {
    typed::Panel p;
    p.name = std::move(name);
    p.spaces = 12;
    if (!feeder.empty()) p.feeder = typed::FeederName{"Main", std::move(feeder)};
    return p;
}
typed::Job with_shop(Make feeder, SupplyKind kind = SupplyKind::split_120_240) {
    typed::Job made = job({feeder.use("feeder")}, kind);
    made.panels.push_back(panel("Shop", "SP"));
    return made;
}
Make old(Make m) { return m.old(); }
} // namespace

TEST_CASE("panel-feeder-wires: two hots, neutral and ground for two legs", "[check][panel]") {
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(says("panel-feeder-wires", with_shop(two_pole("SP", 1).cable("6/2")), edition) == "error SP");
        REQUIRE(says("panel-feeder-wires", with_shop(old(two_pole("SP", 1).cable("6/2"))), edition) == "warning SP");
        REQUIRE(says("panel-feeder-wires", with_shop(two_pole("SP", 1).cable("6/3")), edition).empty());
    }
    REQUIRE(says("panel-feeder-wires", with_shop(two_pole("SP", 1).cable("6/2"), SupplyKind::wye_120_208)) ==
            "error SP");
    auto const f = found("panel-feeder-wires", with_shop(two_pole("SP", 1).cable("6/2"))).at(0);
    REQUIRE(f.message == "The feeder SP of panel \"Shop\" needs two hots, a neutral and a ground; its 6/2 has 2 "
                         "insulated wires.");
    REQUIRE(f.reference.source == Source::practice); // counted, so an error
    // One fault, one finding.
    REQUIRE(says("wire-conductors", with_shop(two_pole("SP", 1).cable("6/2"))).empty());
    REQUIRE(says("wire-conductors", with_shop(two_pole("SP", 1).cable("6/3"))).empty());
    // What is not known is not judged; a piece further on is.
    auto pieces = with_shop(two_pole("SP", 1).cable("6/3"));
    pieces.circuits[0].run.push_back({"", from_mm(5000), ""});
    REQUIRE(says("panel-feeder-wires", pieces).empty());
    pieces.circuits[0].run[1].kind = "6/2";
    REQUIRE(says("panel-feeder-wires", pieces) == "error SP");
    // What is really in the cable counts.
    REQUIRE(says("panel-feeder-wires", with_shop(two_pole("SP", 1).cable("6/3").colors({"black", "red"}))) ==
            "error SP");
}

TEST_CASE("panel-feeder-wires: one hot for a panel of 120 V", "[check][panel]") {
    auto made = with_shop(one_pole("SP", 1).cable("10/2"));
    REQUIRE(says("panel-feeder-wires", made) == "error SP"); // the panel is taken to have both legs
    REQUIRE_THAT(found("panel-feeder-wires", made).at(0).fix, Contains("120 on both legs"));
    made.panels[1].supply = typed::Supply{"", SupplyKind::bridged_120, {}, Leg::a, {}};
    REQUIRE(says("panel-feeder-wires", made).empty());
    made.panels[1].supply->kind = SupplyKind::one_leg_120;
    REQUIRE(says("panel-feeder-wires", made, "CE 2021").empty());
    made.circuits[0].colors = {"black"};
    REQUIRE(says("panel-feeder-wires", made) == "error SP");
    REQUIRE(says("panel-feeder-wires", with_shop(one_pole("SP", 1).cable("10/2"), SupplyKind::bridged_120)).empty());
    REQUIRE(says("panel-feeder-wires", with_shop(one_pole("SP", 1).cable("10/2"), SupplyKind::dc_48)).empty());
}

TEST_CASE("panel-sub-neutral: a note at every panel below another", "[check][panel]") {
    auto made = with_shop(two_pole("SP", 1).cable("6/3"));
    for (auto const& edition : editions()) REQUIRE(says("panel-sub-neutral", made, edition) == "note Shop");
    REQUIRE_THAT(found("panel-sub-neutral", made).at(0).message, Contains("fed from panel \"Main\""));
    made.circuits[0].existing = true;
    made.panels[1].existing = true;
    REQUIRE(says("panel-sub-neutral", made) == "note Shop");
    REQUIRE(says("panel-sub-neutral", job({one_pole("A", 1)})).empty());
    auto far = job({one_pole("A", 1)});
    far.panels[0].fed_from = "House panel, spaces 18 and 20"; // the panel above is not in the job
    REQUIRE(says("panel-sub-neutral", far) == "note Main");
    far.panels[0].fed_from = "Meter, north wall";
    REQUIRE(says("panel-sub-neutral", far).empty());
    REQUIRE(says("panel-sub-neutral", with_shop(one_pole("SP", 1), SupplyKind::dc_24)).empty());
}

TEST_CASE("panel-neutral-terminals: one terminal a neutral, one neutral a pair", "[check][panel]") {
    // Source: NEC 408.41.
    auto made = pair_job({1, 0}, {3, 0}, Tie::two_pole_breaker);
    made.circuits[1].run.clear();
    made.circuits.push_back(one_pole("A", 5));
    made.circuits.push_back(two_pole("WH", 2));                           // two hots only
    made.circuits.push_back(two_pole("RG", 6).cable("8/3").use("range")); // brings one
    made.circuits.push_back(one_pole("S", 9).use("spare").with([](typed::Circuit& c) { c.run.clear(); }));
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        made.panels[0].neutral_terminals = 3;
        REQUIRE(says("panel-neutral-terminals", made, edition).empty());
        made.panels[0].neutral_terminals = 2;
        REQUIRE(says("panel-neutral-terminals", made, edition) == "error Main");
    }
    REQUIRE_THAT(found("panel-neutral-terminals", made).at(0).message,
                 Contains("has 2 terminals for neutrals and needs 3"));
    for (typed::Circuit& c : made.circuits) c.existing = true;
    REQUIRE(says("panel-neutral-terminals", made) == "error Main");
    made.panels[0].neutral_terminals.reset();
    REQUIRE(says("panel-neutral-terminals", made).empty());
    // A cable that is not known: certain of one pole, not of two.
    auto unknown = job({one_pole("A", 1).cable(""), two_pole("B", 3).cable("")});
    unknown.panels[0].neutral_terminals = 1;
    REQUIRE(says("panel-neutral-terminals", unknown).empty());
    unknown.panels[0].neutral_terminals = 0;
    REQUIRE(says("panel-neutral-terminals", unknown) == "error Main");
    // A run that goes on brings no second neutral to the panel.
    auto longer = job({one_pole("A", 1)});
    longer.circuits[0].run.push_back({"12/2", from_mm(5000), ""});
    longer.panels[0].neutral_terminals = 1;
    REQUIRE(says("panel-neutral-terminals", longer).empty());
}

TEST_CASE("panel-208-heat: three quarters of the power between two phases of a wye", "[check][panel]") {
    auto const heaters = std::vector<typed::Circuit>{
        two_pole("H1", 1).load(1500_VA).use("baseboard"), two_pole("WH", 5).load(3000_VA).use("water heater"),
        two_pole("RG", 9).load(8000_VA).use("range"), one_pole("H2", 2).use("heating")};
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        REQUIRE(says("panel-208-heat", job(heaters, SupplyKind::wye_120_208), edition) == "warning H1 WH");
        REQUIRE(says("panel-208-heat", job(heaters), edition).empty());
    }
    // 208² / 240² = 0.751: 1500 VA give 1127, 3000 VA 2253.
    REQUIRE_THAT(found("panel-208-heat", job(heaters, SupplyKind::wye_120_208)).at(0).message,
                 Contains("75 %") && Contains("H1 1127 VA of its 1500 VA") && Contains("WH 2253 VA of its 3000 VA"));
    REQUIRE(says("panel-208-heat", job({two_pole("H1", 1).use("baseboard").old()}, SupplyKind::wye_120_208)) ==
            "warning H1");
    REQUIRE(says("panel-208-heat", job(heaters, SupplyKind::bridged_120)).empty());
    auto in_amperes = job({two_pole("H1", 1).use("baseboard")}, SupplyKind::wye_120_208);
    in_amperes.circuits[0].load.reset();
    in_amperes.circuits[0].load_amps = 7_A; // at 208 V: what it gives at 240 V nobody said
    REQUIRE_THAT(found("panel-208-heat", in_amperes).at(0).message, Contains("there: H1"));
    auto second = job(heaters);
    second.panels[0].supply.reset();
    second.panels[0].supplies = {"Grid", "Marina post"};
    second.supplies = {{"Grid", SupplyKind::split_120_240, {}, Leg::a, {}},
                       {"Marina post", SupplyKind::wye_120_208, {}, Leg::a, {"WH"}}};
    REQUIRE(says("panel-208-heat", second) == "warning H1"); // the tank is kept off there
    REQUIRE_THAT(found("panel-208-heat", second).at(0).message, Contains("\"Marina post\" gives 208 V"));
}

TEST_CASE("panel-outbuilding: one supply into one building", "[check][panel]") {
    // Source: NEC 225.30; a multiwire circuit counts as one. The CE Code: no rule found, custom.
    auto const into = [](Make m) { return m.with([](typed::Circuit& c) { c.building = "Shed"; }); };
    auto const two = job({into(one_pole("S1", 1)), into(one_pole("S2", 3)), one_pole("K1", 5)});
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        std::string const gravity = edition.starts_with("NEC") ? "error" : "warning";
        REQUIRE(says("panel-outbuilding", two, edition) == gravity + " S1 S2");
        auto made = two;
        made.circuits[0].existing = made.circuits[1].existing = true;
        REQUIRE(says("panel-outbuilding", made, edition) == gravity + " S1 S2");
        made = two;
        made.circuits[1].building.clear();
        REQUIRE(says("panel-outbuilding", made, edition).empty());
        made.circuits[1].building = "Barn"; // each has one
        REQUIRE(says("panel-outbuilding", made, edition).empty());
    }
    auto pair = pair_job({1, 0}, {3, 0}, Tie::two_pole_breaker);
    for (typed::Circuit& c : pair.circuits) c.building = "Shed";
    REQUIRE(says("panel-outbuilding", pair).empty());
    pair.circuits.push_back(into(one_pole("S3", 5)));
    REQUIRE(says("panel-outbuilding", pair) == "error K1 K2 S3");
    REQUIRE_THAT(found("panel-outbuilding", pair).at(0).message, Contains("circuit K1+K2 of panel \"Main\""));
    auto solar = job({into(one_pole("S1", 1)), into(two_pole("PV", 3).use("solar"))}); // a source is no supply of it
    REQUIRE(says("panel-outbuilding", solar).empty());
}

TEST_CASE("panel-outbuilding: feeders, and exceptions that may let them be", "[check][panel]") {
    auto const into = [](Make m) { return m.with([](typed::Circuit& c) { c.building = "Shed"; }); };
    auto made = with_shop(two_pole("SP", 1).cable("6/3"));
    made.panels[1].building = "Shed";
    made.circuits.push_back(into(one_pole("A", 1).in("Shop"))); // inside
    made.circuits.push_back(into(two_pole("B", 3).in("Shop")));
    REQUIRE(says("panel-outbuilding", made).empty());
    made.circuits.push_back(into(one_pole("S2", 5)));
    REQUIRE(says("panel-outbuilding", made) == "error SP S2");
    made.circuits.pop_back();
    // Source: NEC 225.30(B) of 2020: several feeders of one panel may do.
    made.circuits.push_back(two_pole("SQ", 5).cable("6/3").use("feeder"));
    made.panels.push_back(panel("Kiln", "SQ"));
    made.panels[2].building = "Shed";
    REQUIRE(says("panel-outbuilding", made, "NEC 2017") == "error SP SQ");
    REQUIRE(says("panel-outbuilding", made, "NEC 2020") == "warning SP SQ");
    REQUIRE(says("panel-outbuilding", made, "CE 2024") == "warning SP SQ");
    REQUIRE_THAT(found("panel-outbuilding", made, "NEC 2020").at(0).message, !Contains("from memory"));
    REQUIRE_THAT(found("panel-outbuilding", made, "NEC 2023").at(0).message, Contains("from memory, up to 6 feeders"));
    // Source: NEC 225.30(D) of 2017, (E) of 2020 and 2023: supplies of different voltages.
    auto volts = job({into(one_pole("S1", 1)), into(two_pole("W", 3)), one_pole("K1", 2)});
    REQUIRE(says("panel-outbuilding", volts) == "warning S1 W");
    volts.circuits.push_back(into(one_pole("S2", 7)));
    REQUIRE(says("panel-outbuilding", volts) == "error S1 W S2");
    // A building with a service of its own and a circuit from elsewhere.
    auto own = job({into(one_pole("S1", 1)), one_pole("K1", 5)});
    own.panels.push_back(panel("Barn panel"));
    own.panels[1].supply = typed::Supply{};
    own.panels[1].building = "Shed";
    REQUIRE(says("panel-outbuilding", own) == "error S1");
    REQUIRE_THAT(found("panel-outbuilding", own).at(0).message, Contains("what feeds panel \"Barn panel\""));
}

TEST_CASE("panel-outbuilding: a panel all of whose circuits name one building stands there", "[check][panel]") {
    std::vector<typed::Circuit> all;
    for (int i = 0; i < 5; ++i)
        all.push_back(
            one_pole("S" + std::to_string(i), 2 * i + 1).with([](typed::Circuit& c) { c.building = "Shed"; }));
    REQUIRE(says("panel-outbuilding", job(all)).empty());
    all.push_back(one_pole("K1", 2));
    REQUIRE(says("panel-outbuilding", job(all)) == "error S0 S1 S2 S3 S4");
}

TEST_CASE("panel-sub-neutral: a cord, an inverter or a generator alone has its one bond somewhere", "[check][panel]") {
    // Common practice, no source: where the bond is, the papers of the source say.
    auto const fed = [](std::string const& from) {
        auto made = job({one_pole("A", 1)});
        made.panels[0].fed_from = from;
        return made;
    };
    for (auto const* from :
         {"Shore cord, 30 A", "Power inlet", "Inverter, 3 kW", "Generator", "Off-grid battery bank"}) {
        CAPTURE(from);
        for (auto const* edition : {"NEC 2023", "CE 2024"})
            REQUIRE(says("panel-sub-neutral", fed(from), edition) == "note Main");
    }
    REQUIRE_THAT(found("panel-sub-neutral", fed("Inverter")).at(0).fix, Contains("Find out where the one bond is"));
    for (auto const* from : {"", "Meter, north wall", "Transfer switch, meter and generator", "Grid"}) {
        CAPTURE(from);
        REQUIRE(says("panel-sub-neutral", fed(from)).empty());
    }
    REQUIRE(says("panel-sub-neutral", job({one_pole("A", 1)}, SupplyKind::bridged_120)) == "note Main");
    // A house that has the grid too is bonded at its service.
    auto both = job({one_pole("A", 1)});
    both.panels[0].supply.reset();
    both.panels[0].supplies = {"Grid", "Generator"};
    both.supplies = {{"Grid", SupplyKind::split_120_240, {}, Leg::a, {}},
                     {"Generator", SupplyKind::split_120_240, {}, Leg::a, {}}};
    REQUIRE(says("panel-sub-neutral", both).empty());
    both.panels[0].supplies = {"Generator"};
    REQUIRE(says("panel-sub-neutral", both) == "note Main");
}

TEST_CASE("panel-not-joined: a panel of the job is named and no feeder joins them", "[check][panel]") {
    auto made = with_shop(two_pole("SP", 1).cable("6/3"));
    for (auto const& edition : editions()) REQUIRE(says("panel-not-joined", made, edition).empty());
    made.circuits[0].load.reset();
    made.panels[1].feeder.reset();
    made.panels[1].supply = typed::Supply{"", SupplyKind::split_120_240, {}, Leg::a, {}};
    made.panels[1].fed_from = "Main panel, spaces 1 and 3";
    for (auto const& edition : editions()) REQUIRE(says("panel-not-joined", made, edition) == "warning Shop");
    REQUIRE_THAT(found("panel-not-joined", made).at(0).fix, Contains("feeder = \"Main/SP\""));
    // A service is no panel of the job, and a word within another none either.
    made.panels[1].fed_from = "Meter by the main door";
    REQUIRE(says("panel-not-joined", made) == "warning SP"); // the feeder's fault now
    made.panels[1].fed_from = "Maintenance building";
    REQUIRE(says("panel-not-joined", made) == "warning SP");
    REQUIRE_THAT(found("panel-not-joined", made).at(0).fix, Contains("feeder = \"Main/SP\""));
    // What it feeds need not be in the job, where its load was reckoned.
    made.circuits[0].load = 4000_VA;
    REQUIRE(says("panel-not-joined", made).empty());
    REQUIRE(says("panel-not-joined", job({one_pole("A", 1)})).empty());
}
