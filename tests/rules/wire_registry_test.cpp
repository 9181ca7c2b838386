// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "rules/check.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("every rule has a row of sections", "[check]") {
    for (Rule const* r : rules()) {
        CAPTURE(r->id);
        REQUIRE(has_citation(r->id));
    }
}
