// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Source: NEC 422.31, 440.14 (read for 2023), 430.102, 680.13; CE 28-604, from memory.
#include "made_job.h"

#include "catch.h"

using namespace made;

TEST_CASE("need-disconnect: once a kind, with all that are of it", "[check][need]") {
    auto const made = job({two_pole("AC", 1).use("air conditioner"), two_pole("HP", 5).use("heat pump"),
                           two_pole("WH", 9).use("water heater"), two_pole("WP", 13).use("well pump"),
                           two_pole("HT", 17).use("hot tub"), one_pole("L1", 2).use("lighting")});
    CHECK(says("need-disconnect", made, "NEC 2023") == "note AC HP; note HT; note WP; note WH");
    auto const all = found("need-disconnect", made, "NEC 2023");
    CHECK(all[0].reference.section == "440.14");
    CHECK(all[2].reference.section == "430.102");
    CHECK(all[3].reference.section == "422.31");
    CHECK(says("need-disconnect", made, "CE 2024") == "note AC HP; note WP"); // machines only
}

TEST_CASE("need-disconnect: a plug, old work and what has no machine ask for none", "[check][need]") {
    CHECK(says("need-disconnect", job({one_pole("DW", 1).use("dishwasher").outlets({"5-20R"})}), "NEC 2023").empty());
    CHECK(says("need-disconnect", job({one_pole("DW", 1).use("dishwasher")}), "NEC 2023") == "note DW");
    CHECK(says("need-disconnect", job({one_pole("DW", 1).use("dishwasher").load(300_VA)}), "NEC 2023").empty());
    CHECK(says("need-disconnect", job({one_pole("SA", 1).use("smoke alarms")}), "NEC 2023").empty());
    CHECK(says("need-disconnect", job({two_pole("WH", 1).use("water heater").old()}), "NEC 2023").empty());
    CHECK(says("need-disconnect", job({one_pole("R1", 1).use("receptacles")}), "NEC 2023").empty());
}
