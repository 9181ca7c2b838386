// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What NEC 2020 protects against ground faults.
#pragma once

#include "codebook/editions/nec/gfci.h"

#include <array>

namespace legwork::nec_2020 {

namespace gfci {
using namespace nec::gfci;
// The book as printed lets nobody off.
inline constexpr std::string_view kNotAdopted =
    "the amendment of 2022 (listed heating and cooling let off until 2026-09-01) is not adopted there";
inline constexpr std::string_view kOutdoorsNotAdopted = "the unit stands outdoors, and the amendment of 2022, which "
                                                        "lets listed heating and cooling off until 2026-09-01, is "
                                                        "not adopted there";
inline constexpr std::array kRows{kHotTub,
                                  kPoolPump,
                                  kHydromassage,
                                  kBoatHoist,
                                  kHeatedFloor,
                                  kHeatedFloorCovering,
                                  kCrawlSpaceLights,
                                  kDishwasher,
                                  kSumpPump,
                                  kVehicleCharger,
                                  kBathroom,
                                  kOutdoor,
                                  kGarage,
                                  kWorkshop,
                                  kBoathouse,
                                  kCrawlSpace,
                                  kUnfinishedBasement,
                                  kBasement,
                                  kCounter,
                                  kPerhapsCounter,
                                  kSink,
                                  kLaundry,
                                  until(kOutdoorOutlets, kHvacRelief, kNotAdopted),
                                  until(kHeatPump, kHvacRelief, kOutdoorsNotAdopted)};
} // namespace gfci

inline constexpr GfciTable kGfci{.scope = nec::gfci::kAnyAmps, .rows = gfci::kRows};

} // namespace legwork::nec_2020
