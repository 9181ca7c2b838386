// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What NEC 2020 protects against ground faults.
#pragma once

#include "codebook/editions/nec/gfci.h"

#include <array>

namespace legwork::nec_2020 {

namespace gfci {
using namespace nec::gfci;
inline constexpr std::array kRows{
    kHotTub,         kPoolPump,  kHydromassage,   kBoatHoist,          kHeatedFloor, kCrawlSpaceLights,
    kDishwasher,     kSumpPump,  kVehicleCharger, kBathroom,           kOutdoor,     kGarage,
    kWorkshop,       kBoathouse, kCrawlSpace,     kUnfinishedBasement, kBasement,    kCounter,
    kPerhapsCounter, kSink,      kLaundry,        kOutdoorOutlets,     kHeatPump};
} // namespace gfci

inline constexpr GfciTable kGfci{.scope = nec::gfci::kAnyAmps, .rows = gfci::kRows};

} // namespace legwork::nec_2020
