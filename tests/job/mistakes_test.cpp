// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every mistake that a job file can hold: said once, in its place, with the way out.
#include "job/made_text.h"

#include "catch.h"
#include <fmt/format.h>

using namespace legwork;

namespace {

struct Mistake {
    std::string rest;              // behind job_with's six lines; begins in line 7
    std::vector<std::string> told; // the start of each complaint, a "~" and what else stands in it
};

// One complaint as expected: "8:11 circuit K1~did you mean".
bool matches(std::string const& complaint, std::string const& expected) {
    auto const tilde = expected.find('~');
    auto const start = expected.substr(0, tilde);
    auto const piece = tilde == std::string::npos ? std::string() : expected.substr(tilde + 1);
    return complaint.starts_with(start) && complaint.find(piece) != std::string::npos;
}

void check_told(std::string const& bytes, std::vector<std::string> const& expected) {
    auto const told = made::complaints(bytes);
    INFO(bytes);
    for (auto const& t : told) UNSCOPED_INFO(t);
    REQUIRE(told.size() == expected.size());
    for (std::size_t i = 0; i < told.size(); ++i) {
        INFO(expected[i]);
        CHECK(matches(told[i], expected[i]));
        CHECK_FALSE(told[i].ends_with("| ")); // there is always a way out
    }
}

void check_all(std::vector<Mistake> const& mistakes) {
    for (auto const& m : mistakes) check_told(made::job_with(m.rest), m.told);
}

// A circuit of mark K1 with these lines behind its mark: they begin in line 9.
std::string circuit(std::string const& lines, std::string const& mark = "K1") {
    return fmt::format("[[circuit]]\nmark = \"{}\"\n{}\n", mark, lines);
}

} // namespace

TEST_CASE("keys: unknown, of the wrong kind", "[job][mistakes]") {
    check_all({
        {circuit("lenght = \"9 m\""), {"9:1 circuit K1: there is no key \"lenght\"~did you mean \"length\"?"}},
        {circuit("  frobnicate = 1"), {"9:3 circuit K1: there is no key \"frobnicate\"~take it away"}},
        {circuit("name = 5"), {"9:8 circuit K1: \"name\" takes text in quotes, not a whole number~name = "}},
        {circuit("poles = \"2\""),
         {"9:9 circuit K1: \"poles\" takes a whole number from 1 to 2, without quotes, not text"}},
        {circuit("poles = \"?\""), {"9:9 circuit K1: \"poles\" takes a whole number"}},
        {circuit("off = \"yes\""), {"9:7 circuit K1: \"off\" takes true or false, without quotes, not text"}},
        {circuit("outlets = \"5-20R\""), {"9:11 circuit K1: \"outlets\" takes a list of receptacle types, not text"}},
        {circuit("outlets = [\"5-20R\", 5]"), {"9:21 circuit K1: \"outlets\" is a list of texts, not a whole number"}},
        {circuit("load = [\"1 VA\"]"), {"9:8 circuit K1: \"load\" takes a load, not a list"}},
        {circuit("segments = 5"), {"9:12 circuit K1: \"segments\" is a list of tables, not a whole number"}},
        {circuit("segments = [\"12/3\"]"), {"9:13 circuit K1: \"segments\" is a list of tables, not of text"}},
        {"[circuit]\nmark = \"K1\"\n", {"7:1 the file: \"circuit\" is a list of tables, not a table~[[circuit]]"}},
        {"[[crcuit]]\nmark = \"K1\"\n", {"7:1 the file: there is no key \"crcuit\"~did you mean \"circuit\"?"}},
        {"[dweling]\narea = \"64 m2\"\n", {"7:1 the file: there is no key \"dweling\"~did you mean \"dwelling\"?"}},
        {"[dwelling]\narea = 64\nrooms = 3\n",
         {"8:8 [dwelling]: area = 64 is not an area~write the unit: \"64 m",
          "9:1 [dwelling]: there is no key \"rooms\""}},
    });
}

TEST_CASE("[dwelling]: what the load calculation asks for", "[job][mistakes]") {
    auto const home = [](std::string const& line) { return circuit("") + "[dwelling]\n" + line + "\n"; };
    auto const wrong = [&](std::string const& line, std::string const& column, std::string const& rest) {
        return Mistake{home(line), {"11:" + column + " " + rest}};
    };
    check_all({
        wrong("basement = 40", "12", "[dwelling]: basement = 40 is not an area~write the unit: \"40 m"),
        wrong("laundry_circuit = 1", "1",
              "[dwelling]: there is no key \"laundry_circuit\"~did you mean \"laundry_circuits\"?"),
        wrong("thermostats = 41", "15", "[dwelling]: \"thermostats\" cannot be 41~from 0 to 40"),
        wrong("together = \"heating\"", "12", "[dwelling]: \"together\" is a list of groups"),
        wrong("together = [\"heating\", \"heat pump\"]", "13",
              "[dwelling]: a group of \"together\" is a list of two loads or more~double brackets"),
        wrong("together = [[\"K1\", \"heatin\"]]", "20",
              "[dwelling]: \"heatin\" is neither a use nor the mark of a circuit~did you mean \"heating\"?"),
        wrong("together = [[\"K1\", 5]]", "20", "[dwelling]: a group holds uses and marks in quotes"),
        wrong("peak = \"62 A\"", "8", "[dwelling]: \"peak\" takes a table, not text"),
        wrong("peak = { amps = \"62 A\" }", "1",
              "peak of [dwelling]: it does not say over how many days it was read~days = 365"),
        wrong("peak = { amps = \"62 kW\", days = 30 }", "17", "peak of [dwelling]: amps = \"62 kW\""),
        wrong("energy_management = { limit = \"40 A\", circuits = [\"K2\"] }", "51",
              "energy_management of [dwelling]: there is no circuit \"K2\"~did you mean \"K1\"?"),
        wrong("energy_management = { limit = \"40 A\", circuits = [\"K1\", \"K1\"] }", "57",
              "energy_management of [dwelling]: K1 is named twice"),
        wrong("energy_management = { circuits = [\"K1\"] }", "1",
              "energy_management of [dwelling]: it has no limit~limit = \"40 A\""),
    });
    check_all({
        wrong("area = 64", "8", "[dwelling]: area = 64 is not an area~write the unit: \"64 m"),
        wrong("area = \"64\"", "8", "[dwelling]: area = \"64\"~m"),
        wrong("area = \"64 m\"", "8", "[dwelling]: area = \"64 m\"~m²"),
        wrong("area = \"0 m²\"", "8", "[dwelling]: area = \"0 m²\""),
        wrong("area = \"-5 m²\"", "8", "[dwelling]: area = \"-5 m²\""),
        wrong("area = [\"64 m²\"]", "8", "[dwelling]: \"area\" takes an area, not a list"),
        wrong("basement = \"40 kW\"", "12", "[dwelling]: basement = \"40 kW\""),
        wrong("basement = true", "12", "[dwelling]: \"basement\" takes an area, not true or false"),
        wrong("small_appliance_circuits = -1", "28",
              "[dwelling]: \"small_appliance_circuits\" cannot be -1~from 0 to 40"),
        wrong("small_appliance_circuits = \"2\"", "28",
              "[dwelling]: \"small_appliance_circuits\" takes a whole number from 0 to 40, without quotes, not text"),
        wrong("laundry_circuits = 41", "20", "[dwelling]: \"laundry_circuits\" cannot be 41~from 0 to 40"),
        wrong("laundry_circuits = 1.5", "20", "[dwelling]: \"laundry_circuits\" takes a whole number"),
        wrong("thermostats = -1", "15", "[dwelling]: \"thermostats\" cannot be -1~from 0 to 40"),
        wrong("thermostats = [4]", "15", "[dwelling]: \"thermostats\" takes a whole number"),
        wrong("together = []", "12", "[dwelling]: \"together\" names no loads~take the line away"),
        wrong("together = [[]]", "13", "[dwelling]: a group of \"together\" is a list of two loads or more"),
        wrong("together = [[\"heating\"]]", "13", "[dwelling]: a group of \"together\" is a list of two loads"),
        wrong("together = [[\"K1\", \"K1\"]]", "20", "[dwelling]: \"K1\" is named twice in one group~once"),
        wrong("together = [[\"K1\", \"K2\"]]", "20",
              "[dwelling]: \"K2\" is neither a use nor the mark of a circuit~did you mean \"K1\"?"),
        wrong("together = { a = 1 }", "12", "[dwelling]: \"together\" is a list of groups"),
        wrong("peak = { amps = \"62 A\", days = 0 }", "32",
              "peak of [dwelling]: \"days\" cannot be 0~give a number from 1 to 3660"),
        wrong("peak = { amps = \"62 A\", days = 3661 }", "32", "peak of [dwelling]: \"days\" cannot be 3661"),
        wrong("peak = { amps = \"62 A\", days = \"30\" }", "32", "peak of [dwelling]: \"days\" takes a whole number"),
        wrong("peak = { amps = \"0 A\", days = 30 }", "17", "peak of [dwelling]: amps = \"0 A\""),
        wrong("peak = { amps = 62, days = 30 }", "17", "peak of [dwelling]: amps = 62"),
        wrong("peak = { days = 30 }", "1", "peak of [dwelling]: it has no current~amps = \"62 A\""),
        wrong("peak = { amps = \"62 A\", days = 30, hours = 4 }", "36",
              "peak of [dwelling]: there is no key \"hours\""),
        wrong("energy_management = \"40 A\"", "21", "[dwelling]: \"energy_management\" takes a table, not text"),
        wrong("energy_management = { limit = \"0 A\", circuits = [\"K1\"] }", "31",
              "energy_management of [dwelling]: limit = \"0 A\""),
        wrong("energy_management = { limit = 40, circuits = [\"K1\"] }", "31",
              "energy_management of [dwelling]: limit = 40"),
        wrong("energy_management = { limit = \"40 A\" }", "1",
              "energy_management of [dwelling]: it names no circuit~circuits = [\"EV\"]"),
        wrong("energy_management = { limit = \"40 A\", circuits = [] }", "50",
              "energy_management of [dwelling]: it names no circuit~circuits = [\"EV\"]"),
        wrong("energy_management = { limit = \"40 A\", circuits = \"K1\" }", "50",
              "energy_management of [dwelling]: \"circuits\" takes a list of marks of circuits, not text"),
        wrong("energy_management = { limit = \"40 A\", circuits = [\"heating\"] }", "51",
              "energy_management of [dwelling]: \"heating\" is a use, not the mark of a circuit~by its marks"),
        wrong("energy_management = { limit = \"40 A\", circuits = [\"K1\"], device = \"x\" }", "58",
              "energy_management of [dwelling]: there is no key \"device\""),
        {circuit("interlocked = \"yes\""), {"9:15 circuit K1: \"interlocked\" takes true or false"}},
    });
    // The edges are good.
    for (auto const* line : {"thermostats = 0", "laundry_circuits = 40", "small_appliance_circuits = 0",
                             "peak = { amps = \"62 A\", days = 1 }", "peak = { amps = \"62 A\", days = 3660 }",
                             "together = [[\"heating\", \"K1\"], [\"K1\", \"heating\"]]",
                             "energy_management = { limit = \"40 A\", circuits = [\"K1\"] }", "area = \"?\""}) {
        CAPTURE(line);
        CHECK(made::complaints(made::job_with(home(line))).empty());
    }
    auto const asked = made::good(made::job_with(home("peak = { amps = \"?\", days = 365 }\nthermostats = \"?\"")));
    CHECK(asked.dwelling->asked == std::vector<std::string>{"thermostats", "peak"});
}

TEST_CASE("quantities: missing or unknown unit, negative, absurd", "[job][mistakes]") {
    check_all({
        {circuit("breaker = 20"), {"9:11 circuit K1: breaker = 20 is not a current~write the unit: \"20 A\""}},
        {circuit("breaker = \"20\""), {"9:11 circuit K1: breaker = \"20\" is not a current~write the unit: \"20 A\""}},
        {circuit("breaker = 20.5"), {"9:11 ~write the unit: \"20.5 A\""}},
        {circuit("breaker = \"20 V\""), {"9:11 ~this is a voltage"}},
        {circuit("breaker = \"1500 W\""), {"9:11 ~12.5 A"}},
        {circuit("breaker = \"-20 A\""), {"9:11 ~cannot be negative"}},
        {circuit("breaker = -20"), {"9:11 ~cannot be negative"}},
        {circuit("breaker = \"0 A\""), {"9:11 ~cannot be 0"}},
        {circuit("breaker = nan"), {"9:11 circuit K1: breaker = nan is not a current~begin with a number"}},
        {circuit("breaker = inf"), {"9:11 ~begin with a number"}},
        {circuit("breaker = \"20 A?\""), {"9:11 ~the unit of a current"}},
        {circuit("load = 1500"), {"9:8 circuit K1: load = 1500 is not a load~write the unit: \"1500 VA\""}},
        {circuit("load = \"12 V\""),
         {"9:8 circuit K1: load = \"12 V\" is not a load~\"1500 VA\"; or A, of the current at the circuit's own "
          "volts: \"12 A\""}},
        {circuit("load = \"20000 A\""), {"9:8 ~a load in amperes is at most 10 000 A here"}},
        {circuit("load = \"-12 A\""), {"9:8 ~cannot be negative"}},
        {circuit("load = \"1e9 W\""), {"9:8 ~the unit of a load"}},
        {circuit("length = 9.5"),
         {"9:10 circuit K1: length = 9.5 is not a length~write the unit: \"9.5 m\" or \"9.5 ft\""}},
        {circuit("length = \"31 furlongs\""), {"9:10 ~the unit of a length"}},
        {circuit("poles = 3"), {"9:9 circuit K1: \"poles\" cannot be 3~from 1 to 2"}},
        {circuit("poles = 0"), {"9:9 ~from 1 to 2"}},
        {circuit("poles = nan"), {"9:9 circuit K1: \"poles\" takes a whole number"}},
        {circuit("outlet_count = 0"), {"9:16 ~from 1 to 1000"}},
        {circuit("terminals = \"90 \xC2\xB0"
                 "C\""),
         {"9:13 circuit K1: \"terminals\" cannot be"}},
        {circuit("mca = \"x\"\nmop = 30"), {"9:7 ~begin with a number", "10:7 ~write the unit: \"30 A\""}},
    });
}

TEST_CASE("marks and names: missing, twice, malformed, too long", "[job][mistakes]") {
    auto const long_name = std::string(201, 'n');
    check_all({
        {"[[circuit]]\nname = \"x\"\n", {"7:1 a circuit: \"mark\" is missing~add  mark = \"K1\""}},
        {"[[circuit]]\nmark = \"\"\n", {"8:8 a circuit: \"mark\" is empty"}},
        {circuit("") + circuit(""), {"11:8 circuit \"K1\": there is another of this mark in line 8"}},
        {circuit("") + "[[cable]]\nmark = \"K1\"\n", {"11:8 cable \"K1\": there is another of this mark in line 8"}},
        {circuit("", "KITCHEN-1"), {"8:8 circuit \"KITCHEN-1\": a mark is 1 to 8"}},
        {circuit("", "K 1"), {"8:8 ~a mark is 1 to 8"}},
        {circuit("", "K\xC3\x89"), {"8:8 ~a mark is 1 to 8"}},
        {"[[cable]]\nkind = \"cat6\"\n", {"7:1 a cable: \"mark\" is missing"}},
        {circuit("name = \"" + long_name + "\""), {"9:8 circuit K1: \"name\" has 201 letters, 200 at most"}},
        {circuit("name = \"a\\nb\""), {"9:8 circuit K1: \"name\" holds a line end"}},
        {circuit("name = \"a\\u0007b\""), {"9:8 ~control character"}},
        {circuit("name = \"\"\"a\nb\"\"\""), {"9:8 ~line end"}},
        {circuit("name = \"\\u202Egpj\""), {"9:8 ~control character"}},
        {circuit("note = \"" + std::string(1001, 'n') + "\""), {"9:8 ~1001 letters, 1000 at most"}},
        {"[[panel]]\nname = \"Main\"\nspaces = 12\nsupply = \"120/240\"\n",
         {"8:8 panel \"Main\": there is another of this name in line 4"}},
        {"[[situation]]\nname = \"A\"\nother = 0.5\n[[situation]]\nname = \"A\"\nother = 0.6\n",
         {"11:8 ~there is another of this name in line 8"}},
    });
    REQUIRE(made::good(made::job_with(circuit("name = \"" + std::string(200, 'n') + "\""))).circuits.size() == 1);
    std::string accents; // letters are counted, not bytes
    for (int i = 0; i < 200; ++i) accents += "\xC3\xA9";
    REQUIRE(made::good(made::job_with(circuit("name = \"" + accents + "\""))).circuits[0].name == accents);
}

TEST_CASE("the head: code, language, date, units", "[job][mistakes]") {
    auto const panel = std::string("[[panel]]\nname = \"Main\"\nspaces = 24\nsupply = \"120/240\"\n");
    check_told(panel, {"1:1 the file: the table [job] is missing~code = "});
    check_told("[job]\nname = \"x\"\n" + panel, {"1:1 [job]: \"code\" is missing"});
    check_told("[job]\ncode = \"NEC 2022\"\n" + panel,
               {"2:8 [job]: \"code\" cannot be \"NEC 2022\"~did you mean \"NEC 2020\"?"});
    check_told("[job]\ncode = \"IEC\"\n" + panel,
               {"2:8 ~one of: CE 2018, CE 2021, CE 2024, NEC 2017, NEC 2020, NEC 2023"});
    check_told("[job]\ncode = 2023\n" + panel, {"2:8 [job]: \"code\" takes an edition, text in quotes"});
    check_told("[job]\ncode = \"CE 2024\"\nlanguage = \"de\"\n" + panel, {"3:12 [job]: \"language\" cannot be \"de\""});
    check_told("[job]\ncode = \"CE 2024\"\nlanguage = \"en+en\"\n" + panel, {"3:12 "});
    check_told("[job]\ncode = \"CE 2024\"\nlanguage = \"en+fr+es\"\n" + panel, {"3:12 "});
    check_told("[job]\ncode = \"CE 2024\"\nlanguage = \"en+\"\n" + panel, {"3:12 "});
    check_told("[job]\ncode = \"CE 2024\"\nunits = \"imperial\"\n" + panel,
               {"3:9 [job]: \"units\" cannot be \"imperial\"~one of: metric, inch"});
    check_told("[job]\ncode = \"CE 2024\"\ndate = 2026-05-02T10:00:00\n" + panel, {"3:8 [job]: \"date\" takes a date"});
    check_told("[job]\ncode = \"CE 2024\"\ndate = \"2 May\"\n" + panel, {"3:8 [job]: \"date\" takes a date"});
    check_told("[job]\ncode = \"CE 2024\"\ntails = 1.2\n" + panel, {"3:9 ~\"1.2 m\" or \"1.2 ft\""});
    check_told("[job]\ncode = \"CE 2024\"\n", {"1:1 the file: there is no panel"});
    check_told("job = 1\n" + panel, {"1:7 the file: \"job\" takes a table"});
    check_told("", {"1:1 the file: the table [job] is missing", "1:1 the file: there is no panel"});
}

TEST_CASE("words: uses, cables, receptacles, ties, colours", "[job][mistakes]") {
    check_all({
        {circuit("use = \"kitchen countre\""),
         {"9:7 circuit K1: \"use\" cannot be \"kitchen countre\"~did you mean \"kitchen counter\"?"}},
        {circuit("cable = \"12/5\""), {"9:9 circuit K1: there is no cable kind \"12/5\"~did you mean \"12/2\"?"}},
        {circuit("cable = \"13/2\""), {"9:9 ~there is no cable kind"}},
        {circuit("cable = \"cat7\""), {"9:9 ~did you mean \"cat6\"?"}},
        {circuit("cable = 12"), {"9:9 circuit K1: \"cable\" takes a cable kind, text in quotes"}},
        {circuit("outlets = [\"5-20\"]"),
         {"9:12 circuit K1: there is no receptacle type \"5-20\"~did you mean \"5-20R\"?"}},
        {circuit("tie = \"handle\"\npoles = 2"),
         {"9:7 circuit K1: \"tie\" cannot be \"handle\"~did you mean \"handle tie\"?"}},
        {circuit("tie = \"handle tie\""), {"9:7 circuit K1: a tie joins two poles"}},
        {circuit("hot = \"rde\""), {"9:7 circuit K1: \"rde\" is no colour~did you mean \"red\"?"}},
        {circuit("colors = [\"red\", \"blck\"]"), {"9:18 circuit K1: \"blck\" is no colour~did you mean \"black\"?"}},
        {circuit("colors = [\"Red\", \"black\"]\nhot = \"blue\""),
         {"10:7 circuit K1: the cable has no \"blue\" conductor"}},
        {circuit("third = \"traveler\""), {"9:9 ~did you mean \"traveller\"?"}},
        {circuit("metal = \"steel\""), {"9:9 ~one of: copper, aluminium"}},
        {circuit("wiring = \"pipe\""), {"9:10 ~one of: cable, conduit"}},
        {circuit("gfci = \"yes\""), {"9:8 circuit K1: \"gfci\" says where the protection sits"}},
        {circuit("afci = 1"), {"9:8 ~true, false, or one of \"breaker\", \"outlet\""}},
        {circuit("reach = \"up\""), {"9:9 ~one of: left, right"}},
        {circuit("reach = [25]"), {"9:9 circuit K1: the panel \"Main\" has 24 spaces, and no 25"}},
        {circuit("runs_with = [\"K2\"]"), {"9:14 circuit K1: there is no circuit \"K2\"~did you mean \"K1\"?"}},
        {circuit("cable = \"12/2\"\nsegments = [{ kind = \"12/3\" }]"),
         {"9:9 circuit K1: \"cable\" and \"segments\" both describe"}},
        {circuit("segments = []"), {"9:12 ~list of segments is empty"}},
        {circuit("segments = [{ kind = \"12/9\", lenght = \"1 m\" }]"),
         {"9:22 ~there is no cable kind",
          "9:30 circuit K1, a segment: there is no key \"lenght\"~did you mean \"length\"?"}},
        {circuit("fuse = \"10 A\""), {"9:8 circuit K1: \"fuse\" belongs to a panel of direct current"}},
        {circuit("fuse = \"10 A\"\nbreaker = \"15 A\""), {"9:8 ~both say"}},
    });
}

TEST_CASE("spaces: off the panel, blocked, taken", "[job][mistakes]") {
    auto const two = [](std::string const& a, std::string const& b) {
        return circuit("space = " + a) + circuit("space = " + b, "K2");
    };
    auto const clash = std::vector<std::string>{"12:9 circuit K2: circuit K1 stands on ~in line 9"};
    check_all({
        {circuit("space = 25"), {"9:9 circuit K1: the panel \"Main\" has 24 spaces~from 1 to 24"}},
        {circuit("space = 0"), {"9:9 circuit K1: this is no space"}},
        {circuit("space = -1"), {"9:9 ~no space"}},
        {circuit("space = 85"), {"9:9 ~no space"}},
        {circuit("space = \"7c\""), {"9:9 ~no space"}},
        {circuit("space = \"7ab\""), {"9:9 ~no space"}},
        {circuit("space = \"07\""), {"9:9 ~no space"}},
        {circuit("space = \"\""), {"9:9 ~no space"}},
        {circuit("space = \"99999999999999999999\""), {"9:9 ~no space"}},
        {circuit("space = 7.5"), {"9:9 ~no space"}},
        {circuit("space = true"), {"9:9 ~no space"}},
        {circuit("space = \"?\""), {"9:9 ~no space"}},
        {circuit("fixed = true"), {"9:9 circuit K1: \"fixed\" needs a space"}},
        {two("7", "7"), clash},
        {two("7", "\"7a\""), clash},
        {two("\"7b\"", "7"), clash},
        {two("\"7a\"", "\"7a\""), clash},
        {two("7\npoles = 2", "9"), {"13:9 circuit K2: circuit K1 stands on 9 already, in line 9"}},
        {two("7\npoles = 2", "\"9b\""), {"13:9 "}},
        {circuit("space = \"7a\"\npoles = 2") + circuit("space = \"7a\"\npoles = 2", "K2"),
         {"13:9 circuit K2: circuit K1 stands on 7a"}},
        {circuit("space = \"7b\"\npoles = 2") + circuit("space = \"9a\"", "K2"),
         {"13:9 circuit K2: circuit K1 stands on 9a"}},
        {circuit("space = \"7a\"\npoles = 2") + circuit("space = \"9b\"", "K2"),
         {"13:9 circuit K2: circuit K1 stands on 9b"}},
        {circuit("space = 23\npoles = 2"), {"9:9 circuit K1: space 23 ends its column"}},
        {circuit("space = 24\npoles = 2"), {"9:9 circuit K1: space 24 ends its column"}},
    });
    for (auto const& fine :
         {two("7", "8"), two("\"7a\"", "\"7b\""), two("7\npoles = 2", "11"),
          circuit("space = \"7a\"\npoles = 2") + circuit("space = \"7b\"\npoles = 2", "K2"),
          circuit("space = \"7b\"\npoles = 2") + circuit("space = \"9b\"", "K2"), circuit("space = 22\npoles = 2")})
        REQUIRE(made::good(made::job_with(fine)).circuits.size() <= 2);
}

TEST_CASE("spaces of a panel numbered down its columns, and blocked ones", "[job][mistakes]") {
    auto const job = [](std::string const& rest) {
        return "[job]\ncode = \"CE 2024\"\n[[panel]]\nname = \"P\"\nspaces = 11\nsupply = \"120/240\"\nnumbering = "
               "\"down\"\nblocked = [4]\n" +
               rest;
    };
    // Six rows: 1 to 6 in the first column, 7 to 11 in the second.
    check_told(job("[[circuit]]\nmark = \"A\"\npoles = 2\nspace = 6\n"), {"12:9 circuit A: space 6 ends its column"});
    check_told(job("[[circuit]]\nmark = \"A\"\npoles = 2\nspace = 11\n"), {"12:9 circuit A: space 11 ends its column"});
    check_told(job("[[circuit]]\nmark = \"A\"\nspace = 4\n"), {"11:9 circuit A: space 4 must stay empty"});
    check_told(job("[[circuit]]\nmark = \"A\"\nspace = \"4a\"\n"), {"11:9 circuit A: space 4 must stay empty"});
    check_told(job("[[circuit]]\nmark = \"A\"\npoles = 2\nspace = 3\n"), {"12:9 circuit A: space 4 must stay empty"});
    REQUIRE(made::good(job("[[circuit]]\nmark = \"A\"\npoles = 2\nspace = 5\n")).circuits.size() == 1);
}

TEST_CASE("pairs: groups, home-run keys, breakers, hots", "[job][mistakes]") {
    auto const pair = [](std::string const& a, std::string const& b) {
        return circuit("multiwire = \"K\"\n" + a) + circuit("multiwire = \"K\"\n" + b, "K2"); // 9, 10 and 13, 14
    };
    check_all({
        {circuit("multiwire = \"K\""), {"9:13 circuit K1: it is alone in the group \"K\""}},
        {circuit("multiwire = \"K\"") + circuit("multiwire = \"K\"", "K2") + circuit("multiwire = \"K\"", "K3"),
         {"15:13 circuit K3: the group \"K\" has 3 circuits"}},
        {pair("cable = \"12/3\"", "cable = \"14/3\""),
         {"14:9 circuit K2: \"cable\" differs from that of K1, in line 10"}},
        {pair("length = \"9 m\"", "length = \"10 m\""),
         {"14:10 circuit K2: \"length\" differs from that of K1, in line 10"}},
        {pair("colors = [\"red\", \"black\", \"white\"]", "colors = [\"red\", \"blue\", \"white\"]"),
         {"14:10 circuit K2: \"colors\" differs"}},
        {pair("tie = \"none\"", "tie = \"handle tie\""), {"14:7 circuit K2: \"tie\" differs"}},
        {pair("wiring = \"cable\"", "wiring = \"conduit\""), {"14:10 circuit K2: \"wiring\" differs"}},
        {pair("metal = \"copper\"", "metal = \"aluminium\""), {"14:9 circuit K2: \"metal\" differs"}},
        {pair("segments = [{ kind = \"12/3\", length = \"9 m\" }]",
              "segments = [{ kind = \"12/3\", length = \"8 m\" }]"),
         {"14:12 circuit K2: \"segments\" differs"}},
        {pair("segments = [{ kind = \"12/3\" }, { kind = \"14/2\" }]", "cable = \"14/3\""),
         {"14:9 circuit K2: \"cable\" differs"}},
        {pair("poles = 2", ""), {"10:9 circuit K1: a member of a multiwire pair has one pole"}},
        {pair("breaker = \"20 A\"\ntie = \"two-pole breaker\"", "breaker = \"15 A\""),
         {"15:11 circuit K2: a two-pole breaker has one rating, and K1 has another"}},
        {pair("hot = \"red\"", "hot = \"red\""), {"14:7 circuit K2: \"red\" is the hot of K1 already"}},
        {pair("cable = \"12/3\"\nlength = \"9 m\"", "cable = \"14/3\"\nlength = \"8 m\""),
         {"15:9 ~\"cable\" differs", "16:10 ~\"length\" differs"}},
    });
}

TEST_CASE("panels and supplies", "[job][mistakes]") {
    auto const head = std::string("[job]\ncode = \"CE 2024\"\n"); // rest begins in line 3
    auto const told = [&](std::string const& rest, std::vector<std::string> const& expected) {
        check_told(head + rest, expected);
    };
    told("[[panel]]\nspaces = 12\nsupply = \"120/240\"\n", {"3:1 a panel: \"name\" is missing"});
    told("[[panel]]\nname = \"M\"\nsupply = \"120/240\"\n", {"3:1 panel \"M\": \"spaces\" is missing"});
    told("[[panel]]\nname = \"M\"\nspaces = 12\n", {"3:1 panel \"M\": nothing says what feeds this panel"});
    told("[[panel]]\nname = \"M\"\nspaces = 0\nsupply = \"120/240\"\n",
         {"5:10 panel \"M\": \"spaces\" cannot be 0~from 1 to 84"});
    told("[[panel]]\nname = \"M\"\nspaces = 86\nsupply = \"120/240\"\n", {"5:10 ~from 1 to 84"});
    told("[[panel]]\nname = \"M\"\nspaces = 12\nsupply = \"240/120\"\n",
         {"6:10 panel \"M\": \"supply\" cannot be \"240/120\"~one of: 120/240, 120/208"});
    told("[[panel]]\nname = \"M\"\nspaces = 12\nsupply = \"120/240\"\nnumbering = \"sideways\"\nhang = \"up\"\nfirst = "
         "\"left top\"\nmain_at = \"left\"\n",
         {"7:13 ~one of: across, down", "8:8 ~one of: upright", "9:9 ~one of: top left", "10:11 ~one of: top, bottom"});
    told("[[panel]]\nname = \"M\"\nspaces = 12\nsupply = \"120/240\"\ntandem = [1, 13]\nblocked = [0]\ndead = [1.5]\n",
         {"7:14 panel \"M\": \"tandem\" cannot be 13~from 1 to 12", "8:12 ~\"blocked\" cannot be 0",
          "9:9 ~\"dead\" is a list of whole numbers"});
    told("[[panel]]\nname = \"M\"\nspaces = 7\nsupply = \"120/240\"\nlegs = [\"A\", \"B\", \"C\"]\n",
         {"7:8 panel \"M\": 7 spaces are 4 rows, and 3 letters", "7:19 panel \"M\": \"C\" is no leg"});
    told("[[panel]]\nname = \"M\"\nspaces = 8\nsupply = \"120/240\"\nlegs = \"by rows\"\n",
         {"7:8 ~did you mean \"by row\"?"});
    told("[[panel]]\nname = \"M\"\nspaces = 8\nsupply = \"120/240\"\nleg = \"B\"\n",
         {"7:7 panel \"M\": only a supply of \"120 on one leg\" has a leg"});
    told("[[panel]]\nname = \"M\"\nspaces = 8\nsupply = \"120/240\"\nmain = 60\n",
         {"7:8 panel \"M\": main = 60 is not a current~\"60 A\""});

    auto const grid = std::string("[[supply]]\nname = \"Grid\"\nkind = \"120/240\"\n");
    auto const fed = std::string("[[panel]]\nname = \"M\"\nspaces = 8\n"); // its rest begins in line 9
    told(grid + fed + "supplies = [\"Gird\"]\n",
         {"9:13 panel \"M\": there is no supply \"Gird\"~did you mean \"Grid\"?"});
    told(grid + fed + "supply = \"120/240\"\n", {"3:1 supply \"Grid\": no panel is fed by it"});
    told(grid + fed + "supplies = [\"Grid\", \"Grid\"]\n", {"9:21 panel \"M\": the supply \"Grid\" is named twice"});
    told(grid + fed + "supplies = []\nsupply = \"120/240\"\n",
         {"3:1 supply \"Grid\": no panel", "9:12 panel \"M\": the list of supplies is empty",
          "10:10 panel \"M\": \"supply\" and \"supplies\" both say"});
    told(grid + fed + "supplies = [\"Grid\"]\nfeeder = \"M/X\"\n[[circuit]]\nmark = \"X\"\n",
         {"9:12 panel \"M\": a sub-panel is fed by the sources",
          "10:10 panel \"M\": in the end this panel feeds itself"});
    told(grid + "off = [\"WX\"]\nkin = 1\nleg = \"A\"\n" + fed + "supplies = [\"Grid\"]\n[[circuit]]\nmark = \"WH\"\n",
         {"6:8 supply \"Grid\": there is no circuit \"WX\"~did you mean \"WH\"?",
          "7:1 supply \"Grid\": there is no key \"kin\"~did you mean \"kind\"?", "8:7 ~only a supply of"});
    told("[[supply]]\nname = \"G\"\n" + fed + "supplies = [\"G\"]\n", {"3:1 supply \"G\": \"kind\" is missing"});
    told(grid + "[[supply]]\nname = \"B\"\nkind = \"12 V DC\"\n" + fed + "supplies = [\"Grid\", \"B\"]\n",
         {"12:12 panel \"M\": direct current and alternating current"});
    told("[[panel]]\nname = \"D\"\nspaces = 8\nsupply = \"12 V DC\"\n[[circuit]]\nmark = \"A\"\nmultiwire = "
         "\"G\"\n[[circuit]]\nmark = \"B\"\nmultiwire = \"G\"\n",
         {"9:13 circuit A: direct current has no shared neutral", "12:13 circuit B: direct"});
}

TEST_CASE("a panel of the longest name feeds a sub-panel", "[job]") {
    for (std::string const& letter : {std::string("n"), std::string("é")}) {
        std::string longest;
        for (int n = 0; n < 200; ++n) longest += letter;
        auto const job = "[job]\ncode = \"CE 2024\"\n[[panel]]\nname = \"" + longest +
                         "\"\nspaces = 24\nsupply = \"120/240\"\n[[circuit]]\nmark = \"SP-NORTH\"\npanel = \"" +
                         longest + "\"\npoles = 2\n[[panel]]\nname = \"Sub\"\nspaces = 8\nfeeder = \"" + longest +
                         "/SP-NORTH\"\n";
        auto const read = made::good(job);
        REQUIRE(read.panels[1].feeder->panel == longest);
        REQUIRE(read.panels[1].feeder->mark == "SP-NORTH");
        check_told(job + "fed_from = \"" + longest + letter + "\"\n", {"15:12 ~201 letters, 200 at most"});
    }
}

TEST_CASE("feeders: unknown, in another panel, in a circle, widened", "[job][mistakes]") {
    auto const head =
        std::string("[job]\ncode = \"CE 2024\"\n[[panel]]\nname = \"Main\"\nspaces = 24\n"); // supply in line 6
    auto const sub = [&](std::string const& supply, std::string const& rest) {
        return head + "supply = \"" + supply +
               "\"\n[[circuit]]\nmark = \"SP\"\npanel = \"Main\"\npoles = 2\n[[panel]]\nname = \"Sub\"\nspaces = 8\n" +
               rest; // line 14
    };
    check_told(sub("120/240", "feeder = \"Man/SP\"\n"),
               {"14:10 panel \"Sub\": there is no panel \"Man\"~did you mean \"Main\"?"});
    check_told(sub("120/240", "feeder = \"Main/XP\"\n"),
               {"14:10 panel \"Sub\": there is no circuit \"XP\"~did you mean \"SP\"?"});
    check_told(sub("120/240", "feeder = \"Main\"\n"),
               {"14:10 panel \"Sub\": \"Main\" does not name a panel and a circuit"});
    check_told(sub("120/240", "feeder = \"Sub/SP\"\n"),
               {"14:10 panel \"Sub\": SP is in the panel \"Main\", not in \"Sub\""});
    check_told(sub("120/240", "feeder = \"Main/SP\"\nsupply = \"120/208\"\n"),
               {"15:10 panel \"Sub\": the panel \"Main\" does not bring that"});
    check_told(sub("120 on both legs", "feeder = \"Main/SP\"\nsupply = \"120/240\"\n"),
               {"15:10 panel \"Sub\": the panel \"Main\" does not bring that"});
    check_told(sub("12 V DC", "feeder = \"Main/SP\"\nsupply = \"120/240\"\n"),
               {"15:10 panel \"Sub\": panel \"Sub\" is fed by another kind of current"});
    check_told(sub("120/240", "feeder = \"Main/SP\"\n[[circuit]]\nmark = \"X\"\n"),
               {"15:1 circuit X: the job has several panels~one of: Main, Sub"});
    check_told(sub("120/240", "feeder = \"Main/SP\"\n[[circuit]]\nmark = \"X\"\npanel = \"Sup\"\n"),
               {"17:9 circuit X: \"panel\" cannot be \"Sup\"~did you mean \"Sub\"?"});
    check_told("[job]\ncode = \"CE 2024\"\n[[panel]]\nname = \"A\"\nspaces = 8\nfeeder = \"B/F2\"\n[[panel]]\nname = "
               "\"B\"\nspaces = 8\nfeeder = \"A/F1\"\n"
               "[[circuit]]\nmark = \"F1\"\npanel = \"A\"\n[[circuit]]\nmark = \"F2\"\npanel = \"B\"\n",
               {"6:10 panel \"A\": in the end this panel feeds itself",
                "10:10 panel \"B\": in the end this panel feeds itself"});
    // One cable ends at one panel: rules, sheets and load calculation would each pass over the second.
    check_told(
        sub("120/240", "feeder = \"Main/SP\"\n[[panel]]\nname = \"Far\"\nspaces = 8\nfeeder = \"Main/SP\"\n"),
        {"18:10 panel \"Far\": SP feeds the panel \"Sub\" already~name a circuit of its own; for a panel behind the "
         "lugs of \"Sub\" a circuit of that one"});
    for (auto const* narrower : {"120 on both legs", "120 on one leg", "120/240"})
        REQUIRE(made::good(sub("120/240", fmt::format("feeder = \"Main/SP\"\nsupply = \"{}\"\n", narrower)))
                    .panels[1]
                    .supply);
}

TEST_CASE("situations and accepted findings", "[job][mistakes]") {
    auto const heater = circuit("use = \"heating\""); // the rest begins in line 10
    check_all({
        {heater + "[[situation]]\nother = 0.5\n", {"10:1 a situation: \"name\" is missing"}},
        {heater + "[[situation]]\nname = \"connected\"\nother = 0.5\n",
         {"11:8 situation \"connected\": \"connected\" is always there"}},
        {heater + "[[situation]]\nname = \"W\"\n", {"10:1 situation \"W\": it names no load"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = {}\n", {"12:9 situation \"W\": it names no load"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { heting = 1.0 }\n",
         {"12:11 situation \"W\": \"heting\" is neither a use nor~did you mean \"heating\"?"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { K2 = 1.0 }\n",
         {"12:11 situation \"W\": \"K2\" is neither~did you mean \"K1\"?"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { range = 1 }\n",
         {"12:11 situation \"W\": no circuit has the use \"range\"~one of: heating, K1"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { K1 = 1.5 }\n",
         {"12:16 situation \"W\": the share of \"K1\" is a number from 0 to 1"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { K1 = -0.1 }\nother = 80\n",
         {"12:16 ~from 0 to 1", "13:9 ~the share of \"other\""}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { K1 = nan }\n", {"12:16 ~from 0 to 1"}},
        {heater + "[[situation]]\nname = \"W\"\nshare = { K1 = \"80 %\" }\n", {"12:16 ~write 0.8 for 80 %"}},
        {circuit("use = \"heating\"", "heating") + "[[situation]]\nname = \"W\"\nshare = { heating = 1 }\n",
         {"12:11 situation \"W\": \"heating\" is a use and the mark of a circuit"}},
        {heater + "[[accept]]\nrule = \"dir-vage\"\ncircuit = \"K2\"\n",
         {"11:8 an [[accept]]: there is no rule \"dir-vage\"~did you mean \"dir-vague\"?",
          "12:11 an [[accept]]: there is no circuit \"K2\"~did you mean \"K1\"?"}},
        {heater + "[[accept]]\ncircuit = \"K1\"\nwhy = 5\n",
         {"10:1 an [[accept]]: \"rule\" is missing", "12:7 ~takes text"}},
        {heater + "[[accept]]\nrule = \"dir-vague\"\n", {"10:1 an [[accept]]: it does not say where"}},
        {heater + "[[accept]]\nrule = \"dir-vague\"\npanel = \"Mian\"\n",
         {"12:9 an [[accept]]: \"panel\" cannot be \"Mian\"~did you mean \"Main\"?"}},
        {heater + "[[cable]]\nmark = \"S1\"\nkind = \"cat7\"\n[[accept]]\nrule = \"dir-vague\"\ncircuit = \"S1\"\n",
         {"12:8 cable S1: there is no cable kind", "15:11 an [[accept]]: S1 is a cable, not a circuit"}},
    });
}
