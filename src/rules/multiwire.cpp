// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire.h"

#include "rules/pair_place.h"
#include "rules/themes.h"

namespace legwork {

namespace {
// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {.id = "mw-one-panel",
     .asks = "Both hots of a multiwire pair, and their neutral, start in one panel.",
     .why = "Two circuits that share a neutral are one cable and must be dead as one. If one hot comes from another "
            "panel, somebody who switches off at the panel in front of them opens a box whose neutral is still live, "
            "and the two currents need not cancel.",
     .remedy = "Land both hots in the panel where the neutral is landed, or run a separate cable to each panel.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = mw_one_panel},
    {.id = "mw-same-space",
     .asks = "A multiwire pair never sits on the two halves of one half-size (tandem) breaker.",
     .why = "Both halves of a space are fed by the same leg. The two currents then come back through the neutral added "
            "up, not subtracted, and nothing trips: each breaker sees only its own share.",
     .remedy = "Use two full-size spaces next to each other in one column, or the inner or outer halves of a quad, so "
               "that each hot is on its own leg. Tying the halves of one space does not help.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = mw_same_space},
    {.id = "mw-in-phase-supply",
     .asks = "No multiwire pair is fed by a supply whose two legs are in phase.",
     .why = "A cord inlet, inverter or small generator of 120 V bridged to both buses makes both legs rise and fall "
            "together. The shared neutral then carries the sum of both currents, up to twice what its wire is good "
            "for, with no breaker in the way.",
     .remedy = "Give every circuit of such a panel its own neutral, or use a source of 120/240 V. Switching one of the "
               "two off by hand depends on somebody remembering it, and is no cure.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = mw_in_phase_supply},
    {.id = "mw-opposite-legs",
     .asks = "The two hots of a multiwire pair are on different legs.",
     .why = "On opposite legs the two currents meet in the neutral and cancel: it carries their difference. On one leg "
            "it carries their sum, and since no breaker measures the neutral, it overheats inside the wall.",
     .remedy = "Move one of the two to a neighbouring space in the same column, so that a meter reads about 240 V "
               "between the hots (208 V on two phases of a wye). The two spaces of one row are on one leg.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = mw_opposite_legs},
    {.id = "mw-not-adjacent",
     .asks = "A tied pair sits on neighbouring spaces of one column.",
     .why = "A two-pole breaker or a handle tie reaches only from one space to the next one in its column. A pair that "
            "stands apart cannot really be tied, whatever the list says.",
     .remedy = "Move one of the two next to the other, then fit the tie or the two-pole breaker.",
     .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work}},
     .find = mw_not_adjacent},
    {.id = "mw-disconnect",
     .asks = "Both hots of a shared cable switch off together.",
     .why = "Whoever works on the circuit switches off the breaker that is named for it. If the other hot of the same "
            "cable stays on, the box they open is half live, and the neutral they part carries the other circuit's "
            "current. The NEC asks it of every multiwire circuit. The CE Code asks a two-pole breaker where a split "
            "receptacle or a 240 V load hangs on it, and lets fixed lighting and unsplit receptacles off.",
     .remedy = "Fit a two-pole breaker. Under the NEC an identified handle tie, made for those breakers, does too; "
               "nails and wire never did.",
     .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work, Grade::warning, Grade::note}},
     .find = mw_disconnect},
    {.id = "mw-line-to-line",
     .asks = "A 240 V outlet beside 120 V outlets on one circuit has a breaker whose poles trip together.",
     .why = "A handle tie makes people switch both off, but a fault may still trip one breaker alone. The 240 V load "
            "then feeds its open side from the other leg, and things that should be dead are not.",
     .remedy = "Fit one two-pole breaker of the common-trip kind, which is what a two-pole breaker in one case is.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, "After a trip what looks dead is fed through the load between the two hots."},
     .find = mw_line_to_line},
    {.id = "mw-unequal",
     .asks = "Both breakers of a multiwire pair have the same rating.",
     .why = "A two-pole breaker has one rating, and handle ties are made for two breakers alike. Two ratings on one "
            "cable are usually a sign that one of them was swapped without thinking of the other.",
     .remedy = "Choose the smaller rating for both if the loads allow it, else give the larger load its own cable.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = mw_unequal},
    {.id = "mw-conductors",
     .asks = "The cable of a multiwire pair has an insulated wire for each hot and one for the neutral.",
     .why = "Two hots and a neutral are three wires besides the ground. With two, either the neutral or a hot is "
            "missing, and the ground wire must never stand in for it.",
     .remedy = "Pull a three-conductor cable (14/3, 12/3), or a two-conductor cable for each circuit.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kAtOnce},
     .find = mw_conductors},
    {.id = "mw-neutral-current",
     .asks = "The current in a shared neutral stays within what its wire is good for.",
     .why = "Nothing trips on the neutral's current. It is worked out for every situation and every source: the "
            "difference of the two currents on opposite legs; on two phases of a wye they do not cancel, and two equal "
            "currents leave the same current again.",
     .remedy = "Move part of the larger load to another circuit, or pull a larger cable.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kUnseen},
     .find = mw_neutral_current},
    {.id = "mw-one-pole-gfci",
     .asks = "Ground-fault protection in the breaker of a shared neutral is one two-pole breaker.",
     .why = "A GFCI compares what goes out on the hot with what comes back on the neutral. Of a shared neutral a "
            "one-pole GFCI sees the other circuit's current too, and trips at once or, wired wrong, protects nobody. "
            "The same holds for an AFCI that senses ground faults.",
     .remedy = "Fit one two-pole GFCI breaker, or leave the breakers plain and protect each circuit by a receptacle "
               "after the point where the neutrals part.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, "It trips at once or, wired wrong, protects nobody."},
     .find = mw_one_pole_gfci},
    {.id = "mw-pigtail",
     .asks = "The neutral of a multiwire pair does not run through a device.",
     .why = "If the neutral goes in at one terminal of a receptacle and out at another, taking that receptacle off "
            "opens the neutral for everything beyond, and the two circuits stand in series across 240 V.",
     .remedy = "Splice the neutrals together in the box and bring one short wire from the splice to the device.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
     .find = mw_pigtail},
    {.id = "mw-grouping",
     .asks = "In the panel it is plain which neutral belongs to which hots.",
     .why = "Among a dozen white wires nobody can see whose neutral they are about to lift. Lifting the shared one "
            "with a breaker on puts up to 240 V on the lighter load.",
     .remedy = "Tie each pair's hots and neutral together at least once in the panel, or mark the neutral with the "
               "circuits: the printed N marker does it.",
     .gravity = {.nec = {Grade::note}},
     .find = mw_grouping},
    {.id = "mw-open-neutral",
     .asks = "What each circuit of a pair would see if their neutral came loose.",
     .why = "Without the neutral the two circuits are in series across both legs and share 240 V as their resistances "
            "do. The lighter load has the higher resistance and gets the higher voltage: a phone charger beside a "
            "kettle gets nearly all of it.",
     .remedy = "Tighten neutral splices and terminals to their marked torque, check them again after a season, and "
               "never part the neutral with a breaker on.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
     .find = mw_open_neutral},
    {.id = "mw-unpaired",
     .asks = "Every wire of a three-conductor cable has something to do.",
     .why = "A third insulated wire on a one-pole circuit, or on a 240 V circuit that needs no neutral, is often a "
            "multiwire pair that somebody forgot to write down. Its other hot may be live.",
     .remedy = "Say what the wire does: `third = \"switched\"`, `\"traveller\"`, `\"spare\"` or `\"neutral\"`, or name "
               "the pair with `multiwire`.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = mw_unpaired},
    {.id = "mw-keep-on",
     .asks = "What must stay on is not tied to a circuit that people switch off.",
     .why = "A refrigerator, a freezer, a sump pump, an alarm, a furnace or a medical load does harm quietly when it "
            "goes off. Tied to the counter receptacles, it goes off with them.",
     .remedy = "Give it a cable and a breaker of its own, or pair it with something else that stays on.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = mw_keep_on},
};
} // namespace

std::span<Rule const> multiwire_rules() { return kRules; }

} // namespace legwork
