// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "cli/files/save_edits.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <sstream>

using nlohmann::json;

namespace {
// The boiler lacks both sizes, the lamp asks for its cable, nobody knows what hangs on X1.
std::string unsized_job() {
    return R"([job]
name = "Ridge hut"
code = "NEC 2023"

[[panel]]
name   = "Main"
spaces = 8
supply = "120/240"
main   = "60 A"

[[circuit]]
mark   = "WH"
name   = "Water heater, closet"
use    = "water heater"
poles  = 2
load   = "4500 W" # nameplate
length = "9 ft"

[[circuit]]
mark    = "L1"
name    = "Lights, loft"
use     = "lighting"
breaker = "15 A"
load    = "240 VA"
cable   = "?" # not pulled yet
length  = "20 ft"

[[circuit]]
mark = "X1"
name = "Spare corner"
)";
}
} // namespace

TEST_CASE("the JSON of check --propose has its stable keys", "[cli][propose]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", unsized_job());
    auto const called = call({"check", folder / "job.toml", "--propose", "--json"});
    CAPTURE(called.out, called.err);
    auto const value = json::parse(called.out);
    REQUIRE(value["job"] == "Ridge hut");
    auto const& all = value["proposals"];
    REQUIRE(all.size() == 3);
    for (auto const& p : all)
        for (auto const* key : {"circuit", "breaker", "cable", "steps", "reference", "find_out"})
            REQUIRE(p.contains(key));
    // Source: NEC 422.13, 240.6(A), 240.4(D): 18.75 A x 125 % = 23.4 A.
    REQUIRE(all[0]["breaker"] == "25 A");
    REQUIRE(all[0]["cable"] == "10/2");
    REQUIRE(all[0]["reference"] == "NEC 2023 422.13");
    REQUIRE(all[0]["steps"][0]["says"] == "4500 VA at 240 V = 18.75 A");
    REQUIRE(all[0]["steps"][0]["reference"].is_null());
    REQUIRE(all[1]["breaker"].is_null());
    REQUIRE(all[1]["cable"] == "14/2");
    REQUIRE(all[2]["breaker"].is_null());
    REQUIRE_FALSE(all[2]["find_out"].get<std::string>().empty());
    REQUIRE(contents(folder / "job.toml") == unsized_job());
}

TEST_CASE("check --propose --write changes breakers and cables and nothing else", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, unsized_job());
    auto const called = call({"check", path, "--propose", "--write"});
    CAPTURE(called.out, called.err);
    auto wanted = unsized_job();
    wanted.replace(wanted.find("\"?\""), 3, "\"14/2\"");
    wanted.insert(wanted.find("\n[[circuit]]\nmark    = \"L1\""), "breaker = \"25 A\"\ncable = \"10/2\"\n");
    auto written = contents(path);
    // The keys put in may be filled up to stand in a column.
    for (auto const* key : {"cable   = \"10/2\"", "cable  = \"10/2\""})
        if (auto const at = written.find(key); at != std::string::npos)
            written.replace(at, std::string(key).size(), "cable = \"10/2\"");
    REQUIRE(written == wanted);
    REQUIRE(contents(folder / "job.before.toml") == unsized_job());
    auto const again = call({"check", path, "--propose", "--write"});
    REQUIRE_THAT(again.out, Contains("Nothing to write"));
    REQUIRE(folder.names() == std::vector<std::string>{"job.before.toml", "job.toml"});
}

TEST_CASE("a job saved meanwhile is not overwritten by sizes", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, unsized_job());
    auto const opened = legwork::open_job(path);
    REQUIRE(opened.session);
    auto const& s = *opened.session;
    auto const theirs = unsized_job() + "# one more remark\n";
    legwork::write_file(path, theirs);
    REQUIRE_THROWS_WITH(legwork::save_sizes(s, legwork::proposals(s.building, s.plan, *s.book)),
                        Contains("changed by somebody else"));
    REQUIRE(contents(path) == theirs);
}

TEST_CASE("check --write asks for --propose and for a file", "[cli][propose]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", unsized_job());
    REQUIRE(call({"check", folder / "job.toml", "--write"}).status == 2);
    REQUIRE(call({"check", folder / "job.toml", "--propose", "--measure"}).status == 2);
    REQUIRE(run_process({"check", "-", "--propose", "--write"}, unsized_job()).status == 2);
}

namespace {
// A bit of everything that lacks sizes: a pair, a range, a charger, a nameplate, a run of two pieces, a feeder and what
// is behind it, and what has one of the two already.
std::string whole_house(std::string const& code) {
    auto const circuit = [](std::string const& mark, std::string const& name, std::string const& keys) {
        return "\n[[circuit]]\nmark  = \"" + mark + "\" # " + name + "\nname  = \"" + name + "\"\n" + keys;
    };
    std::string const main = "panel = \"Main\"\n", shop = "panel = \"Shop\"\n";
    return "[job]\nname = \"Larch bothy\"\ncode = \"" + code +
           "\"\n\n[[panel]]\nname = \"Main\"\nspaces = 40\nsupply = \"120/240\"\n"
           "\n[[panel]]\nname = \"Shop\"\nspaces = 12\nfeeder = \"Main/SP\"\n" +
           circuit("K1", "Counter, left", main + "use = \"kitchen counter\"\nload = \"1500 VA\"\nmultiwire = \"K\"\n") +
           circuit("K2", "Counter, right",
                   main + "use = \"kitchen counter\"\nmultiwire = \"K\"\nlength = \"9.5 m\" # measured\n") +
           circuit("RG", "Range", main + "use = \"range\"\npoles = 2\nload = \"14 kW\"\nlength = \"7 m\"\n") +
           circuit("EV", "Car charger, carport",
                   main + "use = \"vehicle charger\"\npoles = 2\nload = \"7680 VA\"\nlength = \"20 m\"\n") +
           circuit("HP", "Heat pump, north wall",
                   main + "use = \"heat pump\"\npoles = 2\nmca = \"18.4 A\"\nmop = \"30 A\"\nlength = \"12 m\"\n") +
           circuit("WP", "Well pump, spring",
                   main + "use = \"well pump\"\npoles = 2\nload = \"1.5 kW\"\nsegments = [ # two pieces\n  { kind = "
                          "\"12/2\", length = \"6 m\" },\n  { length = \"80 m\" },\n]\n") +
           circuit("B1", "Baseboard, loft",
                   main + "use = \"baseboard\"\npoles = 2\nload = \"3.5 kW\"\ncable = \"12/2\" # pulled\nlength = \"17 "
                          "m\"\n") +
           circuit("SP", "Shop feeder", main + "poles = 2\nlength = \"45 m\"\n") +
           circuit("T1", "Table saw",
                   shop + "motor = true\nuse = \"workshop\"\nload = \"1800 VA\"\nlength = \"9 m\"\n") +
           circuit("H1", "Shop heater", shop + "use = \"heating\"\npoles = 2\nload = \"3 kW\"\nlength = \"8 m\"\n");
}
} // namespace

TEST_CASE("sizes written into a job are found good by check, and nothing else of the file changes", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    auto const before = whole_house(GENERATE("NEC 2017", "NEC 2023", "CE 2018", "CE 2024"));
    legwork::write_file(path, before);
    auto const called = call({"check", path, "--propose", "--write", "--json"});
    CAPTURE(called.out, called.err);
    auto const told = json::parse(called.out);
    REQUIRE(told["written"]["path"] == path);
    REQUIRE(told["proposals"].size() == 10);
    for (auto const& p : told["proposals"]) {
        CAPTURE(p.dump());
        CHECK(p["find_out"].is_null());
        CHECK(p["steps"].size() >= 3);
    }
    REQUIRE(contents(folder / "job.before.toml") == before);
    auto const checked = json::parse(call({"check", path, "--json"}).out);
    for (auto const& f : checked["findings"]) {
        CAPTURE(f.dump());
        auto const rule = f["rule"].get<std::string>();
        bool const of_size = rule.starts_with("wire-") || rule == "mw-conductors" || rule == "mw-unequal" ||
                             rule == "panel-feeder-wires";
        bool const asks_nothing = rule == "wire-smaller-downstream";
        CHECK((!of_size || asks_nothing));
    }
    // Without the keys put in, the file is the old one.
    std::string rest;
    std::istringstream now(contents(path));
    for (std::string line; std::getline(now, line);)
        if (line.ends_with("# pulled") || !(line.starts_with("breaker") || line.starts_with("cable")))
            rest += line + "\n";
    auto const put_in = std::string(", kind = \"");
    if (auto const at = rest.find(put_in); at != std::string::npos)
        rest.erase(at, rest.find('"', at + put_in.size()) + 1 - at);
    CHECK(rest == before);
}

namespace {
// A suite behind its feeder, SP: `area` of its floor.
std::string suite(std::string const& code, std::string const& area) {
    auto const circuit = [](std::string const& mark, std::string const& name, std::string const& use,
                            std::string const& load) {
        return "\n[[circuit]]\nmark = \"" + mark + "\"\nname = \"" + name + "\"\nuse = \"" + use +
               "\"\npanel = \"Suite\"\npoles = 2\nload = \"" + load + "\"\nlength = \"6 m\"\n";
    };
    return "[job]\nname = \"Heron suite\"\ncode = \"" + code + "\"\n\n[dwelling]\narea = \"" + area +
           "\"\n\n[[panel]]\nname = \"Main\"\nspaces = 8\nsupply = \"120/240\"\nmain = \"200 A\"\n"
           "\n[[panel]]\nname = \"Suite\"\nspaces = 24\nfeeder = \"Main/SP\"\n"
           "\n[[circuit]]\nmark = \"SP\"\nname = \"Feeder of the suite\"\npanel = \"Main\"\nuse = "
           "\"feeder\"\npoles = 2\nlength = \"18 m\"\n" +
           circuit("RG", "Range", "range", "12 kW") + circuit("WH", "Water heater, closet", "water heater", "4.5 kW") +
           circuit("DR", "Dryer", "dryer", "5 kW") + circuit("H1", "Baseboards", "baseboard", "12 kW");
}
} // namespace

TEST_CASE("a dwelling's feeder is proposed as its load calculation names it, and check is content", "[cli][propose]") {
    // NEC 220.82: 600 x 3 + 4500 + 12000 + 4500 + 5000 = 27800; 10000 + 17800 x 40 % + 12000 x 65 % = 24920 VA,
    // 103.83 A. CE 8-200: 5000 + 10000 + 2000 x 75 % of heat (62-118(3)) + 6000 + 9500 x 25 % = 24875 VA, 103.65 A.
    auto const [code, area, load] = GENERATE(table<std::string, std::string, std::string>(
        {{"NEC 2023", "600 ft²", "24920 VA"}, {"CE 2021", "55 m²", "24875 VA"}}));
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, suite(code, area));
    auto const named = [&] { return json::parse(call({"load", path, "--panel", "Suite", "--json"}).out)["service_a"]; };
    CHECK(named() == 110);
    auto const said = call({"check", path, "--propose", "--write"}).out;
    CAPTURE(code, said);
    CHECK_THAT(said, Contains("SP, Feeder of the suite: 110 A breaker") && Contains(load));
    CHECK(named() == 110);
    auto const checked = json::parse(call({"check", path, "--json"}).out);
    for (auto const& f : checked["findings"]) {
        CAPTURE(f.dump());
        auto const rule = f["rule"].get<std::string>();
        CHECK((f["severity"] == "note" || !(rule.starts_with("wire-") || rule == "load-service" ||
                                            rule == "panel-feeder-wires" || rule == "panel-main-overloaded")));
    }
}

TEST_CASE("where sizes cannot be written, the file stays and it is said", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    auto const missing = call({"check", path, "--propose", "--write"});
    REQUIRE(missing.status == 2);
    REQUIRE_THAT(missing.err, Contains("cannot read it"));
    legwork::write_file(path, "[job]\ncode = \"NEC 2023\"\ncircuit = [");
    REQUIRE(call({"check", path, "--propose", "--write"}).status == 2);
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml"});
    auto const alone = call({"check", path, "--write"});
    REQUIRE_THAT(alone.err, Contains("--write requires --propose"));
    // All is sized: nothing is written, nothing is kept.
    auto sized = unsized_job();
    sized.erase(sized.find("\n[[circuit]]\nmark   = \"WH\""));
    sized += "\n[[circuit]]\nmark = \"L1\"\nname = \"Lights, loft\"\nuse = \"lighting\"\nbreaker = \"15 A\"\nload = "
             "\"240 VA\"\ncable = \"14/2\"\nlength = \"20 ft\"\n";
    legwork::write_file(path, sized);
    auto const nothing = call({"check", path, "--propose", "--write"});
    REQUIRE(nothing.status == 0);
    REQUIRE_THAT(nothing.out, Contains("Nothing to propose: every circuit has its breaker and its cable."));
    REQUIRE(contents(path) == sized);
    REQUIRE(folder.names() == std::vector<std::string>{"job.toml"});
}

TEST_CASE("the reckoning is listed line by line with its section", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, unsized_job());
    auto const out = call({"check", path, "--propose"}).out;
    for (auto const* words :
         {"WH, Water heater, closet: 25 A breaker, 10/2\n    4500 VA at 240 V = 18.75 A\n",
          "    water heater, continuous by use: 18.75 A x 125 % = 23.44 A (NEC 2023 422.13)\n",
          "L1, Lights, loft: 14/2\n", "    its breaker is 15 A\n", "X1, Spare corner: nothing proposed\n",
          "    Find out or put right first: what hangs on it",
          "The file is unchanged; --write puts these sizes into it."})
        CHECK_THAT(out, Contains(words));
}

TEST_CASE("a number from memory is marked as that", "[cli][propose]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    auto job = unsized_job();
    job.replace(job.find("NEC 2023"), 8, "CE 2018");
    legwork::write_file(path, job);
    CHECK_THAT(call({"check", path, "--propose"}).out, Contains("Table 13 (rule from memory"));
    job.replace(job.find("CE 2018"), 7, "CE 2024"); // of which three pages agree
    legwork::write_file(path, job);
    CHECK_THAT(call({"check", path, "--propose"}).out, Contains("Table 13)"));
}
