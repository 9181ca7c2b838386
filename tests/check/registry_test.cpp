// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Every rule of the set is there, explains itself and is tried by a test.
#include "made_job.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>

using namespace made;

namespace {
constexpr std::string_view kIds[] = {
    "mw-one-panel",      "mw-same-space",      "mw-in-phase-supply", "mw-opposite-legs",
    "mw-not-adjacent",   "mw-disconnect",      "mw-line-to-line",    "mw-unequal",
    "mw-conductors",     "mw-neutral-current", "mw-one-pole-gfci",   "mw-pigtail",
    "mw-grouping",       "mw-open-neutral",    "mw-unpaired",        "mw-keep-on",
    "wire-breaker-fits", "wire-load-fits",     "wire-continuous",    "wire-outlet",
    "wire-conductors",   "panel-240-on-120",   "panel-dead-space",   "panel-two-legs",
    "panel-no-tandem",   "panel-no-room",      "panel-legs-uneven",  "panel-main-overloaded",
    "dir-unnamed",       "dir-vague",          "dir-duplicate",      "dir-person",
    "dir-name-too-long", "tape-white-as-hot",  "tape-as-neutral",    "tape-green",
    "job-unknown",       "job-assumed"};

std::string tests_text() {
    std::string all;
    for (auto const folder : {"check", "sheet"}) { // dir-name-too-long is found by the sheets
        auto const path = std::filesystem::path(SOURCE_DIR) / "tests" / folder;
        if (!std::filesystem::exists(path)) continue;
        for (auto const& entry : std::filesystem::directory_iterator(path)) {
            if (entry.path().extension() != ".cpp" || entry.path().filename() == "registry_test.cpp") continue;
            std::ifstream file(entry.path());
            all.append(std::istreambuf_iterator<char>(file), {});
        }
    }
    return all;
}
} // namespace

TEST_CASE("every rule is registered once and can be explained", "[check]") {
    std::set<std::string_view> seen;
    for (Rule const& rule : rules()) {
        CAPTURE(rule.id);
        REQUIRE(seen.insert(rule.id).second);
        for (auto const text : {rule.asks, rule.why, rule.remedy}) {
            REQUIRE(text.size() > 20);
            REQUIRE(text.ends_with('.'));
        }
    }
    for (auto const id : kIds) {
        CAPTURE(id);
        REQUIRE(rule_named(id) != nullptr);
    }
    REQUIRE(rule_named("mw-nothing") == nullptr);
}

TEST_CASE("every rule is named by a test", "[check]") {
    auto const tests = tests_text();
    for (Rule const& rule : rules()) {
        CAPTURE(rule.id);
        if (rule.find) REQUIRE(tests.find(std::string(rule.id)) != std::string::npos);
    }
}

TEST_CASE("every rule survives an empty job in every edition", "[check]") {
    for (auto const& edition : editions())
        for (Rule const& rule : rules())
            if (rule.find) REQUIRE(rule.find({Job{}, Plan{}, *code_book(edition)}).size() <= 1);
}
