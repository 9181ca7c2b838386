// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What NEC 2023 protects against ground faults.
#pragma once

#include "codebook/editions/nec/gfci.h"

#include <array>

namespace legwork::nec_2023 {

namespace gfci {
using namespace nec::gfci;
inline constexpr std::array kRows{kHotTub,
                                  kPoolPump,
                                  kHydromassage,
                                  kBoatHoist,
                                  kHeatedFloor,
                                  kHeatedFloorCovering,
                                  kCrawlSpaceLights,
                                  kDishwasher,
                                  kSumpPump,
                                  kHeatAppliances,
                                  kVehicleCharger,
                                  kBathroom,
                                  kOutdoor,
                                  kGarage,
                                  kWorkshop,
                                  kBoathouse,
                                  kCrawlSpace,
                                  kUnfinishedBasement,
                                  kBasement,
                                  kKitchen,
                                  kSink,
                                  kLaundry,
                                  until(kOutdoorOutlets, kHvacRelief),
                                  until(kHeatPump, kHvacRelief),
                                  until(kGarageOutlets, kHvacRelief),
                                  until(kOutbuildingOutlets, kHvacRelief)};
} // namespace gfci

inline constexpr GfciTable kGfci{.scope = nec::gfci::kAnyAmps, .rows = gfci::kRows};

} // namespace legwork::nec_2023
