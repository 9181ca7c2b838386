// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/protection_rows.h"

namespace legwork {

namespace {
using enum RoomPlace;
using Of = GfciRow::Of;
using Elsewhere = GfciRow::Elsewhere;
constexpr auto no = Asks::no, maybe = Asks::perhaps, yes = Asks::yes;
using ByEdition = std::array<Asks, 3>;
constexpr ByEdition all(Asks a) { return {a, a, a}; }
// 210.8(F) of 2023 lets listed heating and cooling equipment off.
constexpr std::array<std::optional<Day>, 3> kHvacRelief{std::nullopt, std::nullopt, Day{2026, 9, 1}};

// NEC 210.8(A) as its 2014 to 2023 lists are told on trade pages; (D), (F) likewise. Things that a job does not say
// make a "perhaps". Uses before places: of two equally grave rows the first speaks.
constexpr std::array kNec{
    GfciRow{.topic = "gfci-needed/hot-tub",
            .what = "hot tubs and spas",
            .of = Of::use,
            .uses = {"hot tub"},
            .asks = all(maybe),
            .hangs_on = "the unit is not marked as having it built in"},
    GfciRow{.topic = "gfci-needed/boat-hoist",
            .what = "boat hoists",
            .of = Of::wired_in,
            .places = {boat_hoist},
            .asks = all(maybe)},
    GfciRow{.topic = "gfci-needed/heated-floor",
            .what = "heated floors in bathrooms and kitchens",
            .of = Of::use,
            .places = {bathroom, kitchen},
            .uses = {"floor heating"},
            .asks = all(maybe)},
    GfciRow{.topic = "gfci-needed/crawl-space-lights",
            .what = "lights in crawl spaces",
            .of = Of::lighting,
            .places = {crawl_space},
            .asks = all(maybe)},
    GfciRow{.topic = "gfci-needed/appliance",
            .what = "dishwashers, wired in or plugged in",
            .of = Of::use,
            .uses = {"dishwasher"},
            .asks = all(maybe)},
    GfciRow{.topic = "gfci-needed/appliance",
            .what = "sump pumps, wired in or plugged in",
            .of = Of::use,
            .uses = {"sump pump"},
            .asks = {no, maybe, maybe}},
    GfciRow{.topic = "gfci-needed/appliance",
            .what = "ranges, ovens, cooktops, dryers and microwaves, wired in or plugged in",
            .of = Of::use,
            .uses = {"range", "oven", "cooktop", "dryer", "microwave"},
            .asks = {no, no, maybe},
            .most = 60_A},
    GfciRow{.topic = "gfci-needed/vehicle-charger",
            .what = "receptacles for charging vehicles",
            .uses = {"vehicle charger"},
            .asks = all(maybe),
            .most = 50_A,
            .any_volts = true},

    GfciRow{
        .topic = "gfci-needed/bathroom", .what = "receptacles in bathrooms", .places = {bathroom}, .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/outdoor",
            .what = "outdoor receptacles",
            .places = {outdoor, dock, eaves},
            .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/garage",
            .what = "receptacles in garages and outbuildings",
            .places = {garage, outbuilding},
            .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/garage",
            .what = "receptacles in garages and outbuildings",
            .places = {workshop},
            .asks = all(maybe),
            .hangs_on = "the workshop is in one"},
    GfciRow{
        .topic = "gfci-needed/boathouse", .what = "receptacles in boathouses", .places = {boathouse}, .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/crawl-space",
            .what = "receptacles in crawl spaces",
            .places = {crawl_space},
            .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/basement",
            .what = "receptacles in unfinished basements",
            .places = {unfinished_basement},
            .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/basement",
            .what = "receptacles in unfinished basements",
            .places = {basement},
            .asks = {maybe, no, no},
            .hangs_on = "the basement is not finished"},
    GfciRow{.topic = "gfci-needed/basement",
            .what = "receptacles in basements",
            .places = {basement},
            .asks = {no, yes, yes},
            .elsewhere = Elsewhere::perhaps},
    GfciRow{.topic = "gfci-needed/kitchen",
            .what = "receptacles that serve a kitchen counter",
            .places = {counter},
            .asks = {yes, yes, no}},
    GfciRow{.topic = "gfci-needed/kitchen",
            .what = "receptacles that serve a kitchen counter",
            .places = {kitchen},
            .asks = {maybe, maybe, no},
            .hangs_on = "any of these does",
            .general = true,
            .unless_counter_elsewhere = true},
    GfciRow{.topic = "gfci-needed/kitchen",
            .what = "receptacles in kitchens",
            .places = {kitchen, counter},
            .asks = {no, no, yes}},
    GfciRow{.topic = "gfci-needed/sink",
            .what = "receptacles within 1.8 m (6 ft) of a sink",
            .places = {sink},
            .asks = all(yes),
            .general = true},
    GfciRow{.topic = "gfci-needed/laundry",
            .what = "receptacles in laundry areas",
            .places = {laundry},
            .asks = all(yes),
            .elsewhere = Elsewhere::perhaps},

    GfciRow{.topic = "gfci-needed/outdoor-outlets",
            .what = "outdoor outlets, what is wired in too",
            .of = Of::wired_in,
            .places = {outdoor, dock, eaves},
            .asks = {no, yes, yes},
            .elsewhere = Elsewhere::no,
            .most = 50_A,
            .until = kHvacRelief},
    GfciRow{.topic = "gfci-needed/outdoor-outlets",
            .what = "outdoor outlets, what is wired in too",
            .of = Of::wired_in,
            .uses = {"heat pump", "air conditioner"},
            .asks = {no, maybe, maybe},
            .hangs_on = "the unit stands outdoors",
            .elsewhere = Elsewhere::no,
            .most = 50_A,
            .until = kHvacRelief},
    GfciRow{.topic = "gfci-needed/outdoor-outlets",
            .what = "outlets of garages, outbuildings and boathouses, wired in too",
            .of = Of::wired_in,
            .places = {garage, outbuilding, boathouse},
            .asks = {no, no, maybe},
            .hangs_on = "its floor is at or below the ground outside",
            .elsewhere = Elsewhere::no,
            .most = 50_A,
            .until = kHvacRelief},
};

// CE 26-704 as trade pages on the 2018 to 2024 editions tell it. What stands before its receptacle hides it: let off.
constexpr std::array kCe{
    GfciRow{.topic = "gfci-needed/hot-tub",
            .what = "hot tubs and spas",
            .of = Of::use,
            .uses = {"hot tub"},
            .asks = all(maybe),
            .hangs_on = "the unit is not marked as having it built in"},
    GfciRow{.topic = "gfci-needed/bathroom",
            .what = "receptacles within 1.5 m of a basin, tub or shower",
            .places = {bathroom},
            .asks = all(yes),
            .general = true},
    GfciRow{.topic = "gfci-needed/outdoor",
            .what = "outdoor receptacles within 2.5 m of the ground",
            .places = {outdoor, dock},
            .asks = all(yes)},
    GfciRow{.topic = "gfci-needed/sink",
            .what = "receptacles within 1.5 m of a sink",
            .places = {sink},
            .asks = all(yes),
            .general = true},
    GfciRow{.topic = "gfci-needed/sink",
            .what = "receptacles within 1.5 m of a sink",
            .places = {counter},
            .asks = all(maybe),
            .hangs_on = "any of these is that near",
            .general = true},
    GfciRow{.topic = "gfci-needed/sink",
            .what = "receptacles within 1.5 m of a sink",
            .places = {kitchen},
            .asks = all(maybe),
            .hangs_on = "any of these is that near",
            .general = true,
            .unless_counter_elsewhere = true},
    GfciRow{.topic = "gfci-needed/heating-near-tub",
            .what = "heaters, and their controls, near a tub, shower or basin",
            .of = Of::use,
            .places = {bathroom},
            .uses = {"baseboard", "heating", "floor heating"},
            .asks = all(maybe),
            .hangs_on = "one of these is near"},
};

// NEC 2017 speaks of 125 V, 15 A and 20 A; from 2020 on of 125 V to 250 V, whatever the amperes.
constexpr ReceptacleScope kTwentyAmps{.two_pole = false, .most = 20_A};
constexpr ReceptacleScope kAnyAmps{.two_pole = true, .most = {}};
constexpr std::array<ReceptacleScope const*, 3> kNecScope{&kTwentyAmps, &kAnyAmps, &kAnyAmps};

constexpr RoomPlaces kNecArcRooms{kitchen, counter, dining, living, bedroom, hall, closet, laundry};
constexpr RoomPlaces kNecArcPerhaps{loft, house, basement};
constexpr AfciTable nec_arc(int least_amps) {
    return {.least_amps = least_amps,
            .most_amps = 20,
            .receptacles_only = false,
            .rooms = kNecArcRooms,
            .perhaps = kNecArcPerhaps,
            .let_off = {},
            .uses_let_off = {},
            .there = "120 V circuits",
            .what = "120 V circuits of kitchens, laundries, living rooms, bedrooms, halls and the like",
            .hangs_on = "it serves any such room",
            .no_breaker = "its breaker is of 20 A or less"};
}
constexpr std::array kNecArc{nec_arc(15), nec_arc(15), nec_arc(10)};

// Every receptacle circuit of the dwelling unit but those of kitchen counter, refrigerator, bathroom basin and a sump
// pump of its own. Garages and workshops: from memory.
constexpr AfciTable kCeArc{
    .least_amps = 0,
    .most_amps = 20,
    .receptacles_only = true,
    .rooms = {kitchen, dining, living, bedroom, loft, hall, stair, closet, laundry, utility, basement,
              unfinished_basement},
    .perhaps = {house, attic, crawl_space, garage, workshop},
    .let_off = {bathroom, counter},
    .uses_let_off = {"kitchen counter", "refrigerator", "bathroom", "sump pump"},
    .there = "120 V receptacle circuits up to 20 A",
    .what = "120 V receptacle circuits of a dwelling up to 20 A",
    .hangs_on = "its receptacles are in the dwelling, and not those of kitchen counter, bathroom or refrigerator",
    .no_breaker = "its breaker is of 20 A or less"};

// NEC 404.2(C): from memory which rooms. CE: every control location.
constexpr SwitchTable kNecSwitch{
    .rooms = {kitchen, counter, dining, living, bedroom, loft, hall, stair, laundry, bathroom, basement, house},
    .lighting_only = true,
    .not_in_conduit = true};
constexpr SwitchTable kCeSwitch{.rooms = {}, .lighting_only = false, .not_in_conduit = false};

bool is_nec(CodeBook const& book) { return book.family == Family::nec; }
} // namespace

ReceptacleScope const& gfci_scope(CodeBook const& book) { return is_nec(book) ? *kNecScope[book.column] : kTwentyAmps; }

std::span<GfciRow const> gfci_rows(CodeBook const& book) {
    if (is_nec(book)) return kNec;
    return kCe;
}

AfciTable const& afci_table(CodeBook const& book) { return is_nec(book) ? kNecArc[book.column] : kCeArc; }

SwitchTable const& switch_table(CodeBook const& book) { return is_nec(book) ? kNecSwitch : kCeSwitch; }

} // namespace legwork
