// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The signs at a panel: which code asks for which, and what they say. Sources: NEC 408.4(B), 110.22(A), 705.12 and CE
// 2-100(2), (3), (4) as trade pages tell them; 230.85 of 2020 and 2023, 225.41 of 2023, 702.7, 705.10, 710.15(C) by
// texts and trade pages; NEC 110.24, 230.70(B), CE 64-112, 68-068, 84-030 and the load marking of 2024 from memory. In
// capitals stand the words that a code gives, the rest is ours.
#include "building/resolve.h"
#include "codebook/cite.h"
#include "job/job.h"
#include "made_job.h"
#include "reckon/signs.h"

#include "catch.h"

using namespace made;

namespace {
std::vector<PanelSign> signs_at(typed::Job const& job, std::string const& edition, std::size_t panel = 0) {
    auto const building = resolve(job);
    return signs_of({building, as_typed(job), *code_book(edition)}, building.panels.at(panel));
}
// Their ids in a row.
std::string ids(typed::Job const& job, std::string const& edition, std::size_t panel = 0) {
    std::string all;
    for (PanelSign const& s : signs_at(job, edition, panel))
        all += (all.empty() ? "" : " ") + std::string(s.sign->id) + (s.circuit.empty() ? "" : "@" + s.circuit);
    return all;
}

typed::Job home(std::vector<typed::Circuit> circuits = {}) {
    auto made = job(std::move(circuits));
    made.dwelling = typed::Dwelling{};
    return made;
}

// The grid and a cord inlet that feeds both legs with one 120 V.
typed::Job two_sources(typed::Job made) {
    made.panels[0].supply.reset();
    made.panels[0].supplies = {"Grid", "Cord inlet"};
    made.supplies = {{"Grid", SupplyKind::split_120_240, {}, Leg::a, {}},
                     {"Cord inlet", SupplyKind::bridged_120, 30_A, Leg::a, {"WH"}}};
    return made;
}

typed::Circuit solar(int space) {
    return two_pole("SO", space).use("solar").called("Solar, roof").with([](typed::Circuit& c) { c.fixed = true; });
}
} // namespace

TEST_CASE("panel-sign: what each edition asks for at a service", "[check][panel]") {
    auto const [edition, of_home, of_workshop] = GENERATE(table<std::string, std::string, std::string>({
        {"NEC 2017", "service-disconnect", "service-disconnect fault-current"},
        {"NEC 2020", "service-disconnect emergency-disconnect", "service-disconnect fault-current"},
        {"NEC 2023", "service-disconnect emergency-disconnect", "service-disconnect fault-current"},
        {"CE 2018", "largest-main", "largest-main"},
        {"CE 2021", "largest-main", "largest-main"},
        {"CE 2024", "largest-main calculated-load", "largest-main"},
    }));
    CAPTURE(edition);
    REQUIRE(ids(home(), edition) == of_home);
    REQUIRE(ids(job({}), edition) == of_workshop);
    REQUIRE(says("panel-sign", home(), edition) == "note Main");
    auto old = home();
    old.panels[0].existing = true; // what hangs there, hangs there
    REQUIRE(says("panel-sign", old, edition).empty());
    REQUIRE(says("panel-sign", job({}, SupplyKind::dc_12), edition).empty());
    REQUIRE(says("panel-sign", job({}, SupplyKind::one_leg_120), edition).empty()); // a cord is no service
}

TEST_CASE("panel-sign: what another panel feeds is no service", "[check][panel]") {
    auto const edition = GENERATE(from_range(editions()));
    auto made = job({});
    made.panels[0].fed_from = "House panel, spaces 18 and 20";
    CAPTURE(edition);
    CHECK(ids(made, edition).empty());
}

TEST_CASE("panel-sign: where a feeder comes from, outside dwellings under NEC", "[check][panel]") {
    auto made = job({two_pole("SP", 3)});
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supply.reset();
    shed.feeder = typed::FeederName{"Main", "SP"};
    made.panels.push_back(shed);
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) REQUIRE(ids(made, edition, 1) == "fed-from");
    REQUIRE(text(signs_at(made, "NEC 2023", 1).at(0), "en") == "Fed from panel Main, breaker SP");
    REQUIRE(text(signs_at(made, "NEC 2023", 1).at(0), "fr") == "Alimenté par le panneau Main, disjoncteur SP");
    REQUIRE(text(signs_at(made, "NEC 2023", 1).at(0), "es") == "Alimentado desde el tablero Main, interruptor SP");
    REQUIRE(signs_at(made, "NEC 2023", 1).at(0).reference.section == "408.4(B)");
    REQUIRE(ids(made, "CE 2024", 1).empty());
    made.dwelling = typed::Dwelling{};
    REQUIRE(ids(made, "NEC 2023", 1).empty());
    made.panels[1].building = "Boat house";
    for (auto const& edition : editions())
        REQUIRE(ids(made, edition, 1) == (edition == "NEC 2023" // 225.41: a dwelling that a feeder feeds
                                              ? "feeder-emergency-disconnect outbuilding-disconnect"
                                              : "outbuilding-disconnect"));
    REQUIRE(text(signs_at(made, "CE 2018", 1).at(0), "en") == "Switches off all of: Boat house");
}

TEST_CASE("panel-sign: a source of 120 V on both legs", "[check][panel]") {
    auto made = two_sources(job({two_pole("WH", 1).use("water heater")}));
    made.panels[0].existing = true;
    for (auto const& edition : editions()) REQUIRE(ids(made, edition) == "several-sources single-120-volt");
    auto const signs = signs_at(made, "NEC 2023");
    REQUIRE(text(signs[0], "en") == "More than one source can feed this panel: Grid, Cord inlet. Before work make sure "
                                    "that every one of them is off");
    REQUIRE_THAT(text(signs[1], "en"),
                 Contains("WARNING: SINGLE 120-VOLT SUPPLY. DO NOT CONNECT MULTIWIRE BRANCH CIRCUITS!") &&
                     Contains("fed by Cord inlet") && Contains(". Before Cord inlet is used, switch off WH"));
    REQUIRE_THAT(text(signs[1], "fr"), Contains("Avertissement") && Contains("couper WH"));
    REQUIRE_THAT(text(signs[1], "es"), Contains("Advertencia") && Contains("desconectar WH"));
    // Where no section asks, the note says that it is advice.
    REQUIRE_THAT(found("panel-sign", made, "CE 2018").at(0).message, Contains("no code asks for 2 signs"));
    REQUIRE(found("panel-sign", made, "CE 2018").at(0).reference.section.empty());
    // CE 14-414(1)(b), (3), as notes on 2021 tell it.
    REQUIRE_THAT(found("panel-sign", made, "CE 2021").at(0).message, Contains("asks for 1 sign: more than one source"));
    REQUIRE(found("panel-sign", made, "CE 2021").at(0).reference.section == "14-414(1)(b), (3)");
    REQUIRE_THAT(found("panel-sign", made, "NEC 2023").at(0).message, Contains("the code asks for 2 signs"));
    REQUIRE(found("panel-sign", made, "NEC 2023").at(0).reference.section == "702.7(A), 710.15(C)");
    REQUIRE(found("panel-sign", made, "NEC 2023").at(0).reference.source == Source::memory);
    auto const alone = job({}, SupplyKind::bridged_120); // no name to call it by
    REQUIRE(ids(alone, "NEC 2020") == "single-120-volt");
    REQUIRE_THAT(text(signs_at(alone, "NEC 2020").at(0), "en"), Contains("fed by the supply with"));
}

TEST_CASE("panel-sign: a generator inlet has one of two warnings, in the code's words", "[check][panel]") {
    auto made = home({two_pole("GI", 2).use("generator inlet").called("Inlet, north wall").breaker(30_A)});
    made.panels[0].existing = true;
    REQUIRE(ids(made, "NEC 2017") == "several-sources generator-inlet@GI");
    REQUIRE(ids(made, "CE 2021") == "several-sources");
    auto const signs = signs_at(made, "NEC 2017");
    REQUIRE_THAT(text(signs[0], "en"), Contains("the supply, Inlet, north wall (GI)"));
    // Source: NEC 702.7(C), 2014 on: "one of the following", so no other words.
    auto const fix = found("panel-sign", made, "NEC 2017").at(0).fix;
    REQUIRE_THAT(fix, Contains("beside the inlet, one of two: for a generator whose neutral is joined to its frame "
                               "\"WARNING: FOR CONNECTION OF A SEPARATELY DERIVED (BONDED NEUTRAL) SYSTEM ONLY\", for "
                               "one whose neutral is not \"WARNING: FOR CONNECTION OF A NONSEPARATELY DERIVED "
                               "(FLOATING NEUTRAL) SYSTEM ONLY\""));
    REQUIRE_THAT(text(signs[1], "fr"), Contains("Avertissement"));
    REQUIRE_THAT(text(signs[1], "es"), Contains("Advertencia"));
    // A source of the file by the inlet's name is the inlet.
    auto named = two_sources(made);
    named.circuits[0].name = "Cord inlet";
    REQUIRE_THAT(text(signs_at(named, "NEC 2017").at(0), "en"), Contains(": Grid, Cord inlet. Before"));
}

TEST_CASE("panel-sign: solar and battery", "[check][panel]") {
    auto made = home({solar(21)});
    made.panels[0].existing = true;
    made.panels[0].main_at = PanelEnd::top;
    made.panels[0].bus = 100_A;
    made.panels[0].output = 16_A;
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021"})
        REQUIRE(ids(made, edition) == "interactive-source far-source@SO");
    REQUIRE_THAT(text(signs_at(made, "NEC 2020").at(0), "en"),
                 Contains("Solar, roof (SO)") && Contains("switch off SO"));
    REQUIRE_THAT(text(signs_at(made, "NEC 2020").at(1), "en"), Contains("DO NOT RELOCATE THIS OVERCURRENT DEVICE"));
    REQUIRE_THAT(found("panel-sign", made, "NEC 2020").at(0).fix,
                 Contains("beside the breaker SO: \"WARNING: POWER SOURCE"));
    made.panels[0].bus = 125_A; // main and source within the bus: it may stand anywhere
    REQUIRE(ids(made, "NEC 2023") == "interactive-source");
}

TEST_CASE("panel-sign: a breaker whose wire carries less for hours than its handle says", "[check][panel]") {
    // CE 2-100(4). 15 A wire on a 20 A heating breaker: 15 A, where the breaker alone allows 80 %, 16 A.
    auto made = home({two_pole("H1", 1).use("baseboard").cable("14/2"), one_pole("R1", 2).cable("12/2")});
    made.panels[0].existing = true;
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"}) REQUIRE(ids(made, edition) == "continuous-load@H1");
    REQUIRE(text(signs_at(made, "CE 2024").at(0), "en") == "Caution. Continuous load on H1: at most 15 A");
    REQUIRE(ids(made, "NEC 2023").empty());
    // 6 AWG carries 55 A on a breaker of 60 A: 44 A; a wire that is too small altogether is another rule's business.
    made.circuits = {two_pole("RG", 1).use("appliance").breaker(60_A).cable("6/2"), one_pole("L1", 2).cable("14/2"),
                     two_pole("WP", 3).use("well pump").breaker(20_A).cable("14/2")};
    REQUIRE(ids(made, "CE 2024") == "continuous-load@RG");
    REQUIRE_THAT(text(signs_at(made, "CE 2024").at(0), "fr"), Contains("44 A"));
}

TEST_CASE("panel-sign: a tub or a pool behind a ground-fault device says so at its switch, under CE",
          "[check][panel]") {
    // Source: CE 68-068(5), the number from memory.
    auto made = home({two_pole("HT", 1).use("hot tub").gfci(Protection::breaker), one_pole("R1", 2)});
    made.panels[0].existing = true;
    for (auto const edition : {"CE 2018", "CE 2021", "CE 2024"}) REQUIRE(ids(made, edition) == "ground-fault-tub@HT");
    REQUIRE(ids(made, "NEC 2020").empty());
    REQUIRE_THAT(found("panel-sign", made, "CE 2018").at(0).fix,
                 Contains("beside the switch of HT: \"HT is protected by a ground fault circuit interrupter"));
    made.circuits[0].gfci = Protection::no;
    REQUIRE(ids(made, "CE 2018").empty());
}

TEST_CASE("panel-sign: every sign has a row of citations, all its words and nothing unfilled", "[check][panel]") {
    for (Sign const& s : signs()) {
        CAPTURE(s.id);
        REQUIRE(has_citation("panel-sign/" + std::string(s.id)));
        REQUIRE_FALSE(s.name.empty());
        for (auto const language : {"en", "fr", "es"}) REQUIRE_FALSE(in_language(s.text, language).empty());
        REQUIRE(in_language(s.text, "de") == s.text.en);
    }
    auto made = two_sources(job({solar(1), two_pole("GI", 3).use("generator inlet").called("{off} {marks"),
                                 two_pole("WH", 5).use("baseboard").cable("14/2"), two_pole("SP", 7)}));
    auto shed = made.panels[0];
    shed.name = "Shed";
    shed.supplies.clear();
    shed.feeder = typed::FeederName{"Main", "SP"};
    shed.building = "Shed";
    made.panels.push_back(shed);
    for (auto const& edition : editions())
        for (std::size_t const panel : {0u, 1u})
            for (PanelSign const& s : signs_at(made, edition, panel))
                for (auto const language : {"en", "fr", "es"}) {
                    auto words = text(s, language);
                    if (auto const typed = words.find("{off} {marks"); typed != std::string::npos)
                        words.erase(typed, 12); // what a person typed stays
                    REQUIRE(words.find_first_of("{}") == std::string::npos);
                    REQUIRE_FALSE(words.ends_with('.'));
                }
}
