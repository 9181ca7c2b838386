// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What the rows of the keys tell people, programs and the manual.
#include "calls.h"
#include "cli/keys.h"
#include "source_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <fstream>
#include <iterator>

using nlohmann::json;
using namespace legwork;

TEST_CASE("explain --keys lists the tables of the job file, those within them, and the form file", "[cli][keys]") {
    auto const told = call({"explain", "--keys"}).out;
    for (auto const* name : {"job", "circuit", "circuit.segments", "dwelling.peak", "form"})
        CHECK_THAT("\n" + told, Contains("\n" + std::string(name) + " "));
    auto const listed = json::parse(call({"explain", "--keys", "--json"}).out)["tables"];
    REQUIRE(listed.size() == key_tables().size());
    CHECK(listed[0] ==
          json{{"table", "job"}, {"header", "[job]"}, {"help", "The building, and the code it is checked against"}});
}

TEST_CASE("explain --keys TABLE tells every key with its help, what it takes and an example", "[cli][keys]") {
    for (KeyTable const* table : key_tables()) {
        CAPTURE(table->name);
        auto const told = call({"explain", "--keys", std::string(table->name)}).out;
        auto const keys = json::parse(call({"explain", "--keys", std::string(table->name), "--json"}).out)["keys"];
        REQUIRE(keys.size() == table->keys.size());
        for (std::size_t i = 0; i < keys.size(); ++i) {
            CHECK(keys[i]["key"] == table->keys[i].name);
            CHECK_THAT(told, Contains("\n  " + std::string(table->keys[i].name) + " "));
        }
    }
    auto const circuit = call({"explain", "--keys", "circuit"}).out;
    CHECK_THAT(circuit, Contains("takes a use, text in quotes (listed by legwork explain --table uses)"));
    CHECK_THAT(circuit, Contains("tie = \"handle tie\"") && Contains("or \"?\" while it is not known"));
}

TEST_CASE("a table of keys that is not there is answered with the way out", "[cli][keys]") {
    auto const told = call({"explain", "--keys", "circuits"});
    CHECK(told.status == 2);
    CHECK_THAT(told.err, Contains("there is no table of keys \"circuits\"") && Contains("did you mean \"circuit\"?"));
}

TEST_CASE("the schema has every table and key of the job file", "[cli][keys]") {
    auto const schema = json::parse(call({"explain", "--schema"}).out);
    CHECK(schema["$schema"] == "https://json-schema.org/draft/2020-12/schema");
    CHECK(schema["required"] == json{"job", "panel"});
    auto const& circuit = schema["properties"]["circuit"]["items"];
    CHECK(circuit["additionalProperties"] == false);
    CHECK(circuit["properties"].size() == key_table("circuit")->keys.size());
    CHECK(circuit["properties"]["poles"]["maximum"] == 2);
}

// Manual pages are read before anything is built, so this one lies in the sources.
TEST_CASE("legwork-job(5) is what the rows of the keys make", "[cli][keys]") {
    auto const path = in_sources("src/cli/legwork-job.5");
    std::ifstream file(path, std::ios::binary);
    std::string const lies_there{std::istreambuf_iterator<char>(file), {}};
    if (lies_there != job_page()) std::ofstream(path + ".new", std::ios::binary) << job_page();
    INFO("what it should be stands beside it as legwork-job.5.new");
    CHECK((lies_there == job_page()));
}

TEST_CASE("the starter job names the schema for editors", "[cli][keys]") {
    auto const starter = call({"new", "-"}).out;
    CHECK_THAT(starter.substr(0, starter.find('\n')), Contains("#:schema ") && Contains("legwork-job.schema.json"));
}
