// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What NEC 2017 protects against ground faults.
#pragma once

#include "codebook/editions/nec/gfci.h"

#include <array>

namespace legwork::nec_2017 {

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
                                  up_to(50_A, kVehicleCharger),
                                  kBathroom,
                                  kOutdoor,
                                  kGarage,
                                  kWorkshop,
                                  kBoathouse,
                                  kCrawlSpace,
                                  kUnfinishedBasement,
                                  kPerhapsUnfinishedBasement,
                                  kCounter,
                                  kPerhapsCounter,
                                  kSink,
                                  kLaundry};
} // namespace gfci

inline constexpr GfciTable kGfci{.scope = nec::gfci::kTwentyAmps, .rows = gfci::kRows};

} // namespace legwork::nec_2017
