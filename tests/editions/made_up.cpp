// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The list of editions for these tests, in the place of codebook/editions/editions.cpp: those that are, NEC 2997, of
// which some aspects of rules were left out, NEC 2998, of which nobody has read a page, and NEC 2999, of which one was
// left out.
#include "made_up.h"

#include "codebook/editions/ce_2018/book.h"
#include "codebook/editions/ce_2021/book.h"
#include "codebook/editions/ce_2024/book.h"
#include "codebook/editions/checked_edition.h"
#include "codebook/editions/nec_2017/book.h"
#include "codebook/editions/nec_2020/book.h"

namespace made_up {

namespace nec_2997 {
constexpr auto kSectionRows = std::to_array<SectionRow>({
    {"mw-disconnect/tied-singles", how_read::unread},
    {"wire-conductors/four-wire", how_read::unread},
    {"wire-continuous/heating", how_read::unread},
    {"load-service/dryer", how_read::unread},
});
constexpr SectionTable kSections = same_as<nec_2023::kSections, kSectionRows>();
constexpr CodeBook kBook = as_nec_2023("NEC 2997", kSections, nec_2023::kAfci);
} // namespace nec_2997

namespace nec_2999 {
constexpr auto kSectionRows = std::to_array<SectionRow>({{"afci-needed", how_read::unread}});
constexpr SectionTable kSections = same_as<nec_2023::kSections, kSectionRows>();
constexpr CodeBook kBook = as_nec_2023("NEC 2999", kSections, how_read::unread);
} // namespace nec_2999

namespace nec_2998 {
using how_read::unread;

constexpr Figure not_read(Figure f) { return {f.value, unread}; }
template <class Row, std::size_t kSize>
constexpr std::array<Row, kSize> not_read(std::array<Row, kSize> rows) {
    for (Row& row : rows) row.source = unread;
    return rows;
}
constexpr RangeDemand not_read(RangeDemand const& r) {
    return {.base_va = {r.base_va.value, unread},
            .base_up_to_va = {r.base_up_to_va.value, unread},
            .excess_percent = {r.excess_percent.value, unread},
            .per_kilowatt = r.per_kilowatt,
            .small_up_to_va = {},
            .small_percent = {},
            .large_from_va = {},
            .large_least_breaker = {}};
}

constexpr std::array<SectionRow, 0> kSectionRows{};
constexpr SectionTable kSections = unread_but<kSectionRows>();
constexpr auto kSmallWires = not_read(nec::kSmallWires);
constexpr auto kDwellingFeeders = not_read(nec::kDwellingFeeders);
constexpr auto kReceptacles = not_read(nec::kReceptacles);
constexpr auto kRange = not_read(nec::kRange);
constexpr RemarkingTable kRemarking{
    .white_as_hot_in_cable = {Remarking::unread, unread, "tape-white-as-hot"},
    .white_as_hot_in_conduit = {Remarking::unread, unread, "tape-white-as-hot/conduit"},
    .white_in_switch_loop = {Remarking::unread, unread, "tape-white-as-hot/switch-loop"},
    .large_from = Gauge::awg4,
    .small_as_neutral_in_cable = {Remarking::unread, unread, "tape-as-neutral"},
    .small_as_neutral_in_conduit = {Remarking::unread, unread, "tape-as-neutral/conduit"},
    .large_as_neutral = {Remarking::unread, unread, "tape-as-neutral/large"},
    .green = {Remarking::unread, unread, "tape-green"},
};
constexpr BranchLimits kBranchLimits{};
constexpr CablePlaces kCablePlaces{
    .rows = {}, .wet_type = "UF", .burial = {.cable = {600, unread}, .conduit = {450, unread}, .circuit = {}}};
constexpr DropLimits kDropLimits{.part_percent = {3, unread},
                                 .total_percent = {5, unread},
                                 .unknown_percent = {80, Source::practice},
                                 .demanded = false,
                                 .dwelling_lengths = {}};
constexpr BackfeedTable kBackfeed{
    .bus_percent = {100, unread}, .dwelling_bus_percent = {100, unread}, .output_percent = {}, .all_breakers = {}};
constexpr GfciTable kGfci{.scope = nec::gfci::kAnyAmps, .rows = {}};
constexpr HouseholdTable kHousehold{
    .kitchen = unread, .laundry = unread, .utility = unread, .bath = unread, .garage = unread, .outdoor = unread};
constexpr OwnCircuitTable kOwnCircuits{};

constexpr CodeBook kBook{
    .edition = "NEC 2998",
    .family = Family::nec,
    .sections = kSections,
    .ampacities = kAmpacities,
    .ampacities_source = unread,
    .small_wires = kSmallWires,
    .dwelling_feeders = kDwellingFeeders,
    .standard_breakers = kStandardBreakers,
    .standard_breakers_source = unread,
    .terminals_above_100_a = 75,
    .cable_column = 60,
    .next_size_up_on_receptacles = false,
    .continuous_percent = {80, unread},
    .presumes_continuous = false,
    .dwelling_lighting_continuous = false,
    .heating_breaker_percent = {100, unread},
    .heating_wire_in_full = false,
    .heating_is_continuous = true,
    .motor_wire_percent = {125, unread},
    .motor_breaker_percent = {250, unread},
    .motor_breaker_most_percent = {400, unread},
    .welder_breaker_percent = {200, unread},
    .range = kRange,
    .receptacles = kReceptacles,
    .lone_receptacle = {},
    .branch_limits = kBranchLimits,
    .cable_places = kCablePlaces,
    .outlet_count = unread,
    .remarking = kRemarking,
    .drop_limits = kDropLimits,
    .demands = nec::kDemands,
    .backfeed = kBackfeed,
    .positions = unread,
    .outbuilding = unread,
    .gfci = kGfci,
    .afci = unread,
    .switches = unread,
    .household = kHousehold,
    .counter = unread,
    .own_circuits = kOwnCircuits,
    .demand_factors = unread,
};
} // namespace nec_2998

} // namespace made_up

namespace legwork {

std::span<CodeBook const* const> code_books() {
    static constexpr std::array kAll{
        checked<ce_2018::kBook>(),           checked<ce_2021::kBook>(),           checked<ce_2024::kBook>(),
        checked<nec_2017::kBook>(),          checked<nec_2020::kBook>(),          checked<nec_2023::kBook>(),
        checked<made_up::nec_2997::kBook>(), checked<made_up::nec_2998::kBook>(), checked<made_up::nec_2999::kBook>(),
    };
    return kAll;
}

} // namespace legwork
