// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#include "rules/panel_rules.h"
#include "rules/themes.h"

namespace legwork {

namespace {
constexpr Rule kRules[] = {
    {.id = "panel-240-on-120",
     .asks = "No 240 V load is fed by a supply of one phase.",
     .why = "A 120 V source bridged to both legs puts nothing between the two hots of a 240 V load, so it stays cold. "
            "From a source on one leg the load even passes its voltage on to the dead leg, where 120 V loads in series "
            "with it get what they are not made for.",
     .remedy = "Feed it from 120/240 V, choose a 120 V load, or list it under `off` of that source and keep it "
               "switched off there; the list is printed beside the panel.",
     .gravity = {.nec = {Grade::error, Grade::warning}, .ce = {Grade::error, Grade::warning}},
     .accept = {Acceptance::Of::none, kDead},
     .find = panel_240_on_120},
    {.id = "panel-dead-space",
     .asks = "Every circuit stands on a space that a bus and a source reach.",
     .why = "A cord of one hot feeds one bus, and the spaces of the other leg stay dead. Some panels also have "
            "positions that no bus finger reaches.",
     .remedy = "Move the circuit to a live space. Going down a column the spaces alternate between the legs.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kDead},
     .find = panel_dead_space},
    {.id = "panel-two-legs",
     .asks = "A two-pole breaker reaches both legs.",
     .why = "On an odd bus two neighbouring spaces can be on one leg. A 240 V load there gets no voltage, and a pair's "
            "neutral carries the sum.",
     .remedy = "Choose two neighbouring spaces with different leg letters; the directory prints the letters between "
               "the columns.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .accept = {Acceptance::Of::none, kDead},
     .find = panel_two_legs},
    {.id = "panel-no-tandem",
     .asks = "Half-size breakers stand only where the panel takes them.",
     .why = "The panel's maker lists the spaces whose bus and rating allow two circuits. Elsewhere a half-size breaker "
            "may fit by force and make poor contact.",
     .remedy = "Use a full-size space, or a space that the label in the door shows as taking half-size breakers.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .find = panel_no_tandem},
    {.id = "panel-circuits",
     .asks = "The breakers have no more poles than the panel is marked for.",
     .why = "A panel is built and tested for a number of circuits: the heat of its bus, its neutral bar and the room "
            "for wires all go by it. Half-size breakers make it easy to exceed. A two-pole breaker counts 2, each half "
            "counts 1.",
     .remedy = "Read the number on the label in the door; put what is too much in a sub-panel or a larger panel.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .find = panel_circuits},
    {.id = "panel-no-room",
     .asks = "Every circuit of the job has a space in its panel.",
     .why = "A circuit without a space cannot be landed. Pairs and two-pole breakers need two free neighbours in one "
            "column, so a panel can have free spaces and still no room.",
     .remedy = "Let `legwork balance` move what is in the way, remove what is no longer used, or add a sub-panel.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .find = panel_no_room},
    {.id = "panel-main-overloaded",
     .asks = "Each leg stays within the main and the source in every named situation.",
     .why = "A leg that draws more than the main carries trips it on the coldest evening. Everything on at once may "
            "well be more than the main: that is only a note, since whether the service is large enough is a question "
            "of the load calculation.",
     .remedy = "Leave something off in that situation, even out the legs, or enlarge the service.",
     .gravity = {.nec = {Grade::warning, Grade::note}, .ce = {Grade::warning, Grade::note}},
     .find = panel_main_overloaded},
    {.id = "panel-legs-uneven",
     .asks = "The legs are about as even as a rebalance could make them.",
     .why = "Uneven legs load one half of the main and of the transformer, let the voltage of the two halves drift "
            "apart, and leave less for the next circuit. Told only when it matters: more than 600 VA over the least "
            "possible and more than a tenth of the heavier leg.",
     .remedy = "Run `legwork balance`: it shows the fewest circuits to move and what each further move gains.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = panel_legs_uneven},
    {.id = "panel-backfeed",
     .asks = "A bus is not fed beyond what it carries by its main and by solar or a battery together.",
     .why = "The main guards the bus only while it is the one way in. A source at work brings its current from the "
            "other side, and loads between the two can draw both without any breaker knowing. At opposite ends the "
            "currents meet in the middle and no stretch carries the sum, so a little more than the bus rating is "
            "allowed there. A generator inlet interlocked with the main never works beside it and is not meant.",
     .remedy = "Put the source's breaker at the end away from the main and write `fixed = true`; keep its output "
               "within what the bus leaves; or fit a smaller main, a larger panel, or a connection ahead of the main.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::warning}},
     .find = panel_backfeed},
    {.id = "panel-spare-spaces",
     .asks = "The panel of a dwelling has the least number of positions, and two are left free.",
     .why = "A home gains circuits for as long as it stands. A panel that is full on the first day ends in overcrowded "
            "halves, doubled wires under one screw, or a feeder nobody planned. How many positions are asked grows "
            "with the service; central electric heating leaves less for other circuits to carry.",
     .remedy =
         "Choose the panel by its positions as well as by its amperes; leave two positions free beside each other.",
     .gravity = {.ce = {Grade::error, Grade::warning}},
     .find = panel_spare_spaces},
    {.id = "panel-sign",
     .asks = "The signs that the code asks for hang at the panel.",
     .why = "Who works here in ten years, or fights a fire here tonight, has not read the plan. Signs say what else "
            "feeds the panel, which breaker must not move, and what must be off before a source is used.",
     .remedy = "Write them in letters that last, in print and not by hand, and fix each where it says.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
     .find = panel_sign},
    {.id = "panel-hang",
     .asks = "No breaker of a panel hung on its side is on when its handle is down.",
     .why = "Where handles move up and down, people take up for on. A panel turned a quarter has two rows, and the "
            "handles of the upper one are on when down: somebody will switch on what they meant to switch off.",
     .remedy = "Hang the panel upright or upside down, where handles move sideways, or use only the lower row.",
     .gravity = {.nec = {Grade::warning}},
     .find = panel_hang},
    {.id = "panel-208-heat",
     .asks = "Heaters that hang between two phases of a wye are made for its voltage.",
     .why = "Between two phases of 120/208 there are 208 V. A heater made for 240 V gives (208/240)², three quarters "
            "of its power there: nothing is unsafe, and the room stays cold in January.",
     .remedy = "Fit heaters made for 208 V, or choose them a third larger.",
     .gravity = {.nec = {Grade::warning}, .ce = {Grade::warning}},
     .find = panel_208_heat},
    {.id = "panel-neutral-terminals",
     .asks = "Each neutral has a terminal of its own.",
     .why = "Two neutrals under one screw: loosen it for one circuit and the other loses its neutral while it is on. "
            "The bar is tried and listed with one wire in each hole. Count the holes before the cables are pulled.",
     .remedy = "Add a neutral bar that the panel's label lists.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::error}},
     .find = panel_neutral_terminals},
    {.id = "panel-feeder-wires",
     .asks = "A feeder brings its panel every wire that the panel lands: hots, neutral and ground.",
     .why =
         "A sub-panel of 120/240 V lands two hots, a neutral and a ground; one of 120 V a hot, a neutral and a ground. "
         "Without a neutral, 120 V loads return over the ground, and every metal thing in the building is live.",
     .remedy = "Pull a feeder with a wire for each, or let the panel say the supply it really has.",
     .gravity = {.nec = {Grade::error_on_new_work}, .ce = {Grade::error_on_new_work}},
     .find = panel_feeder_wires},
    {.id = "panel-sub-neutral",
     .asks = "Neutral and ground are kept apart in a panel below another.",
     .why = "Joined again in a sub-panel they share the neutral's current: it flows in ground wires, pipes and boxes, "
            "and GFCI breakers ahead trip. They are joined once, at the service.",
     .remedy = "Take out the bonding screw or strap, and give the grounds a bar of their own.",
     .gravity = {.nec = {Grade::note}, .ce = {Grade::note}},
     .find = panel_sub_neutral},
    {.id = "panel-outbuilding",
     .asks = "A building apart has one supply.",
     .why = "Somebody switches off the breaker they know of and reaches into a box that a second one still feeds. One "
            "feeder, one branch circuit or one multiwire pair, and one switch, make the building dead.",
     .remedy = "Feed a small panel there by one feeder.",
     .gravity = {.nec = {Grade::error}, .ce = {Grade::warning}},
     .find = panel_outbuilding},
};
} // namespace

std::span<Rule const> panel_rules() { return kRules; }

} // namespace legwork
