// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/wire.h"

#include "rules/themes.h"

namespace legwork {

namespace {
// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {.id = "wire-breaker-fits",
     .asks = "The breaker is no larger than the smallest wire of the whole run allows.",
     .why = "A breaker protects the wire, not the thing plugged in. Too large a breaker lets a wire in the wall get "
            "hot for hours without tripping, and one thin piece behind a box is enough. Copper of 14 AWG stands on 15 "
            "A, 12 AWG on 20 A, 10 AWG on 30 A. Motors and air conditioners go by their own rules and nameplates (mca, "
            "mop), and the CE Code lets fixed heating stand on the next breaker at or above 125 % of its wire.",
     .remedy = "Fit the smaller breaker, or pull the larger wire all the way to the last box.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = wire_breaker_fits},
    {.id = "wire-load-fits",
     .asks = "What the circuit draws is within its breaker and its wire.",
     .why = "A load above the breaker trips it on the coldest evening; a load above the wire heats it. A range is "
            "reckoned at its branch demand, since all its elements never run together for long, a motor's wire at 125 "
            "% of its current.",
     .remedy = "Give the circuit a larger breaker and wire together, or move part of the load to another circuit.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .find = wire_load_fits},
    {.id = "wire-continuous",
     .asks = "A load that runs for three hours or more takes at most 80 % of breaker and wire.",
     .why = "A breaker in a warm panel trips below its rating after hours of full load, and its terminals age. Storage "
            "water heaters, heating and vehicle chargers are continuous by use; the CE Code presumes it of every load "
            "that is not shown to rest.",
     .remedy = "Go one breaker and wire size up, or say continuous = false for a load that never runs for hours.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error, Grade::warning}},
     .find = wire_continuous},
    {.id = "wire-outlet",
     .asks = "Each receptacle fits the volts, the poles and the amperes of its circuit.",
     .why = "The shape of a receptacle promises volts and amperes. A 120 V type on two poles gives 240 V to whatever "
            "is plugged in; one rated below its breaker burns before the breaker trips.",
     .remedy = "Change the receptacle, or the breaker and the number of poles, until shape and circuit agree.",
     .gravity = {.nec = {Grade::error, Grade::error_on_new_work}, .ce = {Grade::error, Grade::error_on_new_work}},
     .accept =
         {Acceptance::Of::some,
          "One that fits neither the volts nor the poles cannot be accepted: what is plugged in is destroyed at once."},
     .find = wire_outlet},
    {.id = "wire-conductors",
     .asks = "A two-pole circuit that uses a neutral has one in its cable.",
     .why = "Ranges, dryers and 14- types take 240 V for heat and 120 V for timers and lights. Without a neutral the "
            "120 V part comes back over the ground, and the frame that people touch is live.",
     .remedy = "Pull a cable with three insulated conductors and ground (10/3 in place of 10/2).",
     .gravity = {.nec = {Grade::error_on_new_work, Grade::warning}, .ce = {Grade::error_on_new_work, Grade::warning}},
     .find = wire_conductors},
    {.id = "wire-breaker-size",
     .asks = "The breaker is of a size that breakers are made in.",
     .why = "Breakers are made in steps: 15 A, 20 A, 25 A, 30 A and so on. A number between them is mostly a slip of "
            "the pen or a fuse, and what is reckoned from it is wrong too.",
     .remedy = "Read the handle again. Above the ampacity of a wire the next standard size is often allowed; below its "
               "load it never is.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = wire_breaker_size},
    {.id = "wire-drop",
     .asks = "No more than 3 % of the voltage is lost in a feeder or a branch, and 5 % in both.",
     .why = "Long thin wires eat voltage: lamps dim when the kettle starts, motors and compressors run hot, heaters "
            "give less than they say. The loss is current times resistance, out and back, at 75 °C, with all of the "
            "load at the end of the run; where the load is not known, 80 % of the breaker. A pair is reckoned one "
            "circuit at a time. The NEC advises these limits, the CE Code demands them; for lighting and general-use "
            "circuits of a dwelling the CE Code has a table of greatest lengths as well (8-102(3)), which legwork does "
            "not have and does not use. What is lost ahead of the first panel is not known and not counted.",
     .remedy = "Pull the next larger wire, bring the panel nearer to the load, or write the real load.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::warning}},
     .find = wire_drop},
    {.id = "wire-smaller-downstream",
     .asks = "Where a smaller cable follows a larger one, the directory states the largest breaker.",
     .why = "Years later somebody opens the panel, sees 12 AWG on a 15 A breaker, and fits 20 A. Behind the first box "
            "lies 14 AWG that nobody sees. The directory is the one place where they will read of it.",
     .remedy = "Leave the line in the directory, or pull the larger wire all the way.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
     .find = wire_smaller_downstream},
    {.id = "wire-outlet-count",
     .asks = "A circuit whose load is not known has no more outlets than the code lets it.",
     .why = "Nobody knows what will be plugged in. With a dozen outlets on 15 A the breaker mostly holds; beyond that "
            "the CE Code wants the load known. The NEC sets no number in dwellings.",
     .remedy = "Reckon the load and write it down, or divide the outlets between two circuits.",
     .gravity = {.ce = {Grade::warning}},
     .find = wire_outlet_count},
};
} // namespace

std::span<Rule const> wire_rules() { return kRules; }

} // namespace legwork
