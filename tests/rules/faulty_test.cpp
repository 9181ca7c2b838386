// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The teaching file of all faults, and what only a home or the other code shows. dir-name-too-long and dir-no-letter
// are told by the sheets.
#include "judged_file.h"

#include "catch.h"

#include <set>

using namespace made;
using namespace legwork;

TEST_CASE("the faulty files show every fault between them", "[check][cases]") {
    std::set<std::string> found;
    for (auto const* file :
         {"examples/faulty.toml", "tests/cases/faulty-home-us.toml", "tests/cases/faulty-home-canada.toml"}) {
        auto const verdict = judge(bytes_of(file));
        CAPTURE(file, verdict.problems);
        REQUIRE(verdict.exit == 1);
        for (Finding const& f : verdict.findings) {
            found.insert(f.rule);
            CAPTURE(f.rule, f.message);
            CHECK_FALSE((f.severity == Severity::error && f.reference.source == Source::memory));
            CHECK_FALSE(f.message.empty());
            CHECK_FALSE(f.fix.empty());
        }
    }
    for (Rule const* rule : rules()) {
        CAPTURE(rule->id);
        if (rule->judge) CHECK(found.contains(std::string(rule->id))); // the others are told by the sheets
    }
}
