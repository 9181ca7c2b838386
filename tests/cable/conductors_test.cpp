// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which conductor does what, and its tape. Sources: NEC 200.6, 200.7, 250.119; CE 4-024 to 4-032 as far as pages about
// them were read; colours and their order (black, red, blue): common practice, no source.
#include "building/resolve.h"
#include "cable/run.h"

#include "catch.h"
#include "words/catalogue.h"
#include "words/say.h"

#include <algorithm>

using namespace legwork;

namespace {
CodeBook const& nec() { return *code_book("NEC 2023"); }
CodeBook const& ce() { return *code_book("CE 2024"); }

typed::Job job_of(std::vector<typed::Circuit> circuits, SupplyKind kind = SupplyKind::split_120_240) {
    typed::Job job;
    typed::Panel p;
    p.name = "Main";
    p.spaces = 24;
    p.supply = typed::Supply{};
    p.supply->kind = kind;
    job.panels.push_back(p);
    for (typed::Circuit& c : circuits)
        if (c.panel.empty()) c.panel = "Main";
    job.circuits = std::move(circuits);
    return job;
}

typed::Circuit circuit(std::string mark, std::string kind, int poles = 1) {
    typed::Circuit c;
    c.mark = std::move(mark);
    c.name = "Circuit " + c.mark;
    c.poles = poles;
    c.run = {{.kind = std::move(kind), .length = from_mm(5000), .to = ""}};
    return c;
}

std::vector<typed::Circuit> pair_of(std::string const& kind) {
    auto first = circuit("K1", kind), second = circuit("K2", kind);
    first.multiwire = second.multiwire = "K";
    return {first, second};
}

std::string_view word(ConductorJob job) {
    switch (job) {
    case ConductorJob::hot: return "hot";
    case ConductorJob::neutral: return "neutral";
    case ConductorJob::ground: return "ground";
    case ConductorJob::switched: return "switched";
    case ConductorJob::traveller: return "traveller";
    case ConductorJob::interconnect: return "interconnect";
    case ConductorJob::channel: return "channel";
    case ConductorJob::spare: break;
    }
    return "spare";
}

// "black hot K1, white neutral K1, bare ground"; a tape stands in brackets, "!" forbidden, "?" ask first.
std::string told(CableRun const& run) {
    std::string words;
    for (Conductor const& c : run.conductors) {
        if (!words.empty()) words += ", ";
        words += c.color + " " + std::string(word(c.job));
        if (!c.circuit.empty()) words += " " + c.circuit;
        if (c.remark == Remark::forbidden) words += " !";
        if (c.remark == Remark::ask_first) words += " ?";
        if (!c.tape.empty()) words += " [" + c.tape + "]";
        REQUIRE((c.remark == Remark::as_made) == c.why.empty());
        REQUIRE((c.remark == Remark::as_made) == c.reference.section.empty());
        REQUIRE((c.remark == Remark::tape || c.remark == Remark::ask_first) == !c.tape.empty());
    }
    return words;
}

std::string home(typed::Job const& job, CodeBook const& book = nec()) {
    return told(cable_runs(resolve(job), book).front());
}
std::vector<CableRun> cable_runs(typed::Job const& job, CodeBook const& book) {
    return legwork::cable_runs(resolve(job), book);
}
} // namespace

TEST_CASE("one pole: black hot, white neutral", "[cable]") {
    REQUIRE(home(job_of({circuit("K1", "12/2")})) == "black hot K1, white neutral K1, bare ground");
    REQUIRE(home(job_of({circuit("K1", "12/3")})) == "black hot K1, red spare, white neutral K1, bare ground");
    REQUIRE(home(job_of({circuit("K1", "12/4")})) ==
            "black hot K1, red spare, blue spare, white neutral K1, bare ground");
}

TEST_CASE("one pole with a third conductor that has a job", "[cable]") {
    auto c = circuit("L1", "14/3");
    c.third = "switched";
    REQUIRE(home(job_of({c})) == "black hot L1, red switched L1, white neutral L1, bare ground");
    c.third = "traveller";
    REQUIRE(home(job_of({c})) == "black hot L1, red traveller L1, white neutral L1, bare ground");
    c.third = "interconnect"; // smoke alarms' 14/3
    REQUIRE(home(job_of({c})) == "black hot L1, red interconnect L1, white neutral L1, bare ground");
    c.third = "spare";
    REQUIRE(home(job_of({c})) == "black hot L1, red spare, white neutral L1, bare ground");
    c.third = "neutral"; // the white already is
    REQUIRE(home(job_of({c})) == "black hot L1, red spare, white neutral L1, bare ground");
    c.third = "switched";
    c.hot = "red";
    REQUIRE(home(job_of({c})) == "black switched L1, red hot L1, white neutral L1, bare ground");
}

TEST_CASE("two poles without a neutral: the white is re-marked as hot", "[cable]") {
    auto c = circuit("WH", "12/2", 2);
    c.use = "water heater";
    for (auto const* book : {&nec(), &ce()})
        REQUIRE(home(job_of({c}), *book) == "black hot WH, white hot WH [red], bare ground");
    c.colors = {"red", "black"}; // cable made for 240 V
    REQUIRE(home(job_of({c})) == "red hot WH, black hot WH, bare ground");
    c.colors = {};
    c.run.front().kind = "12/3"; // nothing uses the white
    REQUIRE(home(job_of({c})) == "black hot WH, red hot WH, white spare, bare ground");
    c.third = "neutral";
    REQUIRE(home(job_of({c})) == "black hot WH, red hot WH, white neutral WH, bare ground");
}

TEST_CASE("in conduit a white is never hot, in neither code", "[cable]") {
    auto c = circuit("WH", "12/2", 2);
    c.wiring = Wiring::conduit;
    for (auto const* book : {&nec(), &ce()})
        REQUIRE(home(job_of({c}), *book) == "black hot WH, white hot WH !, green ground");
    c.colors = {"black", "red"};
    REQUIRE(home(job_of({c})) == "black hot WH, red hot WH, green ground");
}

TEST_CASE("two poles with a neutral", "[cable]") {
    auto c = circuit("R1", "8/3", 2);
    c.use = "range";
    REQUIRE(home(job_of({c})) == "black hot R1, red hot R1, white neutral R1, bare ground");
    c.use.clear();
    c.outlets = {"14-30R"};
    REQUIRE(home(job_of({c})) == "black hot R1, red hot R1, white neutral R1, bare ground");
    c.outlets = {"6-20R", "5-20R"};
    REQUIRE(home(job_of({c})) == "black hot R1, red hot R1, white neutral R1, bare ground");
    c.outlets = {"6-50R"};
    c.use = "range"; // what is listed beats the use
    REQUIRE(home(job_of({c})) == "black hot R1, red hot R1, white spare, bare ground");
    c.outlets = {};
    c.use = "hot tub"; // some makes use one: a white that is there is theirs
    REQUIRE(home(job_of({c})) == "black hot R1, red hot R1, white neutral R1, bare ground");
    REQUIRE_FALSE(needs_neutral(resolve(job_of({c})).circuits.front()));
}

TEST_CASE("too few conductors are counted, and nothing is re-marked to hide it", "[cable]") {
    auto range = circuit("R1", "8/2", 2);
    range.use = "range";
    auto const run = cable_runs(job_of({range}), nec()).front();
    REQUIRE(told(run) == "black hot R1, white neutral R1, bare ground");
    REQUIRE(run.missing_hots == 1);

    auto const pair = cable_runs(job_of(pair_of("12/2")), nec()).front();
    REQUIRE(told(pair) == "black hot K1, white neutral, bare ground");
    REQUIRE(pair.missing_hots == 1);

    range.colors = {"red", "black"};
    auto const red_black = cable_runs(job_of({range}), nec()).front();
    REQUIRE(told(red_black) == "red hot R1, black hot R1, bare ground");
    REQUIRE(red_black.missing_neutrals == 1);

    auto asked = circuit("K1", "12/2");
    asked.hot = "red"; // not in this cable
    REQUIRE(cable_runs(job_of({asked}), nec()).front().missing_hots == 1);

    auto lists_two = circuit("K1", "12/3"); // the list says what is really there
    lists_two.colors = {"black"};
    REQUIRE(cable_runs(job_of({lists_two}), nec()).front().missing_neutrals == 1);
}

TEST_CASE("a pair: first on black, second on red, one neutral", "[cable]") {
    REQUIRE(home(job_of(pair_of("12/3"))) == "black hot K1, red hot K2, white neutral, bare ground");
    REQUIRE(home(job_of(pair_of("12/4"))) == "black hot K1, red hot K2, blue spare, white neutral, bare ground");
    auto said = pair_of("12/3");
    said[1].hot = "black";
    REQUIRE(home(job_of(said)) == "black hot K2, red hot K1, white neutral, bare ground");
    auto quad = pair_of("14/4");
    quad[1].third = "switched";
    REQUIRE(home(job_of(quad)) == "black hot K1, red hot K2, blue switched K2, white neutral, bare ground");
}

TEST_CASE("a pair is one cable up to its first box, then each has its own", "[cable]") {
    auto pair = pair_of("12/3");
    pair[0].box = "B3";
    pair[0].run.push_back({.kind = "12/2", .length = from_mm(4000), .to = "B4"});
    pair[1].run = {}; // home-run keys on one member only
    auto job = job_of({pair[0], circuit("X", "14/2"), pair[1]});
    auto const runs = cable_runs(resolve(job), nec());
    REQUIRE(runs.size() == 3);
    REQUIRE(runs[0].mark == "K1+K2");
    REQUIRE(runs[0].circuits == std::vector<std::string>{"K1", "K2"});
    REQUIRE(runs[0].from_panel);
    REQUIRE(runs[0].from == "Main");
    REQUIRE(runs[0].to == "B3");
    REQUIRE(runs[1].mark == "K1");
    REQUIRE(runs[1].segment == 1);
    REQUIRE(runs[1].from == "B3");
    REQUIRE(runs[1].to == "B4");
    REQUIRE_FALSE(runs[1].from_panel);
    REQUIRE(runs[2].mark == "X");
    REQUIRE(told(runs[0]) == "black hot K1, red hot K2, white neutral, bare ground");
}

TEST_CASE("where the hot changes its colour at a box, the piece says so", "[cable]") {
    auto pair = pair_of("12/3");
    for (auto& c : pair) c.run.push_back({.kind = "14/2", .length = from_mm(4000), .to = ""});
    auto const runs = cable_runs(job_of(pair), nec());
    REQUIRE(runs.size() == 3);
    REQUIRE(told(runs[1]) == "black hot K1, white neutral K1, bare ground");
    REQUIRE(runs[1].note.empty());
    REQUIRE(told(runs[2]) == "black hot K2, white neutral K2, bare ground");
    REQUIRE(english().words(runs[2].note) == "K2: its hot is red up to this box, black from here on; join the two.");
    REQUIRE(runs[0].to == "K1+K2 #1"); // the box where they part has no name
    REQUIRE(runs[2].from == runs[0].to);
    REQUIRE(runs[1].to == "Circuit K1");
    REQUIRE(runs[2].to == "Circuit K2");
}

TEST_CASE("another colour as neutral: by code, size and wiring", "[cable]") {
    // NEC 200.6(A), (B)(4), (E): 4 AWG and larger may be marked. CE: larger than No. 2; in a cable readings differ
    // below.
    auto c = circuit("O1", "12/2");
    c.colors = {"red", "black"};
    CodeBook const& nec_2017 = *code_book("NEC 2017");
    REQUIRE(home(job_of({c}), nec_2017) == "red neutral O1 !, black hot O1, bare ground");
    REQUIRE(home(job_of({c}), nec()) == "red neutral O1 ? [white], black hot O1, bare ground"); // 200.6(E) from 2020 on
    REQUIRE(home(job_of({c}), ce()) == "red neutral O1 ? [white], black hot O1, bare ground");
    c.run.front().kind = "6/2";
    REQUIRE(home(job_of({c}), nec_2017) == "red neutral O1 !, black hot O1, bare ground");
    c.run.front().kind = "4/2";
    REQUIRE(home(job_of({c}), nec()) == "red neutral O1 [white], black hot O1, bare ground");
    REQUIRE(home(job_of({c}), ce()) == "red neutral O1 ? [white], black hot O1, bare ground");
    c.run.front().kind = "1/2";
    REQUIRE(home(job_of({c}), ce()) == "red neutral O1 [white], black hot O1, bare ground");
    c.run.front().kind = "12/2";
    c.wiring = Wiring::conduit;
    REQUIRE(home(job_of({c}), nec()) == "red neutral O1 !, black hot O1, green ground");
    REQUIRE(home(job_of({c}), ce()) == "red neutral O1 !, black hot O1, green ground");
}

TEST_CASE("green and bare are ground and nothing else", "[cable]") {
    auto c = circuit("G", "12/2");
    c.colors = {"black", "green"};
    for (auto const* book : {&nec(), &ce()})
        REQUIRE(home(job_of({c}), *book) == "black hot G, green neutral G !, bare ground");
    c.colors = {"black", "white", "green"}; // the ground was listed too
    REQUIRE(home(job_of({c})) == "black hot G, white neutral G, green ground");
    c.colors = {"black", "white", "bare"};
    REQUIRE(home(job_of({c})) == "black hot G, white neutral G, bare ground");
    c.colors = {"Black", "Gray"};
    REQUIRE(home(job_of({c})) == "black hot G, grey neutral G, bare ground");
}

TEST_CASE("a switch loop: white feeds, black returns", "[cable]") {
    // Source: NEC 200.7(C)(1); CE 4-036(2) of 2015 asks for no tape there.
    auto c = circuit("L1", "14/2");
    c.switch_loop = true;
    REQUIRE(home(job_of({c})) == "black hot L1, white neutral L1, bare ground"); // the home run is no loop
    c.run.push_back({.kind = "14/2", .length = from_mm(4000), .to = "Switch by the door"});
    auto const runs = cable_runs(job_of({c}), nec());
    REQUIRE(told(runs[1]) == "black switched L1, white hot L1 [red], bare ground");
    REQUIRE(cable_runs(job_of({c}), ce())[1].conductors[1].why == say("wire/switch-loop-unasked"));
    c.run[1].kind = "14/3";
    REQUIRE(told(cable_runs(job_of({c}), nec())[1]) == "black hot L1, red switched L1, white neutral L1, bare ground");
    c.run[1] = {.kind = "14/2", .length = {}, .to = "Ceiling box"}; // does not end at a switch
    REQUIRE(told(cable_runs(job_of({c}), nec())[1]) == "black hot L1, white neutral L1, bare ground");
}

TEST_CASE("a feeder ends in its panel", "[cable]") {
    auto c = circuit("SP", "6/3", 2);
    auto job = job_of({c});
    typed::Panel sub;
    sub.name = "Shop";
    sub.feeder = typed::FeederName{"Main", "SP"};
    job.panels.push_back(sub);
    auto const run = cable_runs(resolve(job), nec()).front();
    REQUIRE(told(run) == "black hot SP, red hot SP, white neutral SP, bare ground");
    REQUIRE(run.from_panel);
    REQUIRE(run.to_panel);
    REQUIRE(run.to == "Shop");
    job.circuits[0].poles = 1;
    job.circuits[0].run[0].kind = "10/2";
    REQUIRE(home(job) == "black hot SP, white neutral SP, bare ground");
}

TEST_CASE("DC: positive as hot, negative as neutral, as made", "[cable]") {
    auto c = circuit("F1", "18/2 lighting strip");
    REQUIRE(home(job_of({c}, SupplyKind::dc_12)) == "red hot F1, black neutral F1");
    c.run.front().kind = "12/2";
    REQUIRE(home(job_of({c}, SupplyKind::dc_24)) == "black hot F1, white neutral F1, bare ground");
}

// Common practice, no source: four conductors are a common plus and a channel each. A green or white one was taken for
// the ground or a neutral once.
TEST_CASE("DC: a strip's conductors are its plus and its channels, never ground or neutral", "[cable]") {
    auto c = circuit("S1", "18/4 lighting strip");
    CHECK(home(job_of({c}, SupplyKind::dc_12)) == "black hot S1, red channel S1, green channel S1, blue channel S1");
    c = circuit("S1", "18/5 lighting strip");
    CHECK(home(job_of({c}, SupplyKind::dc_24)) ==
          "black hot S1, red channel S1, green channel S1, blue channel S1, white channel S1");
    c = circuit("S2", "18/2 lighting strip"); // red is its plus up to the controller, which nobody goes round
    c.run.push_back({.kind = "18/4 lighting strip", .length = from_mm(2000), .to = ""});
    CHECK(cable_runs(job_of({c}, SupplyKind::dc_12), nec()).back().note.empty());
    c = circuit("B1", "18/3 thermostat"); // no strip's: what no pole takes is capped
    CHECK(home(job_of({c}, SupplyKind::dc_12)) == "red hot B1, white neutral B1, green spare");
}

TEST_CASE("what carries no power has no jobs", "[cable]") {
    auto c = circuit("T1", "18/2 thermostat");
    REQUIRE(home(job_of({c})) == "red spare, white spare");
    auto unknown = circuit("U", "");
    REQUIRE(cable_runs(job_of({unknown}), nec()).front().conductors.empty());

    typed::Job job = job_of({});
    job.cables.push_back({.mark = "S1",
                          .name = "",
                          .kind = "cat6",
                          .from = "Shelf",
                          .to = "Camera",
                          .length = from_mm(11000),
                          .asked = {}});
    auto const run = cable_runs(resolve(job), nec()).front();
    REQUIRE(run.mark == "S1");
    REQUIRE(run.circuits.empty());
    REQUIRE(run.conductors.size() == 8);
    REQUIRE(std::ranges::all_of(run.conductors, [](Conductor const& w) { return w.job == ConductorJob::spare; }));
}

TEST_CASE("a spare breaker without a cable has no run, a circuit with an unknown cable has one", "[cable]") {
    typed::Circuit spare;
    spare.mark = "S";
    spare.use = "spare";
    typed::Circuit bare;
    bare.mark = "B";
    auto const runs = cable_runs(job_of({spare, bare}), nec());
    REQUIRE(runs.size() == 1);
    REQUIRE(runs.front().mark == "B");
    REQUIRE(runs.front().to == "B");
}
