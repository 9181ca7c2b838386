// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The load sheet, around the steps of the calculation: load_steps.h.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLoadRows{
    Row{"load/title", "Load calculation"},
    Row{"load/document", "load calculation, {panel}", "of the file, as a reader's window shows it"},
    Row{"load/service", "service", "the wires from the utility and the main"},
    Row{"load/feeder", "feeder", "the wires from another panel"},
    Row{"load/panel-service", "Panel {panel}: service"},
    Row{"load/panel-feeder", "Panel {panel}: feeder from panel {above}"},
    Row{"load/between-hots", "{volts} between the two hots"},
    Row{"load/hot-to-neutral", "{volts} between its one hot and the neutral"},
    Row{"load/rated", "{what} of {amps}", "the main of 100 A"},
    Row{"load/how-to-follow",
        "Indented lines are only listed and go into a line below. The bold figures at the right count: added up, they "
        "are the total."},
    Row{"load/the-load", "The load"},
    Row{"load/total", "Total"},
    Row{"load/of-neutral", "What the neutral carries of it"},
    Row{"load/total-of-neutral", "Total of the neutral"},
    Row{"load/continued", "{title}, continued", "on the next page"},
    Row{"load/so-far", "{total}, so far", "something is missing"},
    Row{"load/value-so-far", "{value} so far"},
    Row{"load/item", "item", "head of a column"},
    Row{"load/arithmetic", "arithmetic", "head of a column"},
    Row{"load/listed", "listed, VA", "head of a column: goes into a later line"},
    Row{"load/counts", "counts, VA", "head of a column"},
    Row{"load/bold-figures", "the {n} bold figures, added up"},
    Row{"load/legs", "What one leg carries alone, after demand"},
    Row{"load/leg-nothing", "Leg {leg} alone: nothing, 0 VA"},
    Row{"load/leg-alone", "Leg {leg} alone: {figures} VA"},
    Row{"load/mark-and-va", "{mark}\u00a0{va}", "K1 1200: a no-break space between them"},
    Row{"load/both-legs", "Both legs alike: {total} − {a} − {b} = {even} VA; half of it on each, {half} VA"},
    Row{"load/results", "What comes of it"},
    Row{"load/missing", "What is missing"},
    Row{"load/find-out", "Find it out, write it into the job file and print again."},
    Row{"load/granted", "Taken for granted and left out"},
    Row{"load/not-read", "(not read yet)", "in the column of sections: nobody has read the page"},
    Row{"load/star", "{section}*"},
    Row{"load/two-stars", "{section}**"},
    Row{"load/star-means", "* The number of this section is from memory."},
    Row{"load/two-stars-mean", "** What this section says is from memory: look it up before you rely on it."},
    Row{"load/incomplete-one", "Not complete, so do not hand it in: one thing is missing, named further on, and the "
                               "figures are without it."},
    Row{"load/incomplete", "Not complete, so do not hand it in: {n} things are missing, named further on, and the "
                           "figures are without them."},
    Row{"load/smallest", "A {what} of {amps} is the smallest for it.", "a service or a feeder"},
    Row{"load/rating-unknown", "How many amperes the present {what} is good for is not known: write the main of the "
                               "panel into the job file."},
    Row{"load/until-then", "Whether it is within {what} of {amps} is not known until then."},
};

} // namespace legwork
