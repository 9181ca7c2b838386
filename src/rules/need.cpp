// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need_rules.h"
#include "rules/themes.h"

namespace legwork {

namespace {
constexpr Rule kRules[] = {
    {.id = "need-kitchen",
     .asks = "The receptacles at a dwelling's kitchen counter have two circuits at least.",
     .why = "Kettle, toaster and coffee maker draw 1500 W each, and two of them run at breakfast. On one circuit they "
            "trip it, and people reach for an extension cord.",
     .remedy = "Run two circuits to the counter, as two cables or as a multiwire pair. Where they are there under "
               "another name, write `use = \"kitchen counter\"` on each.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_kitchen},
    {.id = "need-laundry",
     .asks = "The laundry's receptacles have a circuit of their own.",
     .why = "A washing machine's motor and heater fill a circuit by themselves. Asked where a laundry is shown: a "
            "circuit, a room, or a dryer; a small house without one is not asked for it.",
     .remedy = "Run a circuit to the washing machine that feeds nothing else; `use = \"laundry\"` says which it is.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_laundry},
    {.id = "need-bath",
     .asks = "The bathroom's receptacle by the basin is on a circuit that can take a hair dryer.",
     .why =
         "A hair dryer draws 1500 W and more. The NEC gives bathroom receptacles a 20 A circuit with nothing else on "
         "it, unless it serves one bathroom only; the CE Code asks for the receptacle and leaves the circuit open.",
     .remedy = "Run the circuit, or name the bathroom in the name of the circuit that feeds its receptacle.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_bath},
    {.id = "need-garage",
     .asks = "A garage has a circuit for its receptacles.",
     .why = "Tools, a freezer, a battery charger: what is plugged in there is large, and should not put the lights of "
            "the house out. Asked where the job shows a garage.",
     .remedy = "Run a circuit to the garage's receptacles; `use = \"garage\"` says which it is.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_garage},
    {.id = "need-outdoor",
     .asks = "A dwelling has a receptacle outdoors.",
     .why =
         "Without one, mowers and heaters hang on a cord through a door or a window, without ground-fault protection.",
     .remedy = "Put a receptacle where it can be reached from the ground, front and back under the NEC, and say in its "
               "circuit's name or `use` that it is outdoors.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_outdoor},
    {.id = "need-kitchen-share",
     .asks = "A kitchen counter circuit feeds no more than the code lets it.",
     .why = "What hangs on it besides takes from what the counter needs. The CE Code lets two counter receptacles be "
            "on a circuit and nothing else; the NEC lets the circuit serve all receptacles of kitchen, dining room and "
            "pantry, but no lights and nothing fastened in place.",
     .remedy =
         "Move lights, dishwasher, disposer and the like to other circuits; split the counter over more circuits.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_kitchen_share},
    {.id = "need-dedicated",
     .asks = "What wants a circuit of its own shares it with nothing.",
     .why = "A furnace whose breaker trips for a vacuum cleaner freezes the house, and a charger or a water heater "
            "leaves no room for anything beside it. Told only where a circuit's name or its number of outlets shows "
            "that it shares.",
     .remedy = "Give it its own circuit; or correct the name if nothing else hangs on it.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_dedicated},
    {.id = "need-neutral-at-switch",
     .asks = "In a dwelling's new work, a neutral is in the box of each switch.",
     .why = "Timers, motion sensors and dimmers live on a trickle of current. Where the box has no neutral they borrow "
            "the ground wire, or somebody pulls a neutral from another circuit.",
     .remedy = "Run a three-wire cable from the light to the switch and cap the neutral there.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = need_neutral_at_switch},
};
} // namespace

std::span<Rule const> need_rules() { return kRules; }

} // namespace legwork
