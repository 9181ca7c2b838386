// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "calls.h"
#include "cli/command.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

using Words = std::vector<std::string>;
using nlohmann::json;

TEST_CASE("what cannot be understood of a call exits 2 and says so", "[cli]") {
    auto const words = GENERATE(values<Words>({
        {},
        {"chekc", "job.toml"},
        {"check"},
        {"check", "a.toml", "b.toml"},
        {"check", "--loud", "a.toml"},
        {"check", "a.toml", "--rule", "mw-no-such-rule"},
        {"check", "a.toml", "--rule", "box-full"},
        {"check", "a.toml", "--min", "trifle"},
        {"check", "a.toml", "--by", "wall"},
        {"balance", "a.toml", "--moves", "two"},
        {"balance", "a.toml", "--moves", "-1"},
        {"balance", "a.toml", "--moves", "2", "--best"},
        {"balance", "a.toml", "--seconds", "0"},
        {"balance", in_sources("examples/boathouse.toml"), "--seconds", "nan"},
        {"balance", "a.toml", "--seconds", "inf"},
        {"balance", "-", "--write"},
        {"print", "a.toml", "--format", "gif"},
        {"print", "a.toml", "--sheet", "poster"},
        {"print", "a.toml", "--form", "no-such-form"},
        {"explain", "mw-no-such-rule"},
        {"check", "/no/such/file.toml"},
        {"check", "/"},
    }));
    CAPTURE(words);
    auto const called = call(words);
    REQUIRE(called.status == legwork::exit_not_understood);
    REQUIRE(called.out.empty());
    REQUIRE_THAT(called.err, Contains("error: "));

    auto with_json = words;
    with_json.push_back("--json");
    auto const told = call(with_json);
    REQUIRE(told.status == legwork::exit_not_understood);
    REQUIRE(told.err.empty());
    auto const value = json::parse(told.out);
    REQUIRE_THAT(told.out, Catch::Matchers::StartsWith("{\n  \"legwork\": {\n    \"version\": \""));
    REQUIRE(value.at("job").is_null());
    REQUIRE(value.at("problems").size() == 1);
    for (auto const* key : {"file", "line", "column", "message", "fix"}) REQUIRE(value["problems"][0].contains(key));
}

TEST_CASE("results as JSON begin with which program and which form they are", "[cli]") {
    TemporaryFolder const folder;
    auto const path = folder / "job.toml";
    legwork::write_file(path, small_job());
    for (auto const& words : std::vector<Words>{
             {"check", path},
             {"check", path, "--measure"},
             {"check", path, "--propose"},
             {"check", path, "--verdicts"},
             {"balance", path},
             {"print", path, "--out", folder / "out"},
             {"load", path},
             {"load", path, "--add", "hot tub, 30 A, 2 poles"},
             {"compare", path, path},
             {"forms"},
             {"explain"},
             {"explain", "box-full"},
             {"explain", "--table"},
             {"explain", "--table", "ampacity"},
             {"check", "/no/such/file.toml"},
             {"new", "/proc/no/such/place.toml"},
         }) {
        CAPTURE(words);
        auto with_json = words;
        with_json.push_back("--json");
        auto const called = call(with_json);
        CAPTURE(called.err);
        auto const value = nlohmann::ordered_json::parse(called.out);
        REQUIRE(value.begin().key() == "legwork");
        REQUIRE("legwork " + value["legwork"]["version"].get<std::string>() + '\n' == call({"--version"}).out);
        REQUIRE(value["legwork"]["format"] == 1);
        REQUIRE(value["legwork"].size() == 2);
    }
}

TEST_CASE("a slip of the fingers is told", "[cli]") {
    REQUIRE_THAT(call({"chekc", "x"}).err, Contains("did you mean \"check\"?"));
    REQUIRE_THAT(call({"print", "x", "--sheet", "label"}).err, Contains("did you mean \"labels\"?"));
    REQUIRE_THAT(call({"explain", "mw-oposite-legs"}).err, Contains("did you mean \"mw-opposite-legs\"?"));
    REQUIRE_THAT(call({"quux"}).err, !Contains("did you mean"));
    REQUIRE_THAT(call({"help", "balanse"}).err, Contains("did you mean \"balance\"?"));
    REQUIRE_THAT(call({"check", "--mni", "error", "x"}).err, Contains("no option --mni: did you mean --min?"));
    REQUIRE_THAT(call({"check", "--mni=error"}).err, Contains("no option --mni: did you mean --min?"));
    REQUIRE_THAT(call({"print", "x", "--sheat", "labels"}).err, Contains("no option --sheat: did you mean --sheet?"));
    REQUIRE_THAT(call({"--versoin"}).err, Contains("no option --versoin: did you mean --version?"));
    REQUIRE_THAT(call({"check", "x", "--by", "circiut"}).err,
                 Contains("--by: there is no \"circiut\": did you mean \"circuit\"?"));
    REQUIRE_THAT(call({"check", "x", "y"}).err, Contains("\"y\" is a word too many"));
    REQUIRE_THAT(call({"check", "x", "--rule"}).err, Contains("--rule takes one value each time"));
    REQUIRE_THAT(call({"balance", "x", "--moves=1", "--moves=2"}).err, Contains("--moves takes one value, once"));
    REQUIRE_THAT(call({"check", "x", "--measure=no"}).err, Contains("--measure takes no value"));
    REQUIRE_THAT(call({"balance", "x", "--moves", "two"}).err, Contains("\"two\" is no whole number from 0 to 10000"));
    auto const far = call({"check", "x", "--quux"}).err;
    REQUIRE_THAT(far, Contains("no option --quux\n") && Contains("legwork help check") && !Contains("did you mean"));
}

TEST_CASE("help and version exit 0", "[cli]") {
    auto const help = call({"--help"});
    REQUIRE(help.status == 0);
    for (auto const* c : legwork::commands()) {
        REQUIRE_THAT(help.out, Contains(std::string(c->name)));
        REQUIRE(call({std::string(c->name), "--help"}).status == 0);
    }
    // Only commands that exist are listed.
    for (auto const* later : {"import", "export", "pull"}) REQUIRE_THAT(help.out, !Contains(later));
    auto const version = call({"--version"});
    REQUIRE(version.status == 0);
    REQUIRE_THAT(version.out, Catch::Matchers::StartsWith("legwork "));
    REQUIRE(call({"-V"}).out == version.out);
    // Nor is what else was typed a failure of the program's.
    for (auto const* number : {"--moves", "1e", "0"}) {
        auto const asked = call({"--version", "balance", "--seconds", number});
        REQUIRE(asked.status == 0);
        REQUIRE(asked.out == version.out);
        REQUIRE(call({"balance", "--seconds", number}).status == 2);
    }
}

TEST_CASE("a starter job passes its own check, and never takes the place of a file", "[cli][new]") {
    TemporaryFolder const folder;
    auto const path = folder / "my hut.toml";
    REQUIRE(call({"new", path}).status == 0);
    auto const checked = call({"check", path, "--json"});
    CAPTURE(checked.out, checked.err);
    REQUIRE(checked.status == 0);
    auto const starter = contents(path);
    auto const again = call({"new", path});
    REQUIRE(again.status == legwork::exit_not_written);
    REQUIRE_THAT(again.err, Contains("is there already"));
    REQUIRE(contents(path) == starter);
    REQUIRE(call({"new", "-"}).out == starter);
    REQUIRE(call({"new", "/proc/no/such/place.toml"}).status == legwork::exit_not_written);
}

TEST_CASE("every rule that check can name is explained", "[cli][explain]") {
    auto const all = json::parse(call({"explain", "--json"}).out).at("rules"); // a copy
    REQUIRE(all.size() > 20);
    for (auto const& rule : all) {
        auto const id = rule.at("rule").get<std::string>();
        CAPTURE(id);
        auto const told = call({"explain", id});
        REQUIRE(told.status == 0);
        REQUIRE_THAT(told.out, Catch::Matchers::StartsWith(id));
        REQUIRE_FALSE(rule.at("asks").get<std::string>().empty());
        REQUIRE_FALSE(rule.at("why").get<std::string>().empty());
        REQUIRE_FALSE(rule.at("remedy").get<std::string>().empty());
    }
}

TEST_CASE("forms are listed by sheet, one default each", "[cli][forms]") {
    auto const called = call({"forms", "--json"});
    REQUIRE(called.status == 0);
    auto const value = json::parse(called.out);
    auto const listed = call({"forms"}).out;
    std::map<std::string, int> defaults;
    for (auto const& form : value.at("forms")) {
        auto const name = form.at("name").get<std::string>();
        auto const at = listed.find(name + " ");
        REQUIRE(at != std::string::npos);
        auto const line = listed.substr(at, listed.find('\n', at) - at);
        defaults[form.at("sheet")] += line.ends_with("(used when none is said)") ? 1 : 0;
    }
    REQUIRE(defaults.size() >= 3);
    for (auto const& [sheet, count] : defaults) {
        CAPTURE(sheet);
        REQUIRE(count == 1);
    }
}

TEST_CASE("forms as JSON tell the page, the label, how many there are on a page", "[cli][forms]") {
    std::map<std::string, json> forms;
    auto const value = json::parse(call({"forms", "--json"}).out);
    for (auto const& form : value.at("forms")) forms[form.at("name")] = form;
    // 2 5/8 x 1 in on US letter, three by ten: as die-cut stock of that size is sold.
    auto const& sheet = forms.at("labels-letter");
    CHECK(sheet["page_mm"] == json{215.9, 279.4});
    CHECK(sheet["label_mm"] == json{66.675, 25.4});
    CHECK(sheet["per_page"] == 30);
    auto const& roll = forms.at("labels-roll-57x32");
    CHECK(roll["page_mm"] == json{57.0, 0.0});
    CHECK(roll["per_page"] == 1);
    auto const& page = forms.at("directory-a4");
    CHECK(page["page_mm"] == json{210.0, 297.0});
    CHECK(page["label_mm"].is_null());
    CHECK(page["per_page"] == 1);
    for (auto const& [name, form] : forms) CHECK((form["style"].is_null() && form["goes_round_mm"].is_null()));
}
