// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "panel/feeds.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace legwork {

namespace {
struct KindRow {
    SupplyKind kind;
    std::string_view name;
    Volts to_neutral, between;
    int phase;
};
constexpr std::array kKinds{
    KindRow{SupplyKind::split_120_240, "120/240", 120_V, 240_V, 180},
    KindRow{SupplyKind::wye_120_208, "120/208", 120_V, 208_V, 120},
    KindRow{SupplyKind::bridged_120, "120 on both legs", 120_V, 0_V, 0},
    KindRow{SupplyKind::one_leg_120, "120 on one leg", 120_V, 0_V, 0},
    KindRow{SupplyKind::dc_12, "12 V DC", 12_V, 0_V, 0},
    KindRow{SupplyKind::dc_24, "24 V DC", 24_V, 0_V, 0},
    KindRow{SupplyKind::dc_48, "48 V DC", 48_V, 0_V, 0},
};
KindRow const& row(SupplyKind kind) { return kKinds[static_cast<std::size_t>(kind)]; }

Feed feed_of(typed::Supply const& s) { return {s.name, s.kind, s.leg, s.amps, s.off}; }

// A sub-panel's own supply may only take hots away: a 120 V feeder has one, whatever the source.
void narrow(Feed& feed, typed::Supply const& own) {
    if (own.kind == SupplyKind::one_leg_120) {
        feed.kind = own.kind;
        feed.leg = own.leg;
    } else if (own.kind == SupplyKind::bridged_120 && has_two_hots(feed.kind)) {
        feed.kind = own.kind; // a source of one leg keeps its leg
    }
}
} // namespace

std::vector<Feed> feeds(typed::Job const& job, typed::Panel const& panel) {
    std::vector<Feed> found;
    typed::Panel const* above = panel.feeder ? panel_of(job, panel.feeder->panel) : nullptr;
    if (above && !has_power_supply(job, panel)) {
        found = feeds(job, *above); // the reader refuses cycles
        if (panel.supply)
            for (Feed& f : found) narrow(f, *panel.supply);
        return found;
    }
    for (std::string const& n : panel.supplies)
        if (typed::Supply const* s = supply_of(job, n)) found.push_back(feed_of(*s));
    if (panel.supply) found.push_back(feed_of(*panel.supply));
    return found;
}

bool has_power_supply(typed::Job const& job, typed::Panel const& panel) {
    typed::Panel const* above = panel.feeder ? panel_of(job, panel.feeder->panel) : nullptr;
    if (!above || !panel.supply || !is_dc(panel.supply->kind)) return false;
    auto const from = feeds(job, *above);
    return !from.empty() && !is_dc(from.front().kind);
}

bool is_dc(SupplyKind kind) { return kind >= SupplyKind::dc_12; }
bool has_two_hots(SupplyKind kind) { return row(kind).between > 0_V; }
Volts volts_to_neutral(SupplyKind kind) { return row(kind).to_neutral; }
Volts volts_between_legs(SupplyKind kind) { return row(kind).between; }
int phase_degrees(SupplyKind kind) { return row(kind).phase; }

bool is_wye(std::vector<Feed> const& feeds) {
    return std::ranges::any_of(feeds, [](Feed const& f) { return f.kind == SupplyKind::wye_120_208; });
}

bool energizes(Feed const& feed, Leg leg) { return feed.kind != SupplyKind::one_leg_120 || feed.leg == leg; }

bool is_live(std::vector<Feed> const& feeds, Layout const& layout, int space) {
    return !layout.is_dead(space) &&
           std::ranges::any_of(feeds, [&](Feed const& f) { return energizes(f, layout.leg(space)); });
}

std::string_view name(SupplyKind kind) { return row(kind).name; }

double neutral_amps(double leg_a, double leg_b, int phase_degrees) {
    double const angle = phase_degrees * std::numbers::pi / 180.0;
    double const square = leg_a * leg_a + leg_b * leg_b + 2.0 * leg_a * leg_b * std::cos(angle);
    return std::sqrt(std::max(0.0, square));
}

} // namespace legwork
