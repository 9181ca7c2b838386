// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "units/text.h"

#include "catch.h"
#include <string>

using namespace legwork;

TEST_CASE("a current is read with its unit", "[units]") {
    auto const [typed, milliamperes] = GENERATE(table<std::string, int>({
        {"20 A", 20'000},
        {"20A", 20'000},
        {"6.4 A", 6'400},
        {"500 mA", 500},
        {" 20  A ", 20'000},
        {"20 amps", 20'000},
        {"0.0155 A", 16},
        {".5 A", 500},
        {"1.2 kA", 1'200'000},
        {"20\xC2\xA0"
         "A",
         20'000},
        {"10000 A", 10'000'000},
        {"0020 A", 20'000},
        {"20.000 A", 20'000},
    }));
    CAPTURE(typed);
    auto const read = parse_amps(typed);
    REQUIRE(read.why == "");
    REQUIRE(read.value->count == milliamperes);
}

TEST_CASE("what is no current says the way out", "[units]") {
    auto const [typed, why] = GENERATE(table<std::string, std::string>({
        {"20", "write the unit: \"20 A\""},
        {"", "begin with a number"},
        {"A", "begin with a number"},
        {"-20 A", "cannot be negative"},
        {"\xE2\x88\x92"
         "20 A",
         "cannot be negative"},
        {"0 A", "cannot be 0"},
        {"0.0001 A", "cannot be 0"},
        {"10001 A", "at most 10 000 A"},
        {"99999999999999999999 A", "at most 10 000 A"},
        {"1500 W", "12.5 A"},
        {"1.5 kW", "12.5 A"},
        {"120 V", "voltage"},
        {"20 furlongs", "A or mA"},
        {"nan A", "begin with a number"},
        {"inf", "begin with a number"},
        {"1,500 A", "a comma"},
        {"1.2.3 A", "this number"},
        {"1. A", "this number"},
        {"20 A 30", "A or mA"},
        {"2e3 A", "A or mA"},
        {"0x20 A", "A or mA"},
        {"?", "begin with a number"},
    }));
    CAPTURE(typed);
    auto const read = parse_amps(typed);
    REQUIRE_FALSE(read.value);
    REQUIRE_THAT(read.why, Contains(why));
}

TEST_CASE("a number of any length has a short answer", "[units]") {
    auto const long_number = "1." + std::string(30'000, '1');
    for (auto const& why : {parse_amps(long_number).why, parse_load(long_number + " A").why,
                            parse_length(long_number).why, parse_area(long_number).why}) {
        REQUIRE(why != "");
        REQUIRE(why.size() < 200);
    }
}

TEST_CASE("a load is read with its unit", "[units]") {
    auto const [typed, grains] = GENERATE(table<std::string, std::int64_t>({
        {"1500 VA", 1'500'000},
        {"1.5 kVA", 1'500'000},
        {"3000 W", 3'000'000},
        {"3 kW", 3'000'000},
        {"0 VA", 0},
        {"0.001 VA", 1},
        {"9999.999 kVA", 9'999'999'000},
        {"1500 watts", 1'500'000},
        {"1.5kva", 1'500'000},
    }));
    CAPTURE(typed);
    auto const read = parse_load(typed);
    REQUIRE(read.why == "");
    REQUIRE(read.value->count == grains);
}

TEST_CASE("what is no load says the way out", "[units]") {
    auto const [typed, why] = GENERATE(table<std::string, std::string>({
        {"1500", "write the unit: \"1500 VA\""},
        {"20 A", "this is a current, a load is in VA or W"},
        {"-1 W", "cannot be negative"},
        {"11000 kW", "at most"},
        {"2 hp", "nameplate"},
        {"9000 BTU/h", "nameplate"},
        {"5 kWh", "energy"},
        {"1 500 VA", "the unit of a load"},
        {"1,500 VA", "a comma"},
        {"15 mW", "the unit of a load"},
    }));
    CAPTURE(typed);
    auto const read = parse_load(typed);
    REQUIRE_FALSE(read.value);
    REQUIRE_THAT(read.why, Contains(why));
}

TEST_CASE("a load may be its current", "[units]") {
    auto const amps = [](std::string const& typed) { return std::get<Amps>(parse_load_or_amps(typed).value.value()); };
    CHECK(amps("12 A") == 12_A);
    CHECK(amps("500mA") == 500_mA);
    CHECK(amps("0 A") == 0_A); // as 0 VA
    CHECK(std::get<VoltAmperes>(parse_load_or_amps("1.5 kW").value.value()) == 1500_VA);
    CHECK_THAT(parse_load_or_amps("12 V").why, Contains("\"1500 VA\"") && Contains("\"12 A\""));
    CHECK_THAT(parse_load_or_amps("10001 A").why, Contains("at most 10 000 A"));
    CHECK_THAT(parse_load_or_amps("12").why, Contains("write the unit"));
    CHECK_THAT(parse_load_or_amps("2 hp").why, Contains("nameplate"));
}

TEST_CASE("a length is read in metres, feet and inches", "[units]") {
    // Source: 1 in = 25.4 mm and 1 ft = 0.3048 m exactly (international yard and pound agreement, 1959).
    auto const [typed, micrometres] = GENERATE(table<std::string, std::int64_t>({
        {"9.5 m", 9'500'000},
        {"300 mm", 300'000},
        {"12 cm", 120'000},
        {"31 ft", 9'448'800},
        {"14 in", 355'600},
        {"31' 6\"", 9'601'200},
        {"31'6\"", 9'601'200},
        {"31 ft 6 in", 9'601'200},
        {"31'-6\"", 9'601'200},
        {"31\xE2\x80\xB2 6\xE2\x80\xB3", 9'601'200},
        {"31\xE2\x80\x99 6\xE2\x80\x9D", 9'601'200},
        {"31' 6 1/2\"", 9'613'900},
        {"6 1/2 in", 165'100},
        {"1/2 in", 12'700},
        {"1/16 in", 1'588},
        {"31 feet 0 inches", 9'448'800},
        {"0 m", 0},
        {"10000 m", 10'000'000'000},
        {"2.5 ft", 762'000},
    }));
    CAPTURE(typed);
    auto const read = parse_length(typed);
    REQUIRE(read.why == "");
    REQUIRE(read.value->count == micrometres);
}

TEST_CASE("what is no length says the way out", "[units]") {
    auto const [typed, why] = GENERATE(table<std::string, std::string>({
        {"9.5", "write the unit: \"9.5 m\" or \"9.5 ft\""},
        {"-3 m", "cannot be negative"},
        {"10001 m", "at most 10 km"},
        {"31 ft 6", "inches with their unit"},
        {"31 ft 14 in", "12 inches"},
        {"3 m 20 cm", "the unit of a length"},
        {"6 in 2 ft", "the unit of a length"},
        {"20 A", "the unit of a length"},
        {"9,5 m", "a comma"},
        {"6 3/2 in", "this number"},
        {"1/0 in", "the unit of a length"},
        {"31 ft 6 m", "inches with their unit"},
        {"", "begin with a number"},
    }));
    CAPTURE(typed);
    auto const read = parse_length(typed);
    REQUIRE_FALSE(read.value);
    REQUIRE_THAT(read.why, Contains(why));
}

TEST_CASE("an area is read in square metres and square feet", "[units]") {
    // Source: 1 sq ft = 0.09290304 m2 exactly.
    auto const [typed, square_mm] = GENERATE(table<std::string, std::int64_t>({
        {"64 m\xC2\xB2", 64'000'000},
        {"64 m2", 64'000'000},
        {"690 ft\xC2\xB2", 64'103'098},
        {"690 sq ft", 64'103'098},
        {"690 sf", 64'103'098},
        {"0.5 m^2", 500'000},
    }));
    CAPTURE(typed);
    REQUIRE(parse_area(typed).why == "");
    REQUIRE(parse_area(typed).value->count == square_mm);
    for (std::string const bad : {"64", "0 m2", "-1 m2", "100001 m2", "64 m", "64 acres"}) {
        CAPTURE(bad);
        REQUIRE_FALSE(parse_area(bad).value);
        REQUIRE(parse_area(bad).why != "");
    }
}

TEST_CASE("quantities print without trailing zeros", "[units]") {
    REQUIRE(text(20_A) == "20 A");
    REQUIRE(text(6400_mA) == "6.4 A");
    REQUIRE(text(5_mA) == "0.005 A");
    REQUIRE(text(1500_VA) == "1500 VA");
    REQUIRE(text(VoltAmperes{1499'500}) == "1500 VA");
    REQUIRE(text(240_V) == "240 V");
    REQUIRE(text(from_mm(9500), UnitSystem::metric) == "9.5 m");
    REQUIRE(text(from_mm(300), UnitSystem::metric) == "0.3 m");
    REQUIRE(text(Length{0}, UnitSystem::metric) == "0 m");
    REQUIRE(text(Length{9'448'800}, UnitSystem::inch) == "31 ft");
    REQUIRE(text(Length{9'601'200}, UnitSystem::inch) == "31 ft 6 in");
    REQUIRE(text(Length{165'100}, UnitSystem::inch) == "6 1/2 in");
    REQUIRE(text(Length{304'799}, UnitSystem::inch) == "1 ft");
    REQUIRE(text(Length{0}, UnitSystem::inch) == "0 in");
}

TEST_CASE("any bytes are a quantity or a reason", "[units]") {
    std::string const bytes("\0 -9.,/'\"mfitnVAkW\xC2\xB2\xE2\x80\xB2"
                            "0",
                            25);
    unsigned state = 1;
    for (int round = 0; round < 20'000; ++round) {
        std::string typed;
        for (int i = 0; i < 12; ++i) {
            state = state * 1664525u + 1013904223u;
            typed += bytes[(state >> 16) % bytes.size()];
        }
        auto const told = [](auto const& read) { return read.value.has_value() == read.why.empty(); };
        REQUIRE(told(parse_amps(typed)));
        REQUIRE(told(parse_load(typed)));
        REQUIRE(told(parse_length(typed)));
        REQUIRE(told(parse_area(typed)));
    }
}

TEST_CASE("a volume is read in millilitres and cubic inches", "[units]") {
    // Source: 1 in = 25.4 mm exactly, so 1 in³ = 16 387.064 mm³; a grain is a thousandth of one.
    CHECK(parse_volume("524 mL").value == Volume{524'000'000});
    CHECK(parse_volume("0.5 L").value == Volume{500'000'000});
    CHECK(parse_volume("1 in³").value == Volume{16'387'064});
    CHECK(parse_volume("32 cu in").value == parse_volume("32in3").value);
    CHECK(parse_volume("1 cm³").value == parse_volume("1 ml").value);
    CHECK_THAT(parse_volume("32").why, Contains("\"32 mL\" or \"32 in³\""));
    CHECK_THAT(parse_volume("32 in").why, Contains("the unit of a volume"));
    CHECK_THAT(parse_volume("0 mL").why, Contains("cannot be 0"));
    CHECK_THAT(parse_volume("101 L").why, Contains("at most 100 L"));
}
