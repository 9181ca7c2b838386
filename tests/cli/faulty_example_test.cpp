// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The teaching file: each fault is told, with its place, by the whole program.
#include "calls.h"
#include "source_folder.h"

#include "catch.h"
#include <nlohmann/json.hpp>

#include <set>

using nlohmann::json;

TEST_CASE("check of examples/faulty.toml tells each fault with its line", "[cli][check]") {
    auto const called = call({"check", in_sources("examples/faulty.toml"), "--json"});
    REQUIRE(called.status == 1);
    auto const out = json::parse(called.out);
    std::set<std::string> told;
    for (auto const& f : out.at("findings")) {
        CAPTURE(f.dump());
        told.insert(f.at("rule"));
        CHECK(f.at("line") > 0);
    }
    for (auto const* rule :
         {"mw-one-panel",     "mw-same-space",     "mw-in-phase-supply", "mw-opposite-legs",      "mw-not-adjacent",
          "mw-disconnect",    "mw-line-to-line",   "mw-unequal",         "mw-conductors",         "mw-neutral-current",
          "mw-one-pole-gfci", "mw-pigtail",        "mw-grouping",        "mw-open-neutral",       "mw-unpaired",
          "mw-keep-on",       "wire-breaker-fits", "wire-load-fits",     "wire-continuous",       "wire-outlet",
          "wire-conductors",  "panel-240-on-120",  "panel-dead-space",   "panel-two-legs",        "panel-no-tandem",
          "panel-no-room",    "panel-legs-uneven", "dir-unnamed",        "panel-main-overloaded", "dir-vague",
          "dir-duplicate",    "dir-person",        "dir-name-too-long",  "tape-white-as-hot",     "tape-as-neutral",
          "tape-green",       "job-unknown",       "job-assumed"}) {
        CAPTURE(rule);
        CHECK(told.contains(rule));
    }
}
