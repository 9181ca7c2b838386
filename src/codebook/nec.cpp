// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// NEC (NFPA 70) 2017, 2020, 2023. Sections of each number: sections.h of each edition.
#include "codebook/ampacity.h"
#include "codebook/nec_2023/sections.h"

namespace legwork {

namespace {
constexpr std::array kSmallWires{
    // 240.4(D)
    SmallWireRow{Gauge::awg14, Metal::copper, 15_A, Source::seen},
    SmallWireRow{Gauge::awg12, Metal::copper, 20_A, Source::seen},
    SmallWireRow{Gauge::awg10, Metal::copper, 30_A, Source::seen},
    SmallWireRow{Gauge::awg12, Metal::aluminium, 15_A, Source::seen},
    SmallWireRow{Gauge::awg10, Metal::aluminium, 25_A, Source::seen},
};

constexpr std::array kDwellingFeeders{
    // Table 310.12 (2017: Annex D, example D7)
    DwellingFeederRow{100_A, Gauge::awg4, Gauge::awg2, Source::seen},
    DwellingFeederRow{110_A, Gauge::awg3, Gauge::awg1, Source::seen},
    DwellingFeederRow{125_A, Gauge::awg2, Gauge::awg1_0, Source::seen},
    DwellingFeederRow{150_A, Gauge::awg1, Gauge::awg2_0, Source::seen},
    DwellingFeederRow{175_A, Gauge::awg1_0, Gauge::awg3_0, Source::seen},
    DwellingFeederRow{200_A, Gauge::awg2_0, Gauge::awg4_0, Source::seen},
    DwellingFeederRow{225_A, Gauge::awg3_0, std::nullopt, Source::seen},
    DwellingFeederRow{250_A, Gauge::awg4_0, std::nullopt, Source::seen},
};

constexpr std::array kReceptacles{
    // Table 210.21(B)(3)
    ReceptacleRow{15, 15, 15, Source::memory}, ReceptacleRow{20, 15, 20, Source::seen},
    ReceptacleRow{30, 30, 30, Source::memory}, ReceptacleRow{40, 40, 50, Source::seen},
    ReceptacleRow{50, 50, 50, Source::memory},
};

constexpr RangeDemand kRange{
    // Table 220.55 columns B and C with notes 1, 3 and 4; 210.19(A)(3)
    .base_va = {8000, Source::seen},
    .base_up_to_va = {12000, Source::seen},
    .excess_percent = {5, Source::seen},
    .per_kilowatt = true,
    .small_up_to_va = Figure{8750, Source::seen},
    .small_percent = Figure{80, Source::seen},
    .large_from_va = Figure{8750, Source::seen},
    .large_least_breaker = Figure{40, Source::seen},
};

constexpr RemarkingTable kRemarking{
    .white_as_hot_in_cable = {Remarking::allowed, Source::seen, "tape-white-as-hot"},
    .white_as_hot_in_conduit = {Remarking::never, Source::seen, "tape-white-as-hot/conduit"},
    .white_in_switch_loop = {Remarking::allowed, Source::seen, "tape-white-as-hot/switch-loop"},
    .large_from = Gauge::awg4,
    .small_as_neutral_in_cable = {Remarking::never, Source::seen, "tape-as-neutral"},
    .small_as_neutral_in_conduit = {Remarking::never, Source::seen, "tape-as-neutral"},
    .large_as_neutral = {Remarking::allowed, Source::seen, "tape-as-neutral/large"},
    .green = {Remarking::never, Source::seen, "tape-green"},
};

constexpr CodeBook nec(std::string_view edition, std::size_t column, SectionTable const& sections,
                       std::span<int const> breakers) {
    return {
        .edition = edition,
        .family = Family::nec,
        .column = column,
        .sections = sections,
        .ampacities = kAmpacities,
        .small_wires = kSmallWires,
        .dwelling_feeders = kDwellingFeeders,
        .standard_breakers = breakers,
        .standard_breakers_source = Source::seen,
        .terminals_above_100_a = 75,
        .cable_column = 60,
        .next_size_up_on_receptacles = false,
        .continuous_percent = {80, Source::seen},
        .presumes_continuous = false,
        .dwelling_lighting_continuous = false,
        .heating_breaker_percent = {100, Source::seen},
        .heating_wire_in_full = false,
        .motor_wire_percent = {125, Source::seen},
        .motor_breaker_percent = {250, Source::memory},
        .motor_breaker_most_percent = {400, Source::memory},
        .welder_breaker_percent = {200, Source::memory},
        .range = kRange,
        .receptacles = kReceptacles,
        .lone_receptacle = Source::seen,
        .remarking = kRemarking,
    };
}

constexpr std::array kBooks{
    nec("NEC 2017", 0, nec_2017::kSections, kStandardBreakers),
    nec("NEC 2020", 1, nec_2020::kSections, kStandardBreakers),
    nec("NEC 2023", 2, nec_2023::kSections, kStandardBreakers2023),
};
} // namespace

std::span<CodeBook const> nec_books() { return kBooks; }

} // namespace legwork
