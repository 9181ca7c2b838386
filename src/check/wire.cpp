// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "check/wire.h"

#include "check/themes.h"

namespace legwork {

namespace {
// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {"wire-breaker-fits", "The breaker is no larger than the smallest wire of the whole run allows.",
     "A breaker protects the wire, not the thing plugged in. Too large a breaker lets a wire in the wall get hot for "
     "hours without tripping, and one thin piece behind a box is enough. Copper of 14 AWG stands on 15 A, 12 AWG on "
     "20 A, 10 AWG on 30 A. Motors and air conditioners go by their own rules and nameplates (mca, mop), and the CE "
     "Code lets fixed heating stand on the next breaker at or above 125 % of its wire.",
     "Fit the smaller breaker, or pull the larger wire all the way to the last box.", wire_breaker_fits},
    {"wire-load-fits", "What the circuit draws is within its breaker and its wire.",
     "A load above the breaker trips it on the coldest evening; a load above the wire heats it. A range is reckoned at "
     "its branch demand, since all its elements never run together for long, a motor's wire at 125 % of its current.",
     "Give the circuit a larger breaker and wire together, or move part of the load to another circuit.",
     wire_load_fits},
    {"wire-continuous", "A load that runs for three hours or more takes at most 80 % of breaker and wire.",
     "A breaker in a warm panel trips below its rating after hours of full load, and its terminals age. Storage water "
     "heaters, heating and vehicle chargers are continuous by use; the CE Code presumes it of every load that is not "
     "shown to rest.",
     "Go one breaker and wire size up, or say continuous = false for a load that never runs for hours.",
     wire_continuous},
    {"wire-outlet", "Each receptacle fits the volts, the poles and the amperes of its circuit.",
     "The shape of a receptacle promises volts and amperes. A 120 V type on two poles gives 240 V to whatever is "
     "plugged in; one rated below its breaker burns before the breaker trips.",
     "Change the receptacle, or the breaker and the number of poles, until shape and circuit agree.", wire_outlet},
    {"wire-conductors", "A two-pole circuit that uses a neutral has one in its cable.",
     "Ranges, dryers and 14- types take 240 V for heat and 120 V for timers and lights. Without a neutral the 120 V "
     "part comes back over the ground, and the frame that people touch is live.",
     "Pull a cable with three insulated conductors and ground (10/3 in place of 10/2).", wire_conductors},
};
} // namespace

std::span<Rule const> wire_rules() { return kRules; }

} // namespace legwork
