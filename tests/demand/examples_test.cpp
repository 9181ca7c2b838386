// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Worked examples of load calculations (tests/cases/load/): each file names its source and, in lines that begin with
// "#: ", what must come out of it, step by step:
//   #: method standard           how it is reckoned
//   #: default optional          the method taken when none is named
//   #: step 2100 the rest        a step of this figure with these words in its item or arithmetic, in this order
//   #: total 18600               VA, exact; neutral likewise
//   #: amps 77.5                 to the hundredth
//   #: heavier 102.12 B          amperes of the heavier leg
//   #: service 100               smallest standard size
#include "calculator.h"
#include "in_english.h"
#include "load_job.h"
#include "source_folder.h"

#include "catch.h"
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <sstream>

using namespace made;

namespace {
struct Line {
    std::string key, value, words;
};

std::vector<Line> expected(std::string const& bytes) {
    std::vector<Line> all;
    std::istringstream lines(bytes);
    for (std::string line; std::getline(lines, line);) {
        if (!line.starts_with("#: ")) continue;
        std::istringstream words(line.substr(3));
        Line l;
        words >> l.key >> l.value >> std::ws;
        std::getline(words, l.words);
        all.push_back(l);
    }
    return all;
}

std::vector<std::string> files() {
    std::vector<std::string> names;
    for (auto const& entry : std::filesystem::directory_iterator(in_sources("tests/cases/load")))
        names.push_back("tests/cases/load/" + entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

std::string hundredths(Amps a) {
    auto const text = fmt::format("{:.2f}", value(a));
    auto const end = text.find_last_not_of('0');
    return text.substr(0, text[end] == '.' ? end : end + 1);
}

// The lines of a calculation from `from` on, until one has this figure and these words.
bool find_step(LoadSteps const& steps, std::size_t& from, Line const& line) {
    while (from < steps.size()) {
        LoadStep const& s = steps[from++];
        if (s.va == std::stoll(line.value) &&
            (in_english(s.item) + "; " + in_english(s.arithmetic)).find(line.words) != std::string::npos)
            return true;
    }
    return false;
}

std::string written(LoadSteps const& steps) {
    std::string all;
    for (LoadStep const& s : steps)
        all += fmt::format("{:>8} {}: {}\n", s.va, in_english(s.item), in_english(s.arithmetic));
    return all;
}
} // namespace

TEST_CASE("worked examples come out as published, step by step", "[demand][examples]") {
    auto const names = files();
    REQUIRE(names.size() >= 30);
    for (auto const& file : names) {
        auto const bytes = bytes_of(file);
        auto const job = job_of(bytes);
        auto const lines = expected(bytes);
        REQUIRE(lines.size() > 1);
        REQUIRE(lines[0].key == "method");
        auto const p = service_load(job, load_method(lines[0].value));
        CAPTURE(file, p.why);
        REQUIRE(p.load);
        INFO(written(p.load->steps));
        INFO(written(p.load->neutral));
        CHECK(p.load->unknown.empty());
        std::size_t at = 0;
        for (Line const& l : lines) {
            CAPTURE(l.key, l.value, l.words);
            if (l.key == "step") CHECK(find_step(p.load->steps, at, l));
            if (l.key == "default") CHECK(service_load(job).load->method == load_method(l.value));
            if (l.key == "total") CHECK(std::to_string(p.load->total_va) == l.value);
            if (l.key == "amps") CHECK(hundredths(p.size.amps) == l.value);
            if (l.key == "heavier") {
                REQUIRE(p.size.lines);
                CHECK(hundredths(std::max(p.size.lines->a, p.size.lines->b)) == l.value);
            }
            if (l.key == "neutral") CHECK(std::to_string(p.load->neutral_va.value_or(-1)) == l.value);
            if (l.key == "service") CHECK(p.size.service == Amps{std::stoll(l.value) * 1000});
        }
    }
}

TEST_CASE("a pocket calculator gives every line of every example", "[demand][examples]") {
    int done = 0;
    for (auto const& file : files()) {
        auto const job = job_of(bytes_of(file));
        for (auto const method : {LoadMethod::standard, LoadMethod::optional}) {
            auto const p = service_load(job, method);
            if (!p.load) continue;
            for (LoadSteps const* steps : {&p.load->steps, &p.load->neutral})
                for (LoadStep const& s : *steps) {
                    CAPTURE(file, in_english(s.item), in_english(s.arithmetic));
                    CHECK(wrong_arithmetic(s, done) == "");
                }
        }
    }
    REQUIRE(done > 150);
}
