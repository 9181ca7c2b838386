// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The reader lies below panel/ and finds the second pole of a breaker by itself: it must be where the layout has it.
#include "job/job.h"
#include "job/spaces.h"
#include "panel/layout.h"

#include "catch.h"

using namespace legwork;

TEST_CASE("reader and layout agree on what a breaker fills", "[panel]") {
    for (auto const numbering : {Numbering::across, Numbering::down})
        for (int spaces = 1; spaces <= 84; ++spaces) {
            typed::Panel p;
            p.spaces = spaces;
            p.numbering = numbering;
            Layout const layout(p);
            for (int s = 1; s <= spaces; ++s)
                for (char const half : {'\0', 'a', 'b'})
                    for (int const poles : {1, 2}) {
                        CAPTURE(spaces, s, half, poles);
                        REQUIRE(filled_spots(p, {s, half}, poles) == slots(layout, {s, half}, poles));
                    }
        }
}
