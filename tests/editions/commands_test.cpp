// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every command on editions of which a page, or every page, is not read (made_up.cpp): none crashes, what is not
// checked is said once a rule and is never an error, and what was read is judged as ever.
#include "cli/program.h"
#include "codebook/cite.h"
#include "codebook/sections.h"
#include "codebook/tables/tables.h"
#include "rules/check.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <map>
#include <regex>
#include <sstream>

using namespace legwork;
using Json = nlohmann::json;

namespace {
struct Called {
    int status;
    std::string out, err;
};
Called call(std::vector<std::string> const& words) {
    std::ostringstream out, err;
    Streams streams{out, err};
    auto const status = run_program(words, streams);
    return {status, out.str(), err.str()};
}

// An example of the project, judged by this edition.
struct Example {
    TemporaryFolder folder;
    std::string path = folder / "job.toml";

    Example(std::string const& name, std::string const& edition) {
        auto const text = contents(in_sources(name));
        std::ofstream(path) << std::regex_replace(text, std::regex("(\n?code *= *)\"[^\"]*\""),
                                                  "$1\"" + edition + "\"");
    }
    Called run(std::string const& command, std::vector<std::string> const& more = {}) const {
        std::vector<std::string> words{command, path};
        words.insert(words.end(), more.begin(), more.end());
        return call(words);
    }
    Json findings() const { return Json::parse(run("check", {"--json"}).out).at("findings"); }
};

constexpr auto kExamples = {"examples/boathouse.toml",
                            "examples/bungalow.toml",
                            "examples/faulty.toml",
                            "examples/orchard-shed.toml",
                            "tests/cases/one-leg-dead.toml",
                            "tests/cases/faulty-home-us.toml",
                            "tests/cases/red-as-neutral-us.toml",
                            "tests/cases/tied-but-one-pole-gfci.toml"};

bool is_unread(Json const& finding) { return finding.at("source") == "unread"; }

// Every command on this example by that edition.
void run_all(std::string const& edition, std::string const& example) {
    Example const made(example, edition);
    CAPTURE(edition, example);
    auto const done = [&](Called const& c) {
        CAPTURE(c.out, c.err);
        CHECK((c.status == exit_done || c.status == exit_error_finding));
        CHECK_FALSE(c.out.empty());
    };
    for (auto const& more : std::vector<std::vector<std::string>>{
             {}, {"--json"}, {"--measure"}, {"--propose"}, {"--propose", "--json"}, {"--by", "circuit"}})
        done(made.run("check", more));
    for (auto const& more : std::vector<std::vector<std::string>>{{}, {"--json"}, {"--moves", "2"}})
        done(made.run("balance", more));
    done(made.run("print", {"--out", made.folder / "sheets", "--format", "svg"}));
    auto const load = made.run("load"), json = made.run("load", {"--json"});
    auto const added = made.run("load", {"--add", "vehicle charger, 40 A, 2 poles, continuous"});
    for (auto const& c : {load, json, added}) CHECK(c.status != exit_not_written);
    if (edition == "NEC 2998" && load.status == exit_not_understood)
        CHECK_THAT(load.err, Contains("not read yet") || Contains("DC"));
    CHECK((edition == "NEC 2998" || load.status != exit_not_understood ||
           Example(example, "NEC 2023").run("load").status == exit_not_understood));
}
} // namespace

TEST_CASE("a made-up edition: every command does its work or says why not", "[editions][slow]") {
    for (std::string const edition : {"NEC 2997", "NEC 2998", "NEC 2999"})
        for (std::string const example : kExamples) run_all(edition, example);
}

TEST_CASE("a made-up edition: every command on one example", "[editions]") {
    for (std::string const edition : {"NEC 2997", "NEC 2998", "NEC 2999"})
        run_all(edition, "tests/cases/tied-but-one-pole-gfci.toml");
}

TEST_CASE("a page not read: one note says that it is not checked, all else is as in the edition it was read from",
          "[editions]") {
    for (std::string const example : kExamples) {
        CAPTURE(example);
        Example const made(example, "NEC 2999");
        auto const as_read =
            Json::parse(std::regex_replace(made.findings().dump(), std::regex("NEC 2999"), "NEC 2023"));
        std::vector<Json> rest, of_2023;
        int notes = 0;
        for (Json const& f : as_read) {
            if (f.at("rule") != "afci-needed") {
                rest.push_back(f);
                continue;
            }
            ++notes;
            CHECK(is_unread(f));
            CHECK(f.at("severity") == "note");
        }
        CHECK(notes == 1);
        for (Json const& f : Example(example, "NEC 2023").findings())
            if (f.at("rule") != "afci-needed") of_2023.push_back(f);
        CHECK(rest == of_2023);
    }
    auto const told = Example("examples/boathouse.toml", "NEC 2999").run("check").out;
    CHECK_THAT(told, Contains("note: NEC 2999: not read yet what it asks of this, so not"));
    CHECK_THAT(told, Contains("NEC 2999 (not read yet)"));
}

TEST_CASE("an aspect not read: the rest of its rule is judged, and a figure that hangs on it is not known",
          "[editions]") {
    int left_out = 0;
    for (std::string const example : kExamples) {
        CAPTURE(example);
        std::vector<Json> as_read, of_2023;
        std::map<std::string, int> notes;
        auto const told = Json::parse(
            std::regex_replace(Example(example, "NEC 2997").findings().dump(), std::regex("NEC 2997"), "NEC 2023"));
        for (Json const& f : told) {
            CAPTURE(f.dump());
            CHECK((!is_unread(f) || f.at("severity") == "note"));
            if (is_unread(f))
                ++notes[f.at("rule")];
            else
                as_read.push_back(f);
        }
        CHECK(notes == std::map<std::string, int>{
                           {"load-service", 1}, {"mw-disconnect", 1}, {"wire-conductors", 1}, {"wire-continuous", 1}});
        for (Json f : Example(example, "NEC 2023").findings()) {
            // Whether tied breakers will do decides all of mw-disconnect; the other two only what hangs on them. That a
            // cable has a conductor too few is counted, and only the section is not known.
            if (f.at("reference") == "NEC 2023 250.140(B)" && f.at("source") == "practice") f["reference"] = "";
            bool const by_unread = f.at("rule") == "mw-disconnect" || f.at("reference") == "NEC 2023 250.140(B)" ||
                                   f.at("reference").get<std::string>().starts_with("NEC 2023 424.4(B)");
            left_out += by_unread ? 1 : 0;
            if (!by_unread) of_2023.push_back(f);
        }
        for (Json const& f : of_2023) CHECK_THAT(as_read, Catch::Matchers::VectorContains(f));
        for (Json const& f : as_read) CHECK_THAT(of_2023, Catch::Matchers::VectorContains(f));
        CHECK(as_read == of_2023);
    }
    CAPTURE(left_out);
    CHECK(left_out > 3);
    CHECK_THAT(Example("examples/faulty.toml", "NEC 2997").run("check", {"--rule", "load-service"}).out,
               Contains("not read yet what it asks of dryer, so not"));

    Example const with_dryer("examples/bungalow.toml", "NEC 2997");
    auto const load = Json::parse(with_dryer.run("load", {"--method", "standard", "--json"}).out);
    CHECK(load.at("unknown").dump().find("what NEC 2997 says of this (not read yet): dryer") != std::string::npos);
    CHECK(load.at("service_a").is_null());
    CHECK(std::ranges::any_of(load.at("steps"), [](Json const& s) { return s.at("source") == "unread"; }));
}

TEST_CASE("no page read: each rule that hangs on a code says so once, and none of them more", "[editions]") {
    CodeBook const& book = *code_book("NEC 2998");
    for (std::string const example : kExamples) {
        Example const made(example, "NEC 2998");
        std::map<std::string, int> notes, others;
        for (Json const& f : made.findings()) {
            CAPTURE(example, f.dump());
            CHECK((!is_unread(f) || f.at("severity") == "note"));
            // Nothing is judged by a page that is not there: what is said stands on physics or custom.
            CHECK((is_unread(f) || f.at("source") == "practice"));
            ++(is_unread(f) ? notes : others)[f.at("rule")];
        }
        for (Rule const* each : rules()) {
            Rule const& rule = *each;
            if (!rule.is_checked()) continue;
            CAPTURE(example, rule.id);
            bool some = false;
            for (Topic const& t : topics())
                if (t.name == rule.id || t.name.starts_with(std::string(rule.id) + "/"))
                    some |= section_of(book, t.name).is_unread();
            bool const needs_more = rule.id == "need-kitchen" || rule.id == "need-dedicated";
            CHECK(notes[std::string(rule.id)] == (some || needs_more ? 1 : 0));
            if (section_of(book, rule.id).is_unread()) CHECK(others[std::string(rule.id)] == 0);
        }
    }
    // Source: physics. Both hots of a pair on one leg add up in its neutral, whatever anybody has read.
    auto const same_leg = Example("examples/faulty.toml", "NEC 2998").findings();
    CHECK(std::ranges::any_of(
        same_leg, [](Json const& f) { return f.at("rule") == "mw-opposite-legs" && f.at("severity") == "error"; }));
}

TEST_CASE("explain: what is not read is said in words and in JSON", "[editions]") {
    CHECK_THAT(call({"explain", "afci-needed"}).out, Contains("NEC 2998, 2999: not read yet"));
    for (Rule const* each : rules()) {
        Rule const& rule = *each;
        CHECK(call({"explain", std::string(rule.id)}).status == exit_done);
        auto const json = Json::parse(call({"explain", std::string(rule.id), "--json"}).out);
        for (Json const& topic : json.at("codes")) {
            CAPTURE(topic.dump());
            auto const& sections = topic.at("sections");
            CHECK(sections.size() == code_books().size());
            auto expected = Json::array({"NEC 2998"});
            if (topic.at("topic") == "afci-needed") expected = {"NEC 2998", "NEC 2999"};
            if (section_of(*code_book("NEC 2997"), topic.at("topic").get<std::string>()).is_unread())
                expected = {"NEC 2997", "NEC 2998"};
            auto const at = std::ranges::find(topics(), topic.at("topic").get<std::string>(), &Topic::name);
            CHECK(topic.contains("unread") == (at->basis == Topic::Basis::code));
            if (topic.contains("unread")) CHECK(topic.at("unread") == expected);
            CHECK(sections.at("NEC 2998").is_null());
        }
    }
    for (CodeTable const& table : code_tables()) {
        std::string const name(table.name);
        CAPTURE(name);
        CHECK(call({"explain", "--table", name}).status == exit_done);
        auto const json = Json::parse(call({"explain", "--table", name, "--json"}).out);
        for (Json const& part : json.at("parts"))
            for (Json const& row : part.at("rows")) {
                CAPTURE(row.dump());
                bool const said = row.dump().find("not read yet") != std::string::npos;
                CHECK((!said || name == "citations" || row.at("source") == "unread"));
            }
    }
    auto const afci = call({"explain", "--table", "afci"}).out;
    CHECK_THAT(afci, Contains("NEC 2998, 2999") && Contains("not read yet") && Contains("no rule judges by it"));
    CHECK_THAT(call({"explain", "--table", "citations"}).out, Contains("not read yet"));
}
