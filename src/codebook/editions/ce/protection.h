// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Ground-fault and arc-fault protection, and a neutral at switches, as the CE Code asks for them: 26-704 as trade pages
// on the 2018 to 2024 editions tell it. What stands before its receptacle hides it: let off.
#pragma once

#include "codebook/protection_rows.h"

namespace legwork::ce {

namespace gfci {
using enum RoomPlace;
using Of = GfciRow::Of;
inline constexpr auto maybe = Asks::perhaps, yes = Asks::yes;

inline constexpr GfciRow kHotTub{.topic = "gfci-needed/hot-tub",
                                 .what = "hot tubs and spas",
                                 .of = Of::use,
                                 .uses = {"hot tub"},
                                 .asks = maybe,
                                 .hangs_on = "the unit is not marked as having it built in"};
// 86-306(2), since 2021: one that a vehicle is charged at.
inline constexpr GfciRow kVehicle{.topic = "gfci-needed/vehicle-charger",
                                  .what =
                                      "receptacles of 20 A to charge a vehicle, outdoors within 2.5 m of the ground",
                                  .places = {outdoor, dock},
                                  .uses = {"vehicle charger"},
                                  .asks = yes};
inline constexpr GfciRow kPoolPump{.topic = "gfci-needed/pool-pump",
                                   .what = "equipment of a pool within 3 m of its water",
                                   .of = Of::use,
                                   .uses = {"pool pump"},
                                   .asks = maybe,
                                   .hangs_on = "it stands so near, with no wall or fence between"};
inline constexpr GfciRow kHydromassage{.topic = "gfci-needed/hydromassage",
                                       .what = "hydromassage tubs",
                                       .of = Of::use,
                                       .uses = {"hydromassage tub"},
                                       .asks = maybe};
inline constexpr GfciRow kBathroom{.topic = "gfci-needed/bathroom",
                                   .what = "receptacles within 1.5 m of a basin, tub or shower",
                                   .places = {bathroom},
                                   .asks = yes,
                                   .general = true};
inline constexpr GfciRow kOutdoor{.topic = "gfci-needed/outdoor",
                                  .what = "outdoor receptacles within 2.5 m of the ground",
                                  .places = {outdoor, dock},
                                  .asks = yes};
inline constexpr GfciRow kSink{.topic = "gfci-needed/sink",
                               .what = "receptacles within 1.5 m of a sink",
                               .places = {sink},
                               .asks = yes,
                               .general = true};
inline constexpr GfciRow kCounter{.topic = "gfci-needed/sink",
                                  .what = "receptacles within 1.5 m of a sink",
                                  .places = {counter},
                                  .asks = maybe,
                                  .hangs_on = "any of these is that near",
                                  .general = true};
inline constexpr GfciRow kKitchen{.topic = "gfci-needed/sink",
                                  .what = "receptacles within 1.5 m of a sink",
                                  .places = {kitchen},
                                  .asks = maybe,
                                  .hangs_on = "any of these is that near",
                                  .general = true,
                                  .unless_counter_elsewhere = true};
inline constexpr GfciRow kHeatingNearTub{.topic = "gfci-needed/heating-near-tub",
                                         .what = "heaters, and their controls, near a tub, shower or basin",
                                         .of = Of::use,
                                         .places = {bathroom},
                                         .uses = {"baseboard", "heating", "floor heating"},
                                         .asks = maybe,
                                         .hangs_on = "one of these is near"};

inline constexpr ReceptacleScope kTwentyAmps{.two_pole = false, .most = 20_A};
inline constexpr std::array kRows{kHotTub, kPoolPump, kHydromassage, kBathroom,      kOutdoor,
                                  kSink,   kCounter,  kKitchen,      kHeatingNearTub};
inline constexpr GfciTable kTable2018{.scope = kTwentyAmps, .rows = kRows};
inline constexpr std::array kRows2021{kHotTub,  kPoolPump, kHydromassage, kVehicle, kBathroom,
                                      kOutdoor, kSink,     kCounter,      kKitchen, kHeatingNearTub};
inline constexpr GfciTable kTable{.scope = kTwentyAmps, .rows = kRows2021};
} // namespace gfci

namespace arc {
using enum RoomPlace;
// Every receptacle circuit of the dwelling unit but those of kitchen counter, refrigerator, bathroom basin and a sump
// pump of its own. Garages and workshops: from memory.
inline constexpr AfciTable kTable{
    .least_amps = 0,
    .most_amps = 20,
    .receptacles_only = true,
    .rooms = {kitchen, dining, living, bedroom, loft, hall, stair, closet, laundry, utility, basement,
              unfinished_basement, finished_basement},
    .perhaps = {house, attic, crawl_space, garage, workshop},
    .let_off = {bathroom, counter},
    .uses_let_off = {"kitchen counter", "refrigerator", "bathroom", "sump pump"},
    .there = "120 V receptacle circuits up to 20 A",
    .what = "120 V receptacle circuits of a dwelling up to 20 A",
    .hangs_on = "its receptacles are in the dwelling, and not those of kitchen counter, bathroom or refrigerator",
    .no_breaker = "its breaker is of 20 A or less"};
} // namespace arc

// Every control location.
inline constexpr SwitchTable kSwitches{.rooms = {}, .lighting_only = false, .not_in_conduit = false};

} // namespace legwork::ce
