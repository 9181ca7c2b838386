// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "codebook/stock/usual.h"

#include "codebook/dwelling.h"

#include <algorithm>
#include <array>

namespace legwork {

namespace {
struct HouseholdUse {
    std::string_view use;
    Household part;
    std::string_view words, topic;
};
constexpr std::array kHousehold{
    HouseholdUse{"kitchen counter", Household::kitchen, "a dwelling's kitchen counter receptacles are on",
                 "need-kitchen"},
    HouseholdUse{"laundry", Household::laundry, "a dwelling's laundry receptacles are on", "need-laundry"},
    HouseholdUse{"bathroom", Household::bath, "a dwelling's bathroom receptacles are on", "need-bath"},
    HouseholdUse{"garage", Household::garage, "a dwelling's garage receptacles are on", "need-garage"},
};

// Common practice, no source, but for the 15 A of split counter receptacles (CE 26-722(d), as trade pages tell it). 40
// A carries a range of up to 16 kW under both codes (9600 VA of branch demand at 240 V).
struct Custom {
    std::string_view use;
    int poles, nec, ce; // A
    std::string_view words;
};
constexpr std::array kCustoms{
    Custom{"lighting", 1, 15, 15, "lights are mostly on"},
    Custom{"receptacles", 1, 15, 15, "receptacles of a room are mostly on"},
    Custom{"outdoor", 1, 15, 15, "outdoor receptacles are mostly on"},
    Custom{"workshop", 1, 20, 15, "a workshop's receptacles are mostly on"},
    Custom{"kitchen counter", 1, 20, 15, "kitchen counter receptacles are mostly on"},
    Custom{"laundry", 1, 20, 15, "a laundry's receptacles are mostly on"},
    Custom{"bathroom", 1, 20, 15, "a bathroom's receptacles are mostly on"},
    Custom{"garage", 1, 20, 15, "a garage's receptacles are mostly on"},
    Custom{"refrigerator", 1, 15, 15, "a refrigerator is mostly on"},
    Custom{"freezer", 1, 15, 15, "a freezer is mostly on"},
    Custom{"dishwasher", 1, 15, 15, "a dishwasher is mostly on"},
    Custom{"disposer", 1, 15, 15, "a disposer is mostly on"},
    Custom{"microwave", 1, 20, 15, "a microwave oven is mostly on"},
    Custom{"bath fan", 1, 15, 15, "a fan is mostly on"},
    Custom{"smoke alarms", 1, 15, 15, "smoke alarms are mostly on"},
    Custom{"network", 1, 15, 15, "network equipment is mostly on"},
    Custom{"power supply", 1, 15, 15, "a power supply is mostly on"},
    Custom{"door opener", 1, 15, 15, "a door opener is mostly on"},
    Custom{"attic fan", 1, 15, 15, "a fan is mostly on"},
    Custom{"air handler", 1, 15, 15, "an air handler's blower and controls are mostly on"},
    Custom{"furnace", 1, 15, 15, "a furnace's blower and controls are mostly on"},
    Custom{"boiler", 1, 15, 15, "a boiler's pumps and controls are mostly on"},
    Custom{"sump pump", 1, 15, 15, "a sump pump is mostly on"},
    Custom{"central vacuum", 1, 20, 15, "a central vacuum is mostly on"},
    Custom{"range", 2, 40, 40, "a range of up to 16 kW is mostly on"},
    Custom{"dryer", 2, 30, 30, "a dryer is mostly on"},
};
} // namespace

std::optional<UsualCircuit> household_circuit(CodeBook const& book, std::string_view use, int poles, bool split) {
    auto const at = std::ranges::find(kHousehold, use, &HouseholdUse::use);
    if (at == kHousehold.end() || poles != 1) return std::nullopt;
    if (book.household.of(at->part).is_unread()) return std::nullopt;
    auto amps = household_circuits(book, at->part).amps;
    auto topic = at->topic;
    if (!amps && !split && at->part == Household::kitchen && !book.counter.is_unread()) {
        amps = counter_circuit(book).unsplit_amps;
        topic = "need-kitchen/split";
    }
    if (!amps) return std::nullopt;
    return UsualCircuit{Amps{amps->value * 1000}, at->words, amps->source, topic};
}

std::optional<UsualCircuit> customary_circuit(CodeBook const& book, std::string_view use, int poles) {
    auto const at = std::ranges::find_if(kCustoms, [&](Custom const& c) { return c.use == use && c.poles == poles; });
    if (at == kCustoms.end()) return std::nullopt;
    int const amps = book.family == Family::nec ? at->nec : at->ce;
    return UsualCircuit{Amps{amps * 1000}, at->words, Source::practice, {}};
}

std::string_view usual_receptacle(std::string_view use, int poles) {
    Use const* known = use_named(use);
    return known && poles == 2 ? known->usual_receptacle : std::string_view();
}

Amps least_proposed_breaker() { return 15_A; }

} // namespace legwork
