// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Ground-fault protection as the NEC asks for it: each edition picks its rows. 210.8(A) as its 2014 to 2023 lists are
// told on trade pages; the others as texts of the editions have them, or trade pages (sections.h). Things that a job
// does not say make a "perhaps". An edition lists uses before places: of two equally grave rows the first speaks.
#pragma once

#include "codebook/protection_rows.h"

namespace legwork::nec::gfci {

using enum RoomPlace;
using Of = GfciRow::Of;
using Elsewhere = GfciRow::Elsewhere;
inline constexpr auto maybe = Asks::perhaps, yes = Asks::yes;

inline constexpr GfciRow kHotTub{.topic = "gfci-needed/hot-tub",
                                 .what = "hot tubs and spas",
                                 .of = Of::use,
                                 .uses = {"hot tub"},
                                 .asks = maybe,
                                 .hangs_on = "the unit is not marked as having it built in"};
inline constexpr GfciRow kPoolPump{.topic = "gfci-needed/pool-pump",
                                   .what = "pool pumps, wired in or plugged in",
                                   .of = Of::use,
                                   .uses = {"pool pump"},
                                   .asks = yes,
                                   .most = 60_A};
inline constexpr GfciRow kHydromassage{.topic = "gfci-needed/hydromassage",
                                       .what = "hydromassage tubs",
                                       .of = Of::use,
                                       .uses = {"hydromassage tub"},
                                       .asks = yes};
inline constexpr GfciRow kBoatHoist{
    .topic = "gfci-needed/boat-hoist", .what = "boat hoists", .of = Of::wired_in, .places = {boat_hoist}, .asks = yes};
inline constexpr GfciRow kHeatedFloor{.topic = "gfci-needed/heated-floor",
                                      .what = "heated floors in bathrooms and kitchens",
                                      .of = Of::use,
                                      .places = {bathroom, kitchen},
                                      .uses = {"floor heating"},
                                      .asks = yes};
inline constexpr GfciRow kHeatedFloorCovering{.topic = "gfci-needed/heated-floor-covering",
                                              .what = "heated floors of any room",
                                              .of = Of::use,
                                              .uses = {"floor heating"},
                                              .asks = maybe,
                                              .hangs_on = "the cable or panel lies under a floor covering"};
inline constexpr GfciRow kCrawlSpaceLights{.topic = "gfci-needed/crawl-space-lights",
                                           .what = "lights in crawl spaces",
                                           .of = Of::lighting,
                                           .places = {crawl_space},
                                           .asks = yes};
inline constexpr GfciRow kDishwasher{.topic = "gfci-needed/appliance",
                                     .what = "dishwashers, wired in or plugged in",
                                     .of = Of::use,
                                     .uses = {"dishwasher"},
                                     .asks = yes,
                                     .elsewhere = Elsewhere::perhaps};
inline constexpr GfciRow kSumpPump{.topic = "gfci-needed/appliance",
                                   .what = "sump pumps, wired in or plugged in",
                                   .of = Of::use,
                                   .uses = {"sump pump"},
                                   .asks = yes};
inline constexpr GfciRow kHeatAppliances{.topic = "gfci-needed/appliance",
                                         .what =
                                             "ranges, ovens, cooktops, dryers and microwaves, wired in or plugged in",
                                         .of = Of::use,
                                         .uses = {"range", "oven", "cooktop", "dryer", "microwave"},
                                         .asks = yes,
                                         .most = 60_A};
inline constexpr GfciRow kVehicleCharger{.topic = "gfci-needed/vehicle-charger",
                                         .what = "receptacles for charging vehicles",
                                         .uses = {"vehicle charger"},
                                         .asks = yes,
                                         .any_volts = true};
inline constexpr GfciRow kBathroom{
    .topic = "gfci-needed/bathroom", .what = "receptacles in bathrooms", .places = {bathroom}, .asks = yes};
inline constexpr GfciRow kOutdoor{
    .topic = "gfci-needed/outdoor", .what = "outdoor receptacles", .places = {outdoor, dock, eaves}, .asks = yes};
inline constexpr GfciRow kGarage{.topic = "gfci-needed/garage",
                                 .what = "receptacles in garages and outbuildings",
                                 .places = {garage, outbuilding},
                                 .asks = yes};
inline constexpr GfciRow kWorkshop{.topic = "gfci-needed/garage",
                                   .what = "receptacles in garages and outbuildings",
                                   .places = {workshop},
                                   .asks = maybe,
                                   .hangs_on = "the workshop is in one"};
inline constexpr GfciRow kBoathouse{
    .topic = "gfci-needed/boathouse", .what = "receptacles in boathouses", .places = {boathouse}, .asks = yes};
inline constexpr GfciRow kCrawlSpace{
    .topic = "gfci-needed/crawl-space", .what = "receptacles in crawl spaces", .places = {crawl_space}, .asks = yes};
inline constexpr GfciRow kUnfinishedBasement{.topic = "gfci-needed/basement",
                                             .what = "receptacles in unfinished basements",
                                             .places = {unfinished_basement},
                                             .asks = yes};
inline constexpr GfciRow kPerhapsUnfinishedBasement{.topic = "gfci-needed/basement",
                                                    .what = "receptacles in unfinished basements",
                                                    .places = {basement},
                                                    .asks = maybe,
                                                    .hangs_on = "the basement is not finished"};
inline constexpr GfciRow kBasement{.topic = "gfci-needed/basement",
                                   .what = "receptacles in basements",
                                   .places = {basement, finished_basement},
                                   .asks = yes,
                                   .elsewhere = Elsewhere::perhaps};
inline constexpr GfciRow kCounter{.topic = "gfci-needed/kitchen",
                                  .what = "receptacles that serve a kitchen counter",
                                  .places = {counter},
                                  .asks = yes};
inline constexpr GfciRow kPerhapsCounter{.topic = "gfci-needed/kitchen",
                                         .what = "receptacles that serve a kitchen counter",
                                         .places = {kitchen},
                                         .asks = maybe,
                                         .hangs_on = "any of these does",
                                         .general = true,
                                         .unless_counter_elsewhere = true};
inline constexpr GfciRow kKitchen{
    .topic = "gfci-needed/kitchen", .what = "receptacles in kitchens", .places = {kitchen, counter}, .asks = yes};
inline constexpr GfciRow kSink{.topic = "gfci-needed/sink",
                               .what = "receptacles within 1.8 m (6 ft) of a sink",
                               .places = {sink},
                               .asks = yes,
                               .general = true};
inline constexpr GfciRow kLaundry{.topic = "gfci-needed/laundry",
                                  .what = "receptacles in laundry areas",
                                  .places = {laundry},
                                  .asks = yes,
                                  .elsewhere = Elsewhere::perhaps};
inline constexpr GfciRow kOutdoorOutlets{.topic = "gfci-needed/outdoor-outlets",
                                         .what = "outdoor outlets, what is wired in too",
                                         .of = Of::wired_in,
                                         .places = {outdoor, dock, eaves},
                                         .asks = yes,
                                         .elsewhere = Elsewhere::no,
                                         .most = 50_A};
inline constexpr GfciRow kHeatPump{.topic = "gfci-needed/outdoor-outlets",
                                   .what = "outdoor outlets, what is wired in too",
                                   .of = Of::wired_in,
                                   .uses = {"heat pump", "air conditioner"},
                                   .asks = maybe,
                                   .hangs_on = "the unit stands outdoors",
                                   .elsewhere = Elsewhere::no,
                                   .unless_indoors = true,
                                   .most = 50_A};
// The rule is of outdoor outlets at them; only of a garage does its floor decide too.
inline constexpr GfciRow kGarageOutlets{.topic = "gfci-needed/outdoor-outlets",
                                        .what = "outdoor outlets of garages, wired in too",
                                        .of = Of::wired_in,
                                        .places = {garage},
                                        .asks = maybe,
                                        .hangs_on = "the outlet is outdoors at it, and its floor is at or below the "
                                                    "ground outside",
                                        .elsewhere = Elsewhere::no,
                                        .most = 50_A};
inline constexpr GfciRow kOutbuildingOutlets{.topic = "gfci-needed/outdoor-outlets",
                                             .what = "outdoor outlets of outbuildings and boathouses, wired in too",
                                             .of = Of::wired_in,
                                             .places = {outbuilding, boathouse},
                                             .asks = maybe,
                                             .hangs_on = "the outlet is outdoors at it",
                                             .elsewhere = Elsewhere::no,
                                             .most = 50_A};

// Listed heating and cooling equipment is let off before that day.
constexpr GfciRow until(GfciRow row, Day day, std::string_view unless_adopted = {}) {
    row.until = day;
    row.unless_adopted = unless_adopted;
    return row;
}
constexpr GfciRow up_to(Amps most, GfciRow row) {
    row.most = most;
    return row;
}
// The day of 210.8(F) Exception No. 2: printed in 2023, of 2020 by an amendment of August 2022.
inline constexpr Day kHvacRelief{2026, 9, 1};

// 2017 speaks of 125 V, 15 A and 20 A; from 2020 on of 125 V to 250 V, whatever the amperes.
inline constexpr ReceptacleScope kTwentyAmps{.two_pole = false, .most = 20_A};
inline constexpr ReceptacleScope kAnyAmps{.two_pole = true, .most = {}};

} // namespace legwork::nec::gfci
