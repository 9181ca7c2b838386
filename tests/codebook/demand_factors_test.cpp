// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/cite.h"
#include "codebook/cooking_factors.h"
#include "codebook/demand_factors.h"

#include "catch.h"

#include <numeric>

using namespace legwork;

namespace {
FloorLoads const& floor_loads() { return *demand_factors(*code_book("NEC 2020")).by_floor; }
std::int64_t demand(std::vector<std::int64_t> const& nameplates) {
    std::int64_t sum = 0;
    for (auto const& s : cooking_demand(floor_loads().cooking, nameplates)) sum += s.va;
    return sum;
}
std::vector<std::int64_t> many(std::size_t n, std::int64_t va) { return std::vector<std::int64_t>(n, va); }
} // namespace

TEST_CASE("cooking: worked examples of NEC Table 220.55", "[codebook][demand]") {
    // Annex D D6: 24 ranges of 16 kW, 39 kW x 1.20.
    CHECK(demand(many(24, 16'000)) == 46'800);
    // Annex D D6: 5 x 11, 2 x 12, 20 x 13.5, 3 x 18 kW: average 13.6, 45 kW x 1.10.
    auto mixed = many(5, 11'000);
    for (auto const& some : {many(2, 12'000), many(20, 13'500), many(3, 18'000)})
        mixed.insert(mixed.end(), some.begin(), some.end());
    CHECK(demand(mixed) == 49'500);
    CHECK(demand({14'000}) == 8'800);              // a published exam question
    CHECK(demand(many(10, 14'000)) == 27'500);     // a trade paper's quiz
    CHECK(demand({20'000}) == 11'200);             // cooktop and two ovens on one circuit, a student's sound work
    CHECK(demand({3'000}) == 2'400);               // column A, a design handbook page
    CHECK(demand({8'000}) == 6'400);               // column B, Annex D D4(b)
    CHECK(demand({4'000, 4'000, 5'100}) == 7'205); // Annex D D2(b), printed 7200
    CHECK(demand({12'000}) == 8'000);              // Annex D D1(a)
    CHECK(demand(many(8, 10'000)) == 23'000);      // Annex D D5(a)
    CHECK(demand(many(30, 12'000)) == 45'000);     // 15 kW and one a range
}

TEST_CASE("cooking: edges of the columns", "[codebook][demand]") {
    CHECK(demand({}) == 0);
    CHECK(demand({3'499}) == 2'799);  // column A, 80 %
    CHECK(demand({8'750}) == 7'000);  // column B, 80 %
    CHECK(demand({8'751}) == 8'000);  // column C
    CHECK(demand({12'499}) == 8'000); // not a major part of a kW
    CHECK(demand({12'500}) == 8'400);
    CHECK(demand({27'000}) == 14'000); // 15 kW above 12: 8 kW x 1.75
    CHECK(demand({27'001}) == 27'001); // outside the table
    // Small ones beside large ones: by their own columns.
    CHECK(demand({3'000, 3'000, 16'000}) == 4'500 + 9'600);
    for (std::size_t n = 1; n < 80; ++n) CHECK(demand(many(n + 1, 12'000)) > demand(many(n, 12'000)));
}

TEST_CASE("demand factors: dryers, and what editions changed", "[codebook][demand]") {
    CHECK(dryer_percent(floor_loads().dryers, 1).value == 100);
    CHECK(dryer_percent(floor_loads().dryers, 4).value == 100);
    CHECK(dryer_percent(floor_loads().dryers, 5).value == 85);
    CHECK(dryer_percent(floor_loads().dryers, 9).value == 55); // seen from nine on
    CHECK(dryer_percent(floor_loads().dryers, 11).value == 47);
    CHECK(dryer_percent(floor_loads().dryers, 12).value == 46); // 47 - (n - 11)
    CHECK(dryer_percent(floor_loads().dryers, 23).value == 35);
    CHECK(demand_factors(*code_book("NEC 2017")).by_floor->fixed_least_va.value == 0);
    CHECK(demand_factors(*code_book("NEC 2020")).by_floor->fixed_least_va.value == 500);
    CHECK_FALSE(demand_factors(*code_book("NEC 2020")).by_floor->vehicle_least_va);
    CHECK(demand_factors(*code_book("NEC 2023")).by_floor->vehicle_least_va->value == 7200);
    CHECK_FALSE(demand_factors(*code_book("CE 2024")).by_floor);
    CHECK(demand_factors(*code_book("CE 2018")).by_blocks->block_w.value == 1000);
    CHECK(cite(*code_book("NEC 2017"), "load-service/floor-area").section == "220.12");
    CHECK(cite(*code_book("NEC 2020"), "load-service/floor-area").section == "220.14(J)");
    CHECK(cite(*code_book("NEC 2023"), "load-service/floor-area").section == "220.41");
    CHECK(cite(*code_book("NEC 2023"), "load-service/lighting-demand").section == "Table 220.45");
}
