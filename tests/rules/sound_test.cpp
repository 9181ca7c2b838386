// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Small panels as a careful electrician builds and files them (tests/sound/, invented): none has an error, and the only
// warnings are those that its file lists, one a line:
//   #: warning panel-240-on-120 WH  why it is right to say so
#include "balance/balance.h"
#include "building/resolve.h"
#include "judged_file.h"
#include "source_folder.h"

#include "catch.h"

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <sstream>

using namespace made;
using namespace legwork;

namespace {
std::vector<std::string> sound_files() {
    std::vector<std::string> names;
    for (auto const& entry : std::filesystem::directory_iterator(in_sources("tests/sound")))
        if (entry.path().extension() == ".toml") names.push_back("tests/sound/" + entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

struct Listed {
    std::string rule, mark;
    bool reasoned = false; // says why, in three words at least
};

std::vector<Listed> listed_warnings(std::string const& bytes) {
    std::vector<Listed> all;
    std::istringstream lines(bytes);
    for (std::string line; std::getline(lines, line);) {
        if (!line.starts_with("#: ")) continue;
        std::istringstream words(line.substr(3));
        std::string severity, why;
        Listed l;
        words >> severity >> l.rule >> l.mark;
        int reasons = 0;
        while (words >> why) ++reasons;
        l.reasoned = severity == "warning" && reasons >= 3;
        all.push_back(l);
    }
    return all;
}

bool covers(Listed const& l, Finding const& f) {
    auto const& marks = f.where.circuits;
    return f.severity == Severity::warning && f.rule == l.rule &&
           (std::ranges::find(marks, l.mark) != marks.end() || f.where.panel == l.mark);
}

typed::Job read(std::string const& bytes) {
    auto const got = job_of(bytes);
    REQUIRE(got);
    return *got;
}
} // namespace

TEST_CASE("sound panels: no error, and no warning but those the file gives a reason for", "[check][sound]") {
    for (auto const& file : sound_files()) {
        auto const bytes = bytes_of(file);
        auto const verdict = judge(bytes);
        auto const listed = listed_warnings(bytes);
        CAPTURE(file, verdict.problems);
        REQUIRE(verdict.exit == 0);
        for (Finding const& f : verdict.findings) {
            CAPTURE(f.rule, f.message, f.where.circuits);
            CHECK(f.severity != Severity::error);
            CHECK_FALSE(f.accepted);
            if (f.severity == Severity::warning)
                CHECK(std::ranges::any_of(listed, [&](Listed const& l) { return covers(l, f); }));
        }
        for (Listed const& l : listed) {
            CAPTURE(l.rule, l.mark);
            CHECK(l.reasoned);
            CHECK(std::ranges::any_of(verdict.findings, [&](Finding const& f) { return covers(l, f); }));
        }
    }
}

TEST_CASE("sound panels: a note says what to do, and says it once", "[check][sound]") {
    for (auto const& file : sound_files()) {
        auto const verdict = judge(bytes_of(file));
        std::set<std::pair<std::string, std::string>> told;
        for (Finding const& f : verdict.findings) {
            if (f.severity != Severity::note) continue;
            CAPTURE(file, f.rule, f.message);
            CHECK(f.rule != "job-unknown"); // every figure is there
            CHECK_FALSE(f.fix.empty());
            CHECK(told.insert({f.rule, f.message}).second);
        }
    }
}

TEST_CASE("sound panels: every circuit has its space, and none needs to move", "[check][sound]") {
    for (auto const& file : sound_files()) {
        CAPTURE(file);
        auto const job = read(bytes_of(file));
        for (typed::Circuit const& c : job.circuits) {
            CAPTURE(c.mark);
            CHECK(c.space);
            CHECK_FALSE(c.use_guessed);
        }
        auto const plan = balance(resolve(job));
        CHECK(recheck(resolve(job), plan, false).empty());
        for (PanelPlan const& panel : plan.panels) {
            CAPTURE(panel.panel);
            CHECK(panel.moves == 0);
            CHECK(panel.proven);
        }
    }
}

TEST_CASE("sound panels: as many under each code, every edition among them", "[check][sound]") {
    std::map<std::string, int> editions_seen;
    std::map<Family, int> families;
    for (auto const& file : sound_files()) {
        auto const job = read(bytes_of(file));
        ++editions_seen[job.code];
        ++families[code_book(job.code)->family];
    }
    CHECK(families[Family::nec] >= 10);
    CHECK(families[Family::ce] >= 10);
    for (auto const& edition : editions()) {
        CAPTURE(edition);
        CHECK(editions_seen[edition] >= 2);
    }
}
