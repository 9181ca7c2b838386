// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/multiwire.h"

#include "rules/pair_place.h"
#include "rules/themes.h"

namespace legwork {

namespace {
// id, what it asks, why, the usual remedy, the function. `explain` reads these aloud.
constexpr Rule kRules[] = {
    {"mw-one-panel", "Both hots of a multiwire pair, and their neutral, start in one panel.",
     "Two circuits that share a neutral are one cable and must be dead as one. If one hot comes from another panel, "
     "somebody who switches off at the panel in front of them opens a box whose neutral is still live, and the two "
     "currents need not cancel.",
     "Land both hots in the panel where the neutral is landed, or run a separate cable to each panel.", mw_one_panel},
    {"mw-same-space", "A multiwire pair never sits on the two halves of one half-size (tandem) breaker.",
     "Both halves of a space are fed by the same leg. The two currents then come back through the neutral added up, "
     "not subtracted, and nothing trips: each breaker sees only its own share.",
     "Use two full-size spaces next to each other in one column, or the inner or outer halves of a quad, so that each "
     "hot is on its own leg. Tying the halves of one space does not help.",
     mw_same_space},
    {"mw-in-phase-supply", "No multiwire pair is fed by a supply whose two legs are in phase.",
     "A cord inlet, inverter or small generator of 120 V bridged to both buses makes both legs rise and fall together. "
     "The shared neutral then carries the sum of both currents, up to twice what its wire is good for, with no breaker "
     "in the way.",
     "Give every circuit of such a panel its own neutral, or use a source of 120/240 V. Switching one of the two off "
     "by hand depends on somebody remembering it, and is no cure.",
     mw_in_phase_supply},
    {"mw-opposite-legs", "The two hots of a multiwire pair are on different legs.",
     "On opposite legs the two currents meet in the neutral and cancel: it carries their difference. On one leg it "
     "carries their sum, and since no breaker measures the neutral, it overheats inside the wall.",
     "Move one of the two to a neighbouring space in the same column, so that a meter reads about 240 V between the "
     "hots (208 V on two phases of a wye). The two spaces of one row are on one leg.",
     mw_opposite_legs},
    {"mw-not-adjacent", "A tied pair sits on neighbouring spaces of one column.",
     "A two-pole breaker or a handle tie reaches only from one space to the next one in its column. A pair that stands "
     "apart cannot really be tied, whatever the list says.",
     "Move one of the two next to the other, then fit the tie or the two-pole breaker.", mw_not_adjacent},
    {"mw-disconnect", "Both hots of a shared cable switch off together.",
     "Whoever works on the circuit switches off the breaker that is named for it. If the other hot of the same cable "
     "stays on, the box they open is half live, and the neutral they part carries the other circuit's current. The NEC "
     "asks it of every multiwire circuit. The CE Code asks a two-pole breaker where a split receptacle or a 240 V load "
     "hangs on it, and lets fixed lighting and unsplit receptacles off.",
     "Fit a two-pole breaker. Under the NEC an identified handle tie, made for those breakers, does too; nails and "
     "wire never did.",
     mw_disconnect},
    {"mw-line-to-line", "A 240 V outlet beside 120 V outlets on one circuit has a breaker whose poles trip together.",
     "A handle tie makes people switch both off, but a fault may still trip one breaker alone. The 240 V load then "
     "feeds its open side from the other leg, and things that should be dead are not.",
     "Fit one two-pole breaker of the common-trip kind, which is what a two-pole breaker in one case is.",
     mw_line_to_line},
    {"mw-unequal", "Both breakers of a multiwire pair have the same rating.",
     "A two-pole breaker has one rating, and handle ties are made for two breakers alike. Two ratings on one cable are "
     "usually a sign that one of them was swapped without thinking of the other.",
     "Choose the smaller rating for both if the loads allow it, else give the larger load its own cable.", mw_unequal},
    {"mw-conductors", "The cable of a multiwire pair has an insulated wire for each hot and one for the neutral.",
     "Two hots and a neutral are three wires besides the ground. With two, either the neutral or a hot is missing, and "
     "the ground wire must never stand in for it.",
     "Pull a three-conductor cable (14/3, 12/3), or a two-conductor cable for each circuit.", mw_conductors},
    {"mw-neutral-current", "The current in a shared neutral stays within what its wire is good for.",
     "Nothing trips on the neutral's current. It is worked out for every situation and every source: the difference of "
     "the two currents on opposite legs; on two phases of a wye they do not cancel, and two equal currents leave the "
     "same current again.",
     "Move part of the larger load to another circuit, or pull a larger cable.", mw_neutral_current},
    {"mw-one-pole-gfci", "Ground-fault protection in the breaker of a shared neutral is one two-pole breaker.",
     "A GFCI compares what goes out on the hot with what comes back on the neutral. Of a shared neutral a one-pole "
     "GFCI sees the other circuit's current too, and trips at once or, wired wrong, protects nobody. The same holds "
     "for "
     "an AFCI that senses ground faults.",
     "Fit one two-pole GFCI breaker, or leave the breakers plain and protect each circuit by a receptacle after the "
     "point where the neutrals part.",
     mw_one_pole_gfci},
    {"mw-pigtail", "The neutral of a multiwire pair does not run through a device.",
     "If the neutral goes in at one terminal of a receptacle and out at another, taking that receptacle off opens the "
     "neutral for everything beyond, and the two circuits stand in series across 240 V.",
     "Splice the neutrals together in the box and bring one short wire from the splice to the device.", mw_pigtail},
    {"mw-grouping", "In the panel it is plain which neutral belongs to which hots.",
     "Among a dozen white wires nobody can see whose neutral they are about to lift. Lifting the shared one with a "
     "breaker on puts up to 240 V on the lighter load.",
     "Tie each pair's hots and neutral together at least once in the panel, or mark the neutral with the circuits: the "
     "printed N marker does it.",
     mw_grouping},
    {"mw-open-neutral", "What each circuit of a pair would see if their neutral came loose.",
     "Without the neutral the two circuits are in series across both legs and share 240 V as their resistances do. The "
     "lighter load has the higher resistance and gets the higher voltage: a phone charger beside a kettle gets nearly "
     "all of it.",
     "Tighten neutral splices and terminals to their marked torque, check them again after a season, and never part "
     "the neutral with a breaker on.",
     mw_open_neutral},
    {"mw-unpaired", "Every wire of a three-conductor cable has something to do.",
     "A third insulated wire on a one-pole circuit, or on a 240 V circuit that needs no neutral, is often a multiwire "
     "pair that somebody forgot to write down. Its other hot may be live.",
     "Say what the wire does: `third = \"switched\"`, `\"traveller\"`, `\"spare\"` or `\"neutral\"`, or name the pair "
     "with `multiwire`.",
     mw_unpaired},
    {"mw-keep-on", "What must stay on is not tied to a circuit that people switch off.",
     "A refrigerator, a freezer, a sump pump, an alarm, a furnace or a medical load does harm quietly when it goes "
     "off. "
     "Tied to the counter receptacles, it goes off with them.",
     "Give it a cable and a breaker of its own, or pair it with something else that stays on.", mw_keep_on},
};
} // namespace

std::span<Rule const> multiwire_rules() { return kRules; }

} // namespace legwork
