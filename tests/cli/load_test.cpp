// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// legwork load. The figures are those of NEC 2017 Annex D, example D1(a), and of CE 8-200(1), worked out beside each.
#include "calls.h"
#include "output/files.h"
#include "source_folder.h"
#include "temporary_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

using nlohmann::json;

namespace {
std::string const d1a = in_sources("tests/cases/load/d1a.toml");

std::string without_notes(std::string const& out) { return out.substr(0, out.find("Good to know")); }

// CE: 5000 of the area, 9000 of heat, 6000 of the range: 20 000 VA on 100 A.
std::string cabin() {
    return R"([job]
name = "Tarn cabin"
code = "CE 2021"
[dwelling]
area = "70 m²"
[[panel]]
name = "Main"
spaces = 24
supply = "120/240"
main = "100 A"
[[panel]]
name = "Loft"
spaces = 8
feeder = "Main/SP"
[[circuit]]
mark = "FU"
name = "Furnace"
panel = "Main"
use = "furnace"
poles = 2
breaker = "50 A"
load = "9000 W"
[[circuit]]
mark = "RG"
name = "Range"
panel = "Main"
use = "range"
poles = 2
breaker = "40 A"
load = "8 kW"
[[circuit]]
mark = "SP"
name = "Feeder to the loft"
panel = "Main"
use = "feeder"
poles = 2
breaker = "30 A"
[[circuit]]
mark = "L1"
name = "Lights, loft"
panel = "Loft"
use = "lighting"
breaker = "15 A"
load = "300 VA"
)";
}

std::string bytes_now(std::string const& path) {
    std::string why;
    return legwork::read_file(path, 1U << 20U, why).value_or(why);
}

struct Written {
    TemporaryFolder folder;
    std::string path;
    explicit Written(std::string const& bytes) : path(folder / "job.toml") { legwork::write_file(path, bytes); }
};
} // namespace

TEST_CASE("the JSON of load has its stable keys", "[cli][load]") {
    auto const called = call({"load", d1a, "--method", "standard", "--json"});
    REQUIRE(called.status == 0);
    auto const value = json::parse(called.out);
    REQUIRE(value["method"] == "standard");
    REQUIRE(value["total_va"] == 18600);
    REQUIRE(value["amps"] == 77.5);
    REQUIRE(value["neutral_amps"] == 60.63); // 14 550 VA at 240 V
    REQUIRE(value["service_a"] == 100);
    REQUIRE(value["left_va"].is_null()); // the example has no main
    std::int64_t sum = 0;
    for (auto const& s : value["steps"]) {
        for (auto const* key : {"item", "reference", "va"}) REQUIRE(s.contains(key));
        if (s["kind"] == "counted") sum += s["va"].get<std::int64_t>();
    }
    REQUIRE(sum == 18600);
}

TEST_CASE("load tells every step so that the right column adds up", "[cli][load]") {
    auto const out = call({"load", d1a, "--method", "standard"}).out;
    REQUIRE_THAT(out, Contains("9000 − 3000 = 6000 VA, 6000 VA × 35 % = 2100 VA; Table 220.42"));
    REQUIRE_THAT(out, Contains("18600 VA ÷ 240 V = 77.5 A; NEC 2017 220.5(A)"));
    REQUIRE_THAT(out, Contains("Work in a panel is for"));
    std::istringstream lines(without_notes(out));
    std::int64_t sum = 0, total = -1;
    for (std::string line; std::getline(lines, line) && total < 0;) {
        std::size_t letters = 0;
        for (char const c : line) letters += (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
        CHECK(letters <= 100);
        if (letters != 100 || line.find("--") != std::string::npos || line.ends_with("VA")) continue;
        auto const figure = std::stoll(line.substr(line.rfind(' ') + 1));
        (line.starts_with("Total") ? total : sum) += figure;
    }
    REQUIRE(sum == total + 1); // it began at -1
    REQUIRE(sum == 18600);
}

TEST_CASE("load of a sub-panel is its feeder's", "[cli][load]") {
    Written const job(cabin());
    auto const called = call({"load", job.path, "--panel", "Loft", "--json"});
    CAPTURE(called.out);
    auto const value = json::parse(called.out);
    REQUIRE(value["panel"] == "Loft");
    REQUIRE(value["present_a"] == 30);
    REQUIRE(value["least_a"].is_null()); // the least of a dwelling is its service's
    auto const whole = json::parse(call({"load", job.path, "--json"}).out);
    REQUIRE(whole["panel"] == "Main");
    REQUIRE(whole["total_va"] == 20000);
    REQUIRE(whole["neutral_amps"].is_null()); // CE gives none
    REQUIRE(whole["left_va"] == 4000);
    REQUIRE(whole["service_a"] == 90); // 83.33 A; its floor is 60 A
}

TEST_CASE("load refuses what is not for this building, in words and in JSON", "[cli][load]") {
    Written const job(cabin());
    auto const refused = [&](std::vector<std::string> words, std::string const& why) {
        words.insert(words.begin(), {"load", job.path});
        auto const called = call(words);
        CAPTURE(called.err);
        CHECK(called.status == 2);
        CHECK(called.out.empty());
        CHECK_THAT(called.err, Contains(why));
        words.emplace_back("--json");
        auto const as_json = call(words);
        CHECK(as_json.status == 2);
        CHECK(json::parse(as_json.out)["problems"].size() == 1);
    };
    refused({"--method", "optional"}, "CE 2021 has no optional method");
    refused({"--method", "existing"}, "CE 2021 has no existing method");
    refused({"--method", "measured"}, "peak = { amps");
    refused({"--panel", "Lotf"}, "did you mean \"Loft\"");
    refused({"--add", "hot tub"}, "how large");
    refused({"--add", "hot tub, 50 A, 3 poles"}, "\"3 poles\" says nothing");
    refused({"--add", "hot tub, 50 A, two poles, 20 light-years"}, "\"20 light-years\"");
    refused({"--add", ", 50 A, 2 poles"}, "what is to be added");
    refused({"--add", "thing, 30 A"}, "1 pole or 2 poles");
    refused({"--add", "\xFF\xFE,,,"}, "says nothing");
    CHECK(call({"load", job.path, "--method", "guess"}).status == 2);
    CHECK(call({"load", job.path + "x"}).status == 2);
}

TEST_CASE("load of a job on DC says so", "[cli][load]") {
    Written const job("[job]\ncode = \"NEC 2023\"\n[[panel]]\nname = \"Boat\"\nspaces = 4\nsupply = \"12 V DC\"\n");
    auto const called = call({"load", job.path});
    REQUIRE(called.status == 2);
    REQUIRE_THAT(called.err, Contains("no panel of this job is on AC"));
    REQUIRE_THAT(call({"load", job.path, "--panel", "Boat"}).err, Contains("is on DC"));
    REQUIRE_THAT(call({"load", job.path, "--panel", "Boat", "--add", "pump, 10 A, 1 pole"}).err, Contains("is on DC"));
}

TEST_CASE("load --add answers yes with the step that decides, and leaves the file alone", "[cli][load]") {
    Written const job(cabin());
    // A tank of 3000 W beside a range counts at 25 %.
    auto const called = call({"load", job.path, "--add", "water heater, 3000 W, 2 poles, 20 A"});
    CAPTURE(called.out, called.err);
    REQUIRE(called.status == 0);
    REQUIRE_THAT(called.out, Contains("water heater? YES."));
    REQUIRE_THAT(called.out, Contains("20000 VA before, 20750 VA with it, 750 VA more"));
    REQUIRE_THAT(called.out, Contains("The step that decides: Other loads, beside a range: 3000 VA × 25 % = 750 VA"));
    REQUIRE_THAT(called.out, Contains("The job file is unchanged."));
    REQUIRE(bytes_now(job.path) == cabin());
}

TEST_CASE("load --add answers no with exit 1, as soon as a panel on its way says no", "[cli][load]") {
    Written const job(cabin());
    // 40 A, continuous: 32 A at 240 V = 7680 VA; 27 680 VA are 115.3 A.
    auto const called = call({"load", job.path, "--add", "vehicle charger, 40 A, 2 poles, continuous"});
    REQUIRE(called.status == 1);
    REQUIRE_THAT(called.out, Contains("vehicle charger? NO."));
    REQUIRE_THAT(called.out, Contains("Too much for the main of 100 A: 115.33 A"));
    REQUIRE_THAT(called.out, Contains("32 A × 240 V = 7680"));
    auto const tell = [&](std::string const& what) {
        auto const in_loft = call({"load", job.path, "--panel", "Loft", "--json", "--add", what});
        CAPTURE(in_loft.out, in_loft.err);
        return json::parse(in_loft.out);
    };
    // The loft's feeder of 30 A says no, the service of 100 A would say yes.
    auto const feeder = tell("water heater, 8000 W, 2 poles");
    REQUIRE(feeder["fits"] == false);
    REQUIRE(feeder["panels"][0]["panel"] == "Loft");
    REQUIRE(feeder["panels"][0]["fits"] == false);
    REQUIRE(feeder["panels"][1]["fits"] == true);
    REQUIRE(feeder["added"]["mark"] == "NEW");
    auto const small = tell("water heater, 2000 W, 2 poles");
    REQUIRE(small["fits"] == true);
    REQUIRE(small["panels"][1]["more_va"] == 500); // a quarter of it at the service
}

TEST_CASE("load --add says when it cannot be said, and when the panel has no space", "[cli][load]") {
    auto bytes = cabin();
    bytes.erase(bytes.find("load = \"9000 W\"\n"), std::string("load = \"9000 W\"\n").size());
    Written const job(bytes);
    auto const called = call({"load", job.path, "--add", "dryer, 5 kW"});
    REQUIRE_THAT(called.out, Contains("dryer? CANNOT BE SAID YET.") && Contains("the load of Furnace (FU)"));
    auto full = cabin();
    full.replace(full.find("spaces = 24"), 11, "spaces = 8\nblocked = [5, 7]"); // three two-poles and no more
    Written const tight(full);
    auto const no_space = call({"load", tight.path, "--add", "dryer, 5 kW"});
    CAPTURE(no_space.out);
    REQUIRE_THAT(no_space.out, Contains("But there is no space for it"));
}

TEST_CASE("load reads standard input", "[cli][load][process]") {
    auto const called = run_process({"load", "-", "--json"}, cabin());
    REQUIRE(called.status == 0);
    REQUIRE(json::parse(called.out)["total_va"] == 20000);
}
