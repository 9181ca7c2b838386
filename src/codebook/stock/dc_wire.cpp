// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/dc_wire.h"

#include "codebook/stock/wire_data.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct FuseRow {
    Gauge gauge;
    DcFuse fuse;
};
constexpr std::array kFuses{
    FuseRow{Gauge::awg24, {2_A, Source::practice}},      FuseRow{Gauge::awg23, {2_A, Source::practice}},
    FuseRow{Gauge::awg22, {3_A, Source::practice}},      FuseRow{Gauge::awg20, {5_A, Source::practice}},
    FuseRow{Gauge::awg18, {7_A, Source::memory, false}}, FuseRow{Gauge::awg16, {10_A, Source::memory, false}},
    FuseRow{Gauge::awg14, {15_A, Source::seen}},         FuseRow{Gauge::awg12, {20_A, Source::seen}},
    FuseRow{Gauge::awg10, {30_A, Source::seen}},         FuseRow{Gauge::awg8, {40_A, Source::seen}},
    FuseRow{Gauge::awg6, {55_A, Source::seen}},          FuseRow{Gauge::awg4, {70_A, Source::seen}},
    FuseRow{Gauge::awg3, {85_A, Source::seen}},          FuseRow{Gauge::awg2, {95_A, Source::seen}},
    FuseRow{Gauge::awg1, {110_A, Source::seen}},         FuseRow{Gauge::awg1_0, {125_A, Source::seen}},
    FuseRow{Gauge::awg2_0, {145_A, Source::seen}},       FuseRow{Gauge::awg3_0, {165_A, Source::seen}},
    FuseRow{Gauge::awg4_0, {195_A, Source::seen}},
};
constexpr double kOhmMetres20 = 17.241e-9, kPerKelvin = 0.00393, kStrands = 1.02;
} // namespace

std::optional<DcFuse> largest_dc_fuse(Gauge gauge) {
    auto const row = std::ranges::find(kFuses, gauge, &FuseRow::gauge);
    return row == kFuses.end() ? std::nullopt : std::optional(row->fuse);
}

double dc_ohms_per_km(Gauge gauge) {
    if (auto const listed = ohms_per_km_75(gauge, Metal::copper, Stranding::stranded)) return *listed;
    double const square_metres = area_mm2(gauge) * 1e-6;
    return kOhmMetres20 / square_metres * 1000 * (1 + kPerKelvin * 55) * kStrands;
}

} // namespace legwork
