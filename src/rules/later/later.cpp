// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/later/list.h"

namespace legwork {

constinit Rule const box_full{
    .id = "box-full",
    .asks = "The wires, clamps and devices in a box have the room that the code counts for them.",
    .why = "Wires pressed together behind a device cannot give off their heat, their insulation is cut on sharp edges, "
           "and a splice is pulled open when somebody folds it all back in. Each wire that ends or is spliced in the "
           "box counts once by its size, a device counts twice, a wire that never leaves the box not at all; what "
           "clamps, grounds and wire connectors count differs between the codes.",
    .remedy = "Add up the counts of every cable before you choose the box, and take the next deeper one: it costs "
              "little now and a hole in the wall later. The volume is stamped into the box.",
};

constinit Rule const box_mixed{
    .id = "box-mixed",
    .asks = "What does not belong together does not share a box.",
    .why = "A box that holds power wires and bell, thermostat or data wires puts 120 V beside insulation and terminals "
           "that were never made for it: one nicked wire, and somebody's doorbell is live. A box fed from two breakers "
           "surprises whoever switched off one.",
    .remedy = "Give extra-low-voltage wires a box of their own, or fit the listed divider. Where two circuits must "
              "meet in a box, write both marks inside it.",
};

constinit Rule const run_hole{
    .id = "run-hole",
    .asks = "A hole bored for a cable leaves the wood strong and the cable out of reach of nails.",
    .why = "A hole too near the edge puts the cable where the next drywall screw goes, and the screw finds it years "
           "later behind a picture. A hole too large takes from a stud or joist what the roof stands on.",
    .remedy = "Bore in the middle of the stud, its edge 32 mm (1 1/4 in) or more from the face; where that cannot be, "
              "put a steel plate over the place. Ask before you bore a joist near its end, a truss or a beam.",
};

constinit Rule const run_support{
    .id = "run-support",
    .asks = "A cable is held close to every box and often enough along its way.",
    .why = "A cable that hangs pulls on its splices, sags into the path of a saw or a pipe, and slips out of a box "
           "whose clamp was forgotten. Flat cable stapled on its edge is crushed.",
    .remedy = "Staple flat, snug and not tight: near each box (300 mm or 12 in is the usual figure) and about every "
              "1.4 m (4 1/2 ft) after that. Holes through framing count as supports.",
};

constinit Rule const run_bundle{
    .id = "run-bundle",
    .asks = "Cables that run together for long, or through one foamed hole, are still large enough.",
    .why = "A wire in free air gives its heat away; in the middle of a bundle it is warmed by its neighbours. From "
           "four current-carrying wires on the allowed current is cut: a bundle of eight 10 AWG wires no longer "
           "carries 30 A. The shared neutral of a pair on opposite legs, and grounds, do not count.",
    .remedy = "Spread the cables over several holes, keep them apart, or pull one size larger.",
};

} // namespace legwork
