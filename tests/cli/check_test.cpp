// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <set>
#include <sstream>

using nlohmann::json;

namespace {

std::vector<std::string> keys(json const& value) {
    std::vector<std::string> all;
    for (auto const& [key, ignored] : value.items()) all.push_back(key);
    return all; // in alphabetical order
}
using Keys = std::vector<std::string>;

} // namespace

TEST_CASE("check exits 1 while an error finding stands, else 0", "[cli][check]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "good.toml", small_job());
    legwork::write_file(folder / "bad.toml", faulty_job());
    auto const good = call({"check", folder / "good.toml"});
    CAPTURE(good.out, good.err);
    REQUIRE(good.status == 0);
    auto const bad = call({"check", folder / "bad.toml"});
    REQUIRE(bad.status == legwork::exit_error_finding);
    REQUIRE(bad.err.empty());
    // Place, severity, rule, what to do, the counts, the caution.
    REQUIRE_THAT(bad.out, Contains("bad.toml:46:1: error: L1: "));
    REQUIRE_THAT(bad.out, Contains("[wire-breaker-fits]"));
    REQUIRE_THAT(bad.out, Contains("    Do: "));
    REQUIRE_THAT(bad.out, Contains("NEC 2023 "));
    REQUIRE_THAT(bad.out, Contains("1 error, "));
    REQUIRE_THAT(bad.out, Contains("prove dead on both legs"));
}

TEST_CASE("the JSON of check has its stable keys", "[cli][check]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "bad.toml", faulty_job());
    auto const called = call({"check", folder / "bad.toml", "--json"});
    REQUIRE(called.status == 1);
    auto const value = json::parse(called.out);
    REQUIRE(keys(value) ==
            Keys{"accepted", "code", "errors", "findings", "job", "legwork", "notes", "verdicts", "warnings"});
    REQUIRE(value["job"] == "Ridge hut");
    REQUIRE(value["code"] == "NEC 2023");
    REQUIRE(value["accepted"].empty());
    std::map<std::string, int> counted;
    for (auto const& f : value["findings"]) {
        CAPTURE(f.dump());
        REQUIRE(keys(f) == Keys{"circuits", "column", "fix", "line", "message", "panel", "reference", "rule",
                                "severity", "source"});
        REQUIRE(
            (f["source"] == "seen" || f["source"] == "noted" || f["source"] == "memory" || f["source"] == "practice"));
        if (f["source"] == "memory" || f["source"] == "noted") REQUIRE(f["severity"] != "error");
        ++counted[f["severity"]];
    }
    REQUIRE(value["errors"] == counted["error"]);
    REQUIRE(value["warnings"] == counted["warning"]);
    REQUIRE(value["notes"] == counted["note"]);
    auto const& worst = value["findings"][0];
    REQUIRE(worst["rule"] == "wire-breaker-fits");
    REQUIRE(worst["circuits"] == json::array({"L1"}));
    REQUIRE(worst["panel"] == "Main");
    REQUIRE(worst["line"] == 46);
}

TEST_CASE("an accepted finding is told apart and does not count", "[cli][check]") {
    TemporaryFolder const folder;
    auto const job =
        small_job() +
        "\n[[circuit]]\nmark = \"X1\"\nbreaker = \"15 A\"\nload = \"100 VA\"\ncable = \"14/2\"\nlength = \"3 m\"\n";
    legwork::write_file(folder / "open.toml", job);
    REQUIRE(call({"check", folder / "open.toml"}).status == 1); // dir-unnamed
    legwork::write_file(folder / "accepted.toml", job + "\n[[accept]]\nrule = \"dir-unnamed\"\nwhy = \"named after the "
                                                        "last coat of paint\"\nby = \"R. Moss\"\ncircuit = \"X1\"\n");
    auto const called = call({"check", folder / "accepted.toml", "--json"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    auto const value = json::parse(called.out);
    REQUIRE(value["errors"] == 0);
    REQUIRE(value["accepted"].size() == 1);
    REQUIRE(value["accepted"][0]["rule"] == "dir-unnamed");
    REQUIRE(value["accepted"][0]["by"] == "R. Moss");
    for (auto const& f : value["findings"]) REQUIRE(f["rule"] != "dir-unnamed");
    auto const listed = call({"check", folder / "accepted.toml"});
    REQUIRE_THAT(listed.out, Contains("Accepted by R. Moss: named after") && Contains("1 accepted"));
}

TEST_CASE("an acceptance that covers nothing is a warning with its own place", "[cli][check]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", small_job() + "\n[[accept]]\nrule = \"dir-vague\"\nwhy = \"one room\"\n"
                                                           "by = \"R. Moss\"\ncircuit = \"L1\"\n");
    auto const value = json::parse(call({"check", folder / "job.toml", "--json", "--rule", "job-accept-unused"}).out);
    REQUIRE(value["findings"].size() == 1);
    REQUIRE(value["findings"][0]["severity"] == "warning");
    REQUIRE(value["findings"][0]["line"] == 52); // its rule
    REQUIRE(value["findings"][0]["circuits"].empty());
    REQUIRE(call({"check", folder / "job.toml"}).status == 0);
}

TEST_CASE("an acceptance that cannot hold is told at its finding", "[cli][check]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "job.toml", faulty_job() +
                                                 "\n[[accept]]\nrule = \"wire-breaker-fits\"\nwhy = \"old\"\n"
                                                 "by = \"R. Moss\"\ncircuit = \"L1\"\n");
    auto const called = call({"check", folder / "job.toml", "--json"});
    REQUIRE(called.status == 1);
    auto const value = json::parse(called.out);
    REQUIRE(value["accepted"].empty());
    REQUIRE_THAT(value["findings"][0]["fix"].get<std::string>(), Contains("does not hold"));
    for (auto const& f : value["findings"]) REQUIRE(f["rule"] != "job-accept-unused");
}

TEST_CASE("check: --rule and --min show a part, counts and exit status are of the whole job", "[cli][check]") {
    TemporaryFolder const folder;
    auto const path = folder / "bad.toml";
    legwork::write_file(path, faulty_job());
    auto const all = json::parse(call({"check", path, "--json"}).out);
    REQUIRE_FALSE(all.contains("filter"));

    auto const part = call({"check", path, "--json", "--rule", "mw-pigtail", "--rule", "mw-grouping"});
    REQUIRE(part.status == 1);
    auto const value = json::parse(part.out);
    REQUIRE(value["filter"] == json::parse(R"({"rules":["mw-pigtail","mw-grouping"],"min":"note"})"));
    REQUIRE(value["findings"].size() == 2);
    for (auto const* key : {"errors", "warnings", "notes"}) REQUIRE(value[key] == all[key]);

    auto const grave = json::parse(call({"check", "--min", "error", path, "--json"}).out);
    REQUIRE(grave["findings"].size() == all["errors"]);
    for (auto const& f : grave["findings"]) REQUIRE(f["severity"] == "error");

    auto const listed = call({"check", path, "--min", "error"});
    REQUIRE(listed.status == 1);
    REQUIRE_THAT(listed.out, Contains("1 of ") && Contains("of the whole job"));
    REQUIRE_THAT(listed.out, Contains("[wire-breaker-fits]") && !Contains(": note: "));
    REQUIRE(call({"check", path, "--rule", "mw-pigtail"}).status == 1); // the error is not shown and stands

    auto const slip = call({"check", path, "--rule", "mw-pigtale"});
    REQUIRE(slip.status == 2);
    REQUIRE_THAT(slip.err, Contains("did you mean \"mw-pigtail\"?"));
    auto const later = call({"check", path, "--rule", "box-full"});
    REQUIRE(later.status == 2);
    REQUIRE_THAT(later.err, Contains("not checked yet"));
}

TEST_CASE("check: --by groups the same findings under headings", "[cli][check]") {
    TemporaryFolder const folder;
    auto const path = folder / "bad.toml";
    legwork::write_file(path, faulty_job());
    auto const plain = call({"check", path}).out;
    auto const in_lines = [](std::string const& text) {
        std::multiset<std::string> lines;
        std::istringstream from(text);
        for (std::string line; std::getline(from, line);)
            if (!line.empty()) lines.insert(line);
        return lines;
    };
    for (auto const* by : {"circuit", "theme"}) {
        auto const grouped = call({"check", path, "--by", by});
        CAPTURE(grouped.out);
        REQUIRE(grouped.status == 1);
        auto const lines = in_lines(grouped.out);
        for (auto const& line : in_lines(plain)) REQUIRE(lines.count(line) >= 1);
        REQUIRE_THAT(grouped.out, Catch::Matchers::EndsWith(plain.substr(plain.find("bad.toml (NEC 2023): "))));
    }
    auto const by_circuit = call({"check", path, "--by", "circuit"}).out;
    // A multiwire pair is one cable.
    REQUIRE_THAT(by_circuit,
                 Contains("A1+A2, spaces ") && Contains(": North wall receptacles; South wall receptacles\n----"));
    REQUIRE(by_circuit.find("The job as a whole\n---") < by_circuit.find("A1+A2, "));
    REQUIRE(by_circuit.find("A1+A2, ") < by_circuit.find("L1, space "));
    auto const by_theme = call({"check", path, "--by", "theme"}).out;
    REQUIRE(by_theme.find("Multiwire pairs\n---") < by_theme.find("Wires, breakers and receptacles\n---"));
    REQUIRE(call({"check", path, "--by", "room"}).status == 2);
    REQUIRE(call({"check", path, "--by", "theme", "--json"}).out == call({"check", path, "--json"}).out);
}

TEST_CASE("mistakes of the file are all told, each with its place, line, caret and way out", "[cli][check]") {
    TemporaryFolder const folder;
    auto job = small_job();
    job.replace(job.find("spaces = 8"), 10, "spaxes = 8");
    job.replace(job.find("\"900 VA\""), 8, "\"900\"   ");
    legwork::write_file(folder / "job.toml", job);
    auto const called = call({"check", folder / "job.toml"});
    CAPTURE(called.err);
    REQUIRE(called.status == 2);
    REQUIRE(called.out.empty());
    REQUIRE_THAT(called.err, Contains("job.toml:7:1: error: "));
    REQUIRE_THAT(called.err, Contains("    spaxes = 8\n    ^\n"));
    REQUIRE_THAT(called.err, Contains("spaces"));
    REQUIRE_THAT(called.err, Contains("job.toml:17:13: error: "));
    auto const value = json::parse(call({"check", folder / "job.toml", "--json"}).out);
    REQUIRE(value["job"].is_null());
    REQUIRE(value["problems"].size() >= 2);
    for (auto const& p : value["problems"]) REQUIRE(p["file"] == folder / "job.toml");
    auto const& last = value["problems"].back(); // in the order of the file
    REQUIRE(last["line"] == 17);
    REQUIRE(last["column"] == 13);
    REQUIRE(last["fix"] == "write the unit: \"900 VA\"");
}

TEST_CASE("only the severity word is coloured", "[cli][check]") {
    TemporaryFolder const folder;
    legwork::write_file(folder / "bad.toml", faulty_job());
    auto const plain = call({"check", folder / "bad.toml"}).out;
    auto colored = call({"check", folder / "bad.toml"}, true).out;
    REQUIRE(plain.find('\x1b') == std::string::npos);
    REQUIRE_THAT(colored, Contains("\x1b[1;31merror\x1b[0m: L1"));
    for (auto const* code : {"\x1b[1;31m", "\x1b[1;33m", "\x1b[1;36m", "\x1b[0m"})
        for (auto at = colored.find(code); at != std::string::npos; at = colored.find(code))
            colored.erase(at, std::string(code).size());
    REQUIRE(colored == plain);
}

TEST_CASE("what a file holds never reaches the terminal raw", "[cli][check]") {
    TemporaryFolder const folder;
    auto job = small_job();
    job.replace(job.find("North wall"), 10, "\\u001B[2J wall");
    legwork::write_file(folder / "job.toml", job);
    for (auto const* command : {"check", "balance"}) {
        auto const called = call({command, folder / "job.toml"});
        REQUIRE((called.out + called.err).find('\x1b') == std::string::npos);
    }
}
