// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "job/job.h"
#include "wire_jobs.h"

using namespace legwork;
using namespace legwork::testing;

namespace {
char load_fits(typed::Circuit c, std::string_view edition) { return verdict("wire-load-fits", std::move(c), edition); }
char load_fits(typed::Job const& job, std::string_view edition) { return verdict("wire-load-fits", job, edition); }
char runs_on(typed::Circuit c, std::string_view edition) { return verdict("wire-continuous", std::move(c), edition); }
char runs_on(typed::Job const& job, std::string_view edition) { return verdict("wire-continuous", job, edition); }
} // namespace

TEST_CASE("wire-load-fits: a plain load on 120 V and on 240 V", "[check][wire]") {
    // Source: Ohm's law; NEC 210.19, 210.20, CE 8-104(1).
    for (auto const edition : {"NEC 2017", "NEC 2023", "CE 2018", "CE 2024"}) {
        REQUIRE(load_fits(used(circuit("14/2", 15_A), "receptacles", 1800_VA), edition) == '-');
        REQUIRE(load_fits(used(circuit("14/2", 15_A), "receptacles", 1801_VA), edition) == 'E');
        REQUIRE(load_fits(used(circuit("10/2", 30_A, 2), "appliance", 7200_VA), edition) == '-');
        REQUIRE(load_fits(used(circuit("10/2", 30_A, 2), "appliance", 7201_VA), edition) == 'E');
    }
    auto c = circuit("14/2", 15_A);
    REQUIRE(load_fits(c, "NEC 2023") == '-'); // no load known
    c.measured = Amps{15'200};
    REQUIRE(load_fits(c, "NEC 2023") == 'E');
}

TEST_CASE("wire-load-fits: the wire counts as well as the breaker", "[check][wire]") {
    auto const found = of("wire-load-fits", job_of({used(circuit("14/2", 20_A), "receptacles", 2160_VA)}), "NEC 2023");
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].message == "K1 draws 18 A, more than its 14 AWG good for 15 A.");
    REQUIRE(found[0].fix == "Pull 12 AWG all the way, or move part of the load to another circuit.");
    REQUIRE(found[0].where.key == "load");
}

TEST_CASE("wire-load-fits: 208 V draws more, resistance heat gives less", "[check][wire]") {
    auto c = used(circuit("10/2", 30_A, 2), "appliance", 6500_VA); // 31.25 A at 208 V, 27.1 A at 240 V
    REQUIRE(load_fits(job_of({c}), "NEC 2023") == '-');
    REQUIRE(load_fits(job_of({c}, SupplyKind::wye_120_208), "NEC 2023") == 'E');
    c.use = "heating"; // 6500 VA at 240 V gives 4882 VA at 208 V, 23.5 A
    REQUIRE(load_fits(job_of({c}, SupplyKind::wye_120_208), "NEC 2023") == '-');
    c.load.reset();
    c.load_amps = Amps{30'001}; // what it draws there, heat or not
    REQUIRE(load_fits(job_of({c}, SupplyKind::wye_120_208), "NEC 2023") == 'E');
    c.load_amps = 30_A;
    REQUIRE(load_fits(job_of({c}, SupplyKind::wye_120_208), "NEC 2023") == '-');
}

TEST_CASE("wire-load-fits: a range at its branch demand", "[check][wire]") {
    // Sources: NEC Table 220.55 and its note 4 (8 kW to 12 kW; 14 kW: 8.8 kW as in a published answer; an 8 kW range by
    // column B 6400 VA, 27 A, Annex D example D4(b)); CE 8-300: 8 kW, and 40 % of what is above 12 kW.
    auto const [load, breaker, kind, nec, ce] = GENERATE(table<int, int, std::string, char, char>({
        {12000, 40, "8/3", '-', '-'}, // 33.3 A
        {12000, 35, "8/3", 'E', '-'}, // NEC: 8.75 kW or more on at least 40 A
        {12000, 30, "8/3", 'E', 'E'},
        {8000, 30, "10/3", '-', 'E'}, // NEC column B 26.7 A; CE 33.3 A
        {7000, 30, "10/3", '-', '-'}, // never over its nameplate: 29.2 A
        {8700, 30, "10/3", '-', 'E'},
        {8750, 35, "8/3", 'E', '-'},
        {16000, 40, "8/3", '-', '-'}, // 9600 VA 40 A; CE 9600 VA 40 A
        {17000, 40, "8/3", 'E', 'E'}, // NEC 10 000 VA; CE 10 000 VA: 41.7 A
        {14000, 40, "8/3", '-', '-'},
    }));
    auto const c = used(circuit(kind, Amps{breaker * 1000}, 2), "range", VoltAmperes{load * 1000});
    CAPTURE(load, breaker);
    REQUIRE(load_fits(c, "NEC 2020") == nec);
    REQUIRE(load_fits(c, "CE 2021") == ce);
    auto oven = used(circuit("8/3", 40_A, 2), "oven", 9601_VA); // a single oven at nameplate
    REQUIRE(load_fits(oven, "NEC 2020") == 'E');
}

TEST_CASE("wire-load-fits: the range's least breaker has its own section by edition", "[check][wire]") {
    // Source: NEC 210.19(A)(3), 2023 210.19(C).
    auto const job = job_of({used(circuit("8/3", 35_A, 2), "range", 12000_VA)});
    REQUIRE(of("wire-load-fits", job, "NEC 2017")[0].reference.section == "210.19(A)(3)");
    REQUIRE(of("wire-load-fits", job, "NEC 2023")[0].reference.section == "210.19(C)");
}

TEST_CASE("wire-load-fits: a motor needs a quarter more wire, not more breaker", "[check][wire]") {
    // Source: NEC 430.22, CE 28-106: 125 % of the motor's current.
    auto c = used(circuit("14/2", 15_A), "sump pump", 1440_VA); // 12 A, wire for 15 A
    REQUIRE(load_fits(c, "NEC 2023") == '-');
    c.load = 1450_VA; // 12.08 A, wire for 15.1 A
    REQUIRE(load_fits(c, "NEC 2023") == 'E');
    REQUIRE(load_fits(c, "CE 2024") == 'E');
    REQUIRE(of("wire-load-fits", job_of({c}), "NEC 2023")[0].reference.section == "430.22");
    c.motor = false;
    REQUIRE(load_fits(c, "NEC 2023") == '-');
    auto ac = used(circuit("14/2", 15_A, 2), "air conditioner", 3000_VA); // 12.5 A
    REQUIRE(load_fits(ac, "NEC 2023") == 'E');
    ac.mca = 14_A; // the quarter is in it
    REQUIRE(load_fits(ac, "NEC 2023") == '-');
}

TEST_CASE("wire-load-fits: what is not this rule's question", "[check][wire]") {
    auto feeder = used(circuit("6/3", 60_A, 2), "feeder", 20000_VA);
    auto job = job_of({feeder});
    typed::Panel sub;
    sub.name = "Shop";
    sub.feeder = typed::FeederName{"Main", "K1"};
    job.panels.push_back(sub);
    REQUIRE(load_fits(job, "NEC 2023") == 'E'); // empty panel: its own load counts
    auto lights = circuit("14/2", 15_A);
    lights.mark = "L";
    lights.panel = "Shop";
    job.circuits.push_back(lights);
    REQUIRE(load_fits(job, "NEC 2023") == '-'); // the panel's loads do
    REQUIRE(load_fits(used(circuit("10/3", 30_A, 2), "generator inlet", 9000_VA), "NEC 2023") == '-');
    REQUIRE(load_fits(job_of({used(circuit("14/2", 10_A), "lighting", 500_VA)}, SupplyKind::dc_12), "NEC 2023") == '-');
}

TEST_CASE("wire-continuous: by use, at 80 % of breaker and wire", "[check][wire]") {
    // Sources: NEC 210.20(A), 422.13; a 4500 W tank: 18.75 A, 125 % 23.44 A, so 25 A (published example, Québec 2018).
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023", "CE 2018", "CE 2021", "CE 2024"}) {
        CAPTURE(edition);
        REQUIRE(runs_on(used(circuit("10/2", 25_A, 2), "water heater", 4500_VA), edition) == '-');
        REQUIRE(runs_on(used(circuit("12/2", 20_A, 2), "water heater", 4500_VA), edition) == 'E');
        REQUIRE(runs_on(used(circuit("12/2", 20_A, 2), "water heater", 3840_VA), edition) == '-');
        REQUIRE(runs_on(used(circuit("12/2", 20_A, 2), "water heater", 3841_VA), edition) == 'E');
    }
}

TEST_CASE("wire-continuous: a 48 A vehicle charger does not fit 6 AWG sheathed cable under NEC", "[check][wire]") {
    // Source: NEC 334.80, Table 310.16: 6 AWG 55 A; 48 A needs 60 A.
    auto c = used(circuit("6/3", 60_A, 2), "vehicle charger", 11520_VA);
    REQUIRE(runs_on(c, "NEC 2023") == 'E');
    c.run.front().kind = "4/3";
    REQUIRE(runs_on(c, "NEC 2023") == '-');
}

TEST_CASE("wire-continuous: heating by family", "[check][wire]") {
    // Source: CE 62-114(7), (8): 14 AWG on 20 A carries 3600 W at 240 V; the 80 % is of the breaker only.
    auto c = used(circuit("14/2", 20_A, 2), "baseboard", 3600_VA);
    REQUIRE(runs_on(c, "CE 2021") == '-');
    REQUIRE(load_fits(c, "CE 2021") == '-');
    c.load = 3601_VA;
    REQUIRE(load_fits(c, "CE 2021") == 'E'); // above the wire
    REQUIRE(runs_on(c, "CE 2021") == '-');   // one finding for one fault
    // NEC: 125 % of the load, 14 AWG at 15 A carries 2880 W.
    auto us = used(circuit("14/2", 15_A, 2), "baseboard", 2880_VA);
    REQUIRE(runs_on(us, "NEC 2023") == '-');
    us.load = 2881_VA;
    REQUIRE(runs_on(us, "NEC 2023") == 'E');
    REQUIRE(runs_on(us, "CE 2024") == 'E'); // of the breaker there too
    // Source: NEC 424.3(B) of 2017, "considered continuous"; 424.4(B) of 2020 and 2023, of the conductors alone: what
    // of the breaker hangs on whether it runs for hours.
    for (auto const edition : {"NEC 2017", "NEC 2020", "NEC 2023"}) REQUIRE(runs_on(us, edition) == 'E');
    auto wide = used(circuit("12/2", 15_A, 2), "baseboard", 2881_VA);
    REQUIRE(runs_on(wide, "NEC 2017") == 'E');
    REQUIRE(runs_on(wide, "NEC 2020") == 'W');
    REQUIRE(runs_on(wide, "NEC 2023") == 'W');
    us.continuous = wide.continuous = false; // it rests: the wire has its quarter all the same
    REQUIRE(runs_on(us, "NEC 2017") == '-');
    REQUIRE(runs_on(us, "NEC 2023") == 'E');
    REQUIRE(runs_on(wide, "NEC 2023") == '-');
}

TEST_CASE("wire-continuous: lighting by family and dwelling", "[check][wire]") {
    auto job = job_of({used(circuit("14/2", 15_A), "lighting", 1500_VA)}); // 12.5 A
    REQUIRE(runs_on(job, "NEC 2023") == 'E');
    REQUIRE(runs_on(job, "CE 2024") == 'E');
    job.dwelling = typed::Dwelling{};
    REQUIRE(runs_on(job, "NEC 2023") == '-');
    REQUIRE(runs_on(job, "CE 2024") == 'E');
}

TEST_CASE("wire-continuous: CE presumes it of what is not known to rest", "[check][wire]") {
    // Source: CE 8-104(3).
    auto c = used(circuit("14/2", 15_A), "dishwasher", 1500_VA);
    REQUIRE(runs_on(c, "CE 2024") == 'W');
    REQUIRE(runs_on(c, "NEC 2023") == '-');
    c.continuous = false;
    REQUIRE(runs_on(c, "CE 2024") == '-');
    c.continuous = true;
    REQUIRE(runs_on(c, "CE 2024") == 'E');
    REQUIRE(runs_on(c, "NEC 2023") == 'E');
    c.continuous.reset();
    c.use = "receptacles";
    REQUIRE(runs_on(c, "CE 2024") == '-');
    REQUIRE(runs_on(used(circuit("10/3", 30_A, 2), "dryer", 6000_VA), "CE 2024") == '-');
    c.use.clear();
    REQUIRE(runs_on(c, "CE 2024") == 'W');
    c.load = 1440_VA;
    REQUIRE(runs_on(c, "CE 2024") == '-');
}

TEST_CASE("wire-continuous: the fix names a breaker and a wire that go together", "[check][wire]") {
    auto const found =
        of("wire-continuous", job_of({used(circuit("12/2", 20_A, 2), "water heater", 4500_VA)}), "NEC 2023");
    REQUIRE(found[0].message == "K1 draws 18.8 A, continuous by use: more than 80 % of the 20 A breaker (16 A) and 12 "
                                "AWG good for 20 A (16 A).");
    REQUIRE(found[0].fix == "Fit a 25 A breaker on 10 AWG.");
    REQUIRE(found[0].reference.section == "422.13");
}

TEST_CASE("wire-load-fits: the cure it names is one that no other rule speaks of", "[check][wire]") {
    // Source: NEC 422.13: a storage tank runs long, so 125 % of its current.
    auto tank = used(circuit("14/2", 15_A, 2), "water heater", 3700_VA);
    auto found = of("wire-load-fits", job_of({tank}), "NEC 2023");
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].fix == "Fit a 20 A breaker on 12 AWG."); // 15.4 A x 125 % = 19.3 A
    // Source: NEC 210.19(C): a range of 8 3/4 kW or more on at least 40 A, though its demand is 33.3 A.
    auto range = used(circuit("10/3", 30_A, 2), "range", 9000_VA);
    found = of("wire-load-fits", job_of({range}), "NEC 2023");
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].fix == "Fit a 40 A breaker on 8 AWG.");
}
