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
#include "load_job.h"

#include <catch2/catch.hpp>
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
    for (auto const& entry : std::filesystem::directory_iterator(SOURCE_DIR "/tests/cases/load"))
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
        if (s.va == std::stoll(line.value) && (s.item + "; " + s.arithmetic).find(line.words) != std::string::npos)
            return true;
    }
    return false;
}

std::string written(LoadSteps const& steps) {
    std::string all;
    for (LoadStep const& s : steps) all += fmt::format("{:>8} {}: {}\n", s.va, s.item, s.arithmetic);
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

namespace {
// What a line of arithmetic says, done again: every "a op b op c = d" in it, with + − × ÷ % and brackets.
class Calculator {
public:
    explicit Calculator(std::string text) : text_(std::move(text)) {}
    double sum() {
        double value = product();
        for (;;) {
            if (take("+"))
                value += product();
            else if (take("−"))
                value -= product();
            else
                return value;
        }
    }

private:
    double product() {
        double value = factor();
        for (;;) {
            if (take("×"))
                value *= factor();
            else if (take("÷"))
                value /= factor();
            else
                return value;
        }
    }
    double factor() {
        if (take("(")) {
            auto const value = sum();
            REQUIRE(take(")"));
            units();
            return value;
        }
        skip();
        std::size_t used = 0;
        double const value = std::stod(text_.substr(at_), &used);
        at_ += used;
        return take("%") ? value / 100 : (units(), value);
    }
    void units() {
        for (auto const* u : {"VA", "ft²", "m²", "outlets"})
            if (take(u)) return;
        skip();
        if (at_ < text_.size() && (text_[at_] == 'A' || text_[at_] == 'V')) ++at_;
    }
    void skip() {
        while (at_ < text_.size() && text_[at_] == ' ') ++at_;
    }
    bool take(std::string_view word) {
        skip();
        if (text_.compare(at_, word.size(), word) != 0) return false;
        at_ += word.size();
        return true;
    }
    std::string text_;
    std::size_t at_ = 0;
};
} // namespace

TEST_CASE("a pocket calculator gives every line of every example", "[demand][examples]") {
    int done = 0;
    for (auto const& file : files()) {
        auto const job = job_of(bytes_of(file));
        for (auto const method : {LoadMethod::standard, LoadMethod::optional}) {
            auto const p = service_load(job, method);
            if (!p.load) continue;
            for (LoadSteps const* steps : {&p.load->steps, &p.load->neutral})
                for (LoadStep const& s : *steps) {
                    CAPTURE(file, s.item, s.arithmetic);
                    std::istringstream parts(s.arithmetic);
                    std::string last;
                    for (std::string part; std::getline(parts, part, ',');) {
                        auto const equals = part.find(" = ");
                        if (equals == std::string::npos || part.find("figures") != std::string::npos) continue;
                        auto left = part.substr(0, equals);
                        if (auto const words = left.find("area "); words != std::string::npos) left.erase(0, words + 5);
                        auto right = part.substr(equals + 3);
                        if (auto const colon = right.find(": ");
                            colon != std::string::npos) { // "... = m²: n × VA = VA"
                            left = right.substr(colon + 2, right.find(" = ") - colon - 2);
                            right = right.substr(right.find(" = ") + 3);
                        }
                        if (right.find('(') != std::string::npos) continue; // feet and metres
                        CAPTURE(left, right);
                        CHECK(Calculator(left).sum() == Approx(std::stod(right)).margin(0.5001));
                        last = right;
                        ++done;
                    }
                    if (last.ends_with("VA")) CHECK(std::stoll(last) == s.va);
                }
        }
    }
    REQUIRE(done > 150);
}
