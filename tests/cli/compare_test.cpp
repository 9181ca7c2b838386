// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork compare. What must be told of a change is read off the change that is made to the file's text.
#include "calls.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <algorithm>
#include <fstream>
#include <iterator>

using nlohmann::json;

namespace {

std::string const kOld = R"([job]
name = "Ridge hut"
code = "NEC 2023"
[[panel]]
name = "Main"
spaces = 8
supply = "120/240"
main = "60 A"
[[circuit]]
mark = "B1"
name = "Lights, bunk room"
space = 1
breaker = "15 A"
load = "240 VA"
cable = "14/2"
length = "6 m"
[[circuit]]
mark = "R1"
name = "Receptacles, bunk room"
space = 3
breaker = "20 A"
load = "900 VA"
cable = "12/2"
length = "8 m"
[[cable]]
mark = "X1"
name = "To the next box"
kind = "14/2"
length = "2 m"
from = "Door box"
to = "Ceiling box"
)";

std::string with(std::string text, std::string const& from, std::string const& to) {
    auto const at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

json changes_of(std::string const& before, std::string const& now) {
    TemporaryFolder const folder;
    legwork::write_file(folder / "old.toml", before);
    legwork::write_file(folder / "new.toml", now);
    auto const called = call({"compare", folder / "old.toml", folder / "new.toml", "--json"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    auto const told = json::parse(called.out);
    REQUIRE_THAT(told.at("not_looked_at").get<std::string>(), Contains("situations"));
    return told.at("changes");
}

json change(char const* kind, char const* thing, json mark, json what = nullptr, json before = nullptr,
            json after = nullptr) {
    return {{"change", kind},
            {"thing", thing},
            {"mark", std::move(mark)},
            {"what", std::move(what)},
            {"before", std::move(before)},
            {"after", std::move(after)}};
}

std::string read(std::string const& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// The file's tables the other way round; its head of comments stays.
std::string turned_round(std::string const& text) {
    std::vector<std::string> tables(1);
    for (std::size_t at = 0; at < text.size();) {
        auto const end = std::min(text.find('\n', at), text.size() - 1) + 1;
        auto const line = text.substr(at, end - at);
        if (line.starts_with("[")) tables.emplace_back();
        tables.back() += line;
        at = end;
    }
    std::reverse(tables.begin() + 1, tables.end());
    std::string all;
    for (auto const& table : tables) all += table + '\n';
    return all;
}

} // namespace

TEST_CASE("compare tells each kind of change, with the value before and after", "[compare]") {
    std::string const circuit = kOld.substr(kOld.find("[[circuit]]\nmark = \"R1\""),
                                            kOld.find("[[cable]]") - kOld.find("[[circuit]]\nmark = \"R1\""));
    REQUIRE(changes_of(kOld, with(kOld, circuit, "")) == json::array({change("gone", "circuit", "R1")}));
    REQUIRE(changes_of(with(kOld, circuit, ""), kOld) == json::array({change("added", "circuit", "R1")}));
    REQUIRE(changes_of(kOld, with(kOld, "space = 3", "space = 6")) ==
            json::array({change("moved", "circuit", "R1", "space", "3", "6")}));
    REQUIRE(changes_of(kOld, with(kOld, "space = 3\n", "")) ==
            json::array({change("moved", "circuit", "R1", "space", "3", nullptr)}));
    REQUIRE(changes_of(kOld, with(kOld, "\"20 A\"", "\"15 A\"")) ==
            json::array({change("resized", "circuit", "R1", "breaker", "20 A", "15 A")}));
    REQUIRE(
        changes_of(kOld, with(kOld, "Lights, bunk room", "Lights, bunk room and stair")) ==
        json::array({change("renamed", "circuit", "B1", "name", "Lights, bunk room", "Lights, bunk room and stair")}));
    REQUIRE(changes_of(kOld, with(kOld, "\"12/2\"", "\"12/3\"")) ==
            json::array({change("re-cabled", "circuit", "R1", "cable", "12/2, 8 m", "12/3, 8 m")}));
    REQUIRE(changes_of(kOld, with(kOld, "\"900 VA\"", "\"700 VA\"")) ==
            json::array({change("changed", "circuit", "R1", "load", "900 VA", "700 VA")}));
    REQUIRE(changes_of(kOld, with(kOld, "\"R1\"", "\"R9\"")) ==
            json::array({change("re-marked", "circuit", "R9", "mark", "R1", "R9")}));
    REQUIRE(changes_of(kOld, with(kOld, "\"60 A\"", "\"100 A\"")) ==
            json::array({change("resized", "panel", "Main", "main", "60 A", "100 A")}));
    REQUIRE(changes_of(kOld, with(kOld, "to = \"Ceiling box\"", "to = \"Stair box\"")) ==
            json::array({change("re-cabled", "cable", "X1", "to", "Ceiling box", "Stair box")}));
    REQUIRE(changes_of(kOld, with(kOld, "to = \"Ceiling box\"\n", "to = \"Ceiling box\"\nrole = \"switch leg\"\n")) ==
            json::array({change("changed", "cable", "X1", "role", nullptr, "switch leg")}));
    auto const whole =
        with(kOld, "cable = \"12/2\"\nlength = \"8 m\"\n",
             "segments = [{ kind = \"12/2\", length = \"8 m\" }, { kind = \"12/2\", length = \"1 m\" }]\n");
    REQUIRE(changes_of(whole, with(whole, "\"1 m\" }", "\"1 m\", tap = true }")) ==
            json::array({change("re-cabled", "circuit", "R1", "cable", "12/2, 8 m; then 12/2, 1 m",
                                "12/2, 8 m; then 12/2, 1 m, a tap")}));
    REQUIRE(changes_of(kOld, with(kOld, "NEC 2023\"", "NEC 2023\"\nrevision = \"B\"")) ==
            json::array({change("changed", "job", nullptr, "revision", nullptr, "B")}));
}

TEST_CASE("compare: another mark and another value are one gone and one added, never guessed to be one", "[compare]") {
    auto const now = with(with(kOld, "\"R1\"", "\"R9\""), "space = 3", "space = 6");
    REQUIRE(changes_of(kOld, now) == json::array({change("added", "circuit", "R9"), change("gone", "circuit", "R1")}));
}

TEST_CASE("compare: shuffled tables and another spelling of a quantity are no difference", "[compare]") {
    REQUIRE(changes_of(kOld, turned_round(kOld)) == json::array());
    REQUIRE(changes_of(kOld, with(with(kOld, "\"240 VA\"", "\"0.24 kVA\""), "\"6 m\"", "\"600 cm\"")) == json::array());
    for (auto const* name : {"boathouse", "orchard-shed", "bungalow"}) {
        CAPTURE(name);
        auto const job = read(in_sources(std::string("examples/") + name + ".toml"));
        REQUIRE(job.size() > 1000);
        REQUIRE(changes_of(job, turned_round(job)) == json::array());
    }
}

TEST_CASE("compare in words: what differs, else that nothing does, and always what was not looked at", "[compare]") {
    TemporaryFolder const folder;
    auto const before = folder / "old.toml", now = folder / "new.toml";
    legwork::write_file(before, kOld);
    legwork::write_file(now, with(kOld, "space = 3", "space = 6"));
    auto const moved = call({"compare", before, now});
    REQUIRE(moved.status == 0);
    REQUIRE_THAT(moved.out, Contains("circuit R1 moved: space 3 -> 6\n") && Contains("Not looked at"));
    auto const nothing = call({"compare", before, before});
    REQUIRE(nothing.status == 0);
    REQUIRE_THAT(nothing.out, Contains("Nothing differs in what is looked at") && Contains("Not looked at"));
}

TEST_CASE("compare: an error finding in a job is no failure, a job that is not understood is", "[compare]") {
    TemporaryFolder const folder;
    auto const job = folder / "job.toml", faulty = folder / "faulty.toml", broken = folder / "broken.toml";
    legwork::write_file(job, small_job());
    legwork::write_file(faulty, faulty_job());
    legwork::write_file(broken, "[job\n");
    REQUIRE(call({"compare", job, faulty}).status == 0);
    REQUIRE(call({"compare", job, broken}).status == 2);
    REQUIRE(call({"compare", broken, job}).status == 2);
    REQUIRE(call({"compare", job}).status == 2);
    REQUIRE(call({"compare", "-", "-"}).status == 2);
}
