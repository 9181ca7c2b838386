// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/need_rules.h"
#include "rules/themes.h"

namespace legwork {

namespace {
constexpr Rule kRules[] = {
    {"need-kitchen", "The receptacles at a dwelling's kitchen counter have two circuits at least.",
     "Kettle, toaster and coffee maker draw 1500 W each, and two of them run at breakfast. On one circuit they trip "
     "it, "
     "and people reach for an extension cord.",
     "Run two circuits to the counter, as two cables or as a multiwire pair. Where they are there under another name, "
     "write `use = \"kitchen counter\"` on each.",
     need_kitchen},
    {"need-laundry", "The laundry's receptacles have a circuit of their own.",
     "A washing machine's motor and heater fill a circuit by themselves. Asked where a laundry is shown: a circuit, a "
     "room, or a dryer; a small house without one is not asked for it.",
     "Run a circuit to the washing machine that feeds nothing else; `use = \"laundry\"` says which it is.",
     need_laundry},
    {"need-bath", "The bathroom's receptacle by the basin is on a circuit that can take a hair dryer.",
     "A hair dryer draws 1500 W and more. The NEC gives bathroom receptacles a 20 A circuit with nothing else on it, "
     "unless it serves one bathroom only; the CE Code asks for the receptacle and leaves the circuit open.",
     "Run the circuit, or name the bathroom in the name of the circuit that feeds its receptacle.", need_bath},
    {"need-garage", "A garage has a circuit for its receptacles.",
     "Tools, a freezer, a battery charger: what is plugged in there is large, and should not put the lights of the "
     "house "
     "out. Asked where the job shows a garage.",
     "Run a circuit to the garage's receptacles; `use = \"garage\"` says which it is.", need_garage},
    {"need-outdoor", "A dwelling has a receptacle outdoors.",
     "Without one, mowers and heaters hang on a cord through a door or a window, without ground-fault protection.",
     "Put a receptacle where it can be reached from the ground, front and back under the NEC, and say in its circuit's "
     "name or `use` that it is outdoors.",
     need_outdoor},
    {"need-kitchen-share", "A kitchen counter circuit feeds no more than the code lets it.",
     "What hangs on it besides takes from what the counter needs. The CE Code lets two counter receptacles be on a "
     "circuit and nothing else; the NEC lets the circuit serve all receptacles of kitchen, dining room and pantry, but "
     "no "
     "lights and nothing fastened in place.",
     "Move lights, dishwasher, disposer and the like to other circuits; split the counter over more circuits.",
     need_kitchen_share},
    {"need-dedicated", "What wants a circuit of its own shares it with nothing.",
     "A furnace whose breaker trips for a vacuum cleaner freezes the house, and a charger or a water heater leaves no "
     "room for anything beside it. Told only where a circuit's name or its number of outlets shows that it shares.",
     "Give it its own circuit; or correct the name if nothing else hangs on it.", need_dedicated},
    {"need-neutral-at-switch", "In a dwelling's new work, a neutral is in the box of each switch.",
     "Timers, motion sensors and dimmers live on a trickle of current. Where the box has no neutral they borrow the "
     "ground wire, or somebody pulls a neutral from another circuit.",
     "Run a three-wire cable from the light to the switch and cap the neutral there.", need_neutral_at_switch},
};
} // namespace

std::span<Rule const> need_rules() { return kRules; }

} // namespace legwork
