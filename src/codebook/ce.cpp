// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// CE Code (CSA C22.1) 2018, 2021, 2024. Sections of each number: sections.h of each edition.
#include "codebook/ampacity.h"
#include "codebook/ce_2024/sections.h"

namespace legwork {

namespace {
constexpr std::array kSmallWires{
    // 14-104(2)
    SmallWireRow{Gauge::awg14, Metal::copper, 15_A, Source::seen},
    SmallWireRow{Gauge::awg12, Metal::copper, 20_A, Source::seen},
    SmallWireRow{Gauge::awg10, Metal::copper, 30_A, Source::seen},
    SmallWireRow{Gauge::awg12, Metal::aluminium, 15_A, Source::memory},
    SmallWireRow{Gauge::awg10, Metal::aluminium, 25_A, Source::memory},
};

constexpr std::array kDwellingFeeders{
    // Table 39
    DwellingFeederRow{60_A, Gauge::awg6, std::nullopt, Source::memory},
    DwellingFeederRow{100_A, std::nullopt, Gauge::awg2, Source::memory},
    DwellingFeederRow{200_A, Gauge::awg2_0, Gauge::awg4_0, Source::memory},
};

constexpr std::array kReceptacles{
    ReceptacleRow{15, 15, 15, Source::memory}, ReceptacleRow{20, 20, 20, Source::memory},
    ReceptacleRow{30, 30, 30, Source::memory}, ReceptacleRow{40, 50, 50, Source::memory},
    ReceptacleRow{50, 50, 50, Source::memory},
};

constexpr RangeDemand kRange{
    // 8-300
    .base_va = {8000, Source::seen},
    .base_up_to_va = {12000, Source::seen},
    .excess_percent = {40, Source::seen},
    .per_kilowatt = false,
    .small_up_to_va = {},
    .small_percent = {},
    .large_from_va = {},
    .large_least_breaker = {},
};

constexpr RemarkingTable kRemarking{
    .white_as_hot_in_cable = {Remarking::allowed, Source::memory, "tape-white-as-hot"},
    .white_as_hot_in_conduit = {Remarking::never, Source::seen, "tape-white-as-hot/conduit"},
    .white_in_switch_loop = {Remarking::not_asked, Source::seen, "tape-white-as-hot/switch-loop"},
    .large_from = Gauge::awg1, // larger than No. 2
    .small_as_neutral_in_cable = {Remarking::disputed, Source::seen, "tape-as-neutral"},
    .small_as_neutral_in_conduit = {Remarking::never, Source::seen, "tape-as-neutral/conduit"},
    .large_as_neutral = {Remarking::allowed, Source::seen, "tape-as-neutral/large"},
    .green = {Remarking::never, Source::seen, "tape-green"},
};

constexpr CodeBook ce(std::string_view edition, std::size_t column, SectionTable const& sections) {
    return {
        .edition = edition,
        .family = Family::ce,
        .column = column,
        .sections = sections,
        .ampacities = kAmpacities,
        .small_wires = kSmallWires,
        .dwelling_feeders = kDwellingFeeders,
        .standard_breakers = kStandardBreakers,
        .standard_breakers_source = Source::memory,
        .terminals_above_100_a = 75,
        .cable_column = {},
        .next_size_up_on_receptacles = true,
        .continuous_percent = {80, Source::seen},
        .presumes_continuous = true,
        .dwelling_lighting_continuous = true,
        .heating_breaker_percent = {125, Source::seen},
        .heating_wire_in_full = true,
        .motor_wire_percent = {125, Source::seen},
        .motor_breaker_percent = {250, Source::memory},
        .motor_breaker_most_percent = {400, Source::memory},
        .welder_breaker_percent = {200, Source::memory},
        .range = kRange,
        .receptacles = kReceptacles,
        .lone_receptacle = {},
        .remarking = kRemarking,
    };
}

constexpr std::array kBooks{ce("CE 2018", 0, ce_2018::kSections), ce("CE 2021", 1, ce_2021::kSections),
                            ce("CE 2024", 2, ce_2024::kSections)};
} // namespace

std::span<CodeBook const> ce_books() { return kBooks; }

} // namespace legwork
