// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

#include "units/gauge.h"

#include <optional>
#include <string_view>

namespace legwork {

// A building cable by its name, G/N: wire size and insulated conductors besides the ground.
struct PowerCable {
    Gauge gauge; // 14 and larger
    int insulated = 0;
};

// "12/3", "1/0/3" (split at the last "/"): 2 to 4 conductors of a gauge that branch and feeder cables are made in;
// nothing for any other text.
constexpr std::optional<PowerCable> power_cable(std::string_view name) {
    auto const slash = name.rfind('/');
    if (slash == std::string_view::npos) return std::nullopt;
    auto const gauge = gauge_named(name.substr(0, slash));
    auto const count = name.substr(slash + 1);
    if (!gauge || *gauge < Gauge::awg14 || count.size() != 1 || count[0] < '2' || count[0] > '4') return std::nullopt;
    return PowerCable{*gauge, count[0] - '0'};
}

static_assert(power_cable("1/0/3")->insulated == 3 && !power_cable("16/4") && !power_cable("12/5"));

} // namespace legwork
