// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A load calculation: its method and why, what is missing, what was taken for granted or left out.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLoadMethodRows{
    Row{"load/method-standard", "standard"},
    Row{"load/method-optional", "optional"},
    Row{"load/method-existing", "existing"},
    Row{"load/method-measured", "measured"},
    Row{"load/title-dwelling", "Standard method for a dwelling ({edition} Article 220, Part III)"},
    Row{"load/title-part", "Standard method for a part of a dwelling ({edition} Article 220, Part III)"},
    Row{"load/title-blocks", "Load of one dwelling ({edition} 8-200)"},
    Row{"load/title-listed", "What is listed, added up ({section})"},
    Row{"load/title-optional", "Optional method for one dwelling ({section})"},
    Row{"load/title-existing", "Existing dwelling, without new heating or cooling ({section})"},
    Row{"load/title-existing-heat", "Existing dwelling, with new heating or cooling ({section})"},
    Row{"load/title-measured", "Measured peak and what is new ({section})"},
    Row{"load/why-asked", "As asked for."},
    Row{"load/why-measured", "The largest draw of the service is known and something is added: what was measured tells "
                             "more than any table."},
    Row{"load/why-existing",
        "Part of this dwelling stands already: {section} is made for asking what its service still carries."},
    Row{"load/why-optional",
        "One dwelling on one service of {amps} or more may be reckoned so, and it is what most permits are reckoned "
        "by; the standard method holds as well."},
    Row{"load/why-no-dwelling",
        "There is no table [dwelling], so this is reckoned as another building: all that is listed.",
        "[dwelling] stands so in the job file"},
    Row{"load/why-part", "This panel feeds a part of the dwelling: what is listed there."},
    Row{"load/why-one-method", "{edition} has one method for a new dwelling."},
    Row{"load/why-standard", "The standard method, since {why}."},
    Row{"load/why-other", "By the {method} method it would be too much; the code allows either."},
    Row{"load/needs-two-hots", "the {method} method ({section}) is for a service of two hots and a neutral, 120/240 V "
                               "or 120/208 V"},
    Row{"load/needs-amps", "the {method} method ({section}) is for a service of {least} or more, and {what} is "
                           "{amps}"},
    Row{"load/method-unread", "the {method} method of {edition} is not read yet"},
    Row{"load/method-none", "{edition} has no {method} method of reckoning a load"},
};

inline constexpr std::array kLoadNoteRows{
    Row{"load/area-missing", "the floor area of the dwelling"},
    Row{"load/load-of", "the load of {load}"},
    Row{"load/load-of-measured", "the load of {load} by its nameplate (counted as measured, which is the least)"},
    Row{"load/unread-step", "what {edition} says of this (not read yet): {topic}"},
    Row{"load/unread-neutral", "What the neutral carries is not read yet in {edition}."},

    Row{"load/area-by", "Floor area by {dimensions}."},
    Row{"load/area-by-basement", "Floor area by {dimensions}; the basement at {percent} %."},
    Row{"load/inside", "inside dimensions, all storeys but the basement"},
    Row{"load/outside", "outside dimensions, without garage, open porches and what cannot be finished"},
    Row{"load/within-general", "Within the general lighting and receptacles, so not counted again: {loads}"},
    Row{"load/within-basic", "Within the basic load, so not counted again: {loads}"},
    Row{"load/small-in-basic", "Not above {va} VA, so within the basic load: {loads}"},
    Row{"load/part-by-list", "What floor area this panel serves is not known: lights and receptacles count as "
                             "listed."},
    Row{"load/look-at-table-14",
        "Least watts a square metre by the kind of building (8-210, Table 14) are not reckoned "
        "here: look whether they ask for more."},
    Row{"load/look-at-table-220", "Least lighting load a square foot by the kind of building (Table 220.12 or 220.42) "
                                  "is not reckoned here: look whether it asks for more."},
    Row{"load/interlocked-idle", "`interlocked` is of backup heat beside a heat pump, so it changes nothing of {loads}",
        "`interlocked` stands so in the job file"},
    Row{"load/managed-feeder", "Energy management names {mark}, which feeds panel \"{panel}\": name the circuits there "
                               "that it holds back. Now they count in full."},
    Row{"load/not-in-use", "Wired and not in use, so not counted: {loads}"},
    Row{"load/motor-left-out", "{load} never runs with what is larger, but is the largest motor of all: its {percent} "
                               "% count all the same ({section}). Readings differ: some add nothing, and only compare "
                               "125 % of it with what is larger."},
    Row{"load/neutral-motor",
        "The neutral's 25 % is of the largest motor on the neutral, {load}. Readings differ: some "
        "take it only where that is the largest motor of all."},
    Row{"load/neutral-assumed", "How much of a 240 V load returns over its neutral is not known (its nameplate may "
                                "say): all of it is assumed, of {loads}."},
    Row{"load/plain-appliance",
        "Taken as plugged in: {loads}. With those fastened in place they would be {n} or more, "
        "which count at {percent} %: `fastened = true` says so of each that is.",
        "`fastened = true` stands so in the job file"},
    Row{"load/rooms-heat", "Heat of {n} rooms controlled by themselves counts at {percent} %."},
    Row{"load/whole-heat",
        "A furnace or boiler serves the whole dwelling: it counts at {percent} %, whatever the rooms "
        "have for thermostats."},
    Row{"load/heat-share",
        "Heat counts at {percent} %; at {many} % where {rooms} rooms or more have a thermostat of their own: "
        "`thermostats` in [dwelling] says so."},
    Row{"load/heats-in-ways",
        "This home heats in {n} ways at once, each a choice of its own in {section}: they are added, {va} VA. The "
        "largest choice alone would be {largest} VA."},
    Row{"load/peak-holds",
        "What stood there when the peak was read (existing = true) is within it; the rest is new and "
        "counts in full."},
    Row{"load/taken-from-names", "What they are was taken from their names: {uses}."},
    Row{"load/stands-alone",
        "Its source stands alone: neither this load nor the least size of a service decides what it must give. Name "
        "what runs on it as a [[situation]], and that is held against it.",
        "[[situation]] stands so in the job file"},
    Row{"load/fed-by-itself", "Panel \"{panel}\" is fed by itself: what it feeds is not in this calculation."},
};

} // namespace legwork
