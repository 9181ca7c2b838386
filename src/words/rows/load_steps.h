// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The steps of a load calculation and their arithmetic, as the sheet of it and `legwork load` both tell them.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

// What many steps share.
inline constexpr std::array kLoadArithmeticRows{
    Row{"load/va", "{va} VA"},
    Row{"load/plus", "{terms} + {more}"},
    Row{"load/equals", "{terms} = {sum}"},
    Row{"load/equals-va", "{terms} = {va} VA"},
    Row{"load/minus", "{from} − {less} = {va} VA"},
    Row{"load/minus-below", "{from} − {less} = −{va} VA"},
    Row{"load/sum-of", "sum of the {n} figures = {va} VA"},
    Row{"load/share", "{va} VA × {percent} % = {counts} VA"},
    Row{"load/at-percent", "{part} × {percent} %"},
    Row{"load/slice", "({to} − {from}) VA"},
    Row{"load/above-first", "{first} VA + ({all} − {first}) VA × {percent} % = {va} VA"},
    Row{"load/each", "{n} × {each} VA = {va} VA"},
    Row{"load/amps-by-volts", "{amps} × {volts} = {va} VA"},
    Row{"load/va-by-volts", "{va} VA ÷ {volts} = {amps}"},
    Row{"load/at-least", "at least {va} VA"},
    Row{"load/circuit", "{name} ({mark})", "Clothes dryer (DR)"},
    Row{"load/mark-and-use", "{mark} {use}", "DW dishwasher"},
};

inline constexpr std::array kLoadStepRows{
    Row{"load/first-slice", "{of}: the first {va} VA"},
    Row{"load/rest", "{of}: the rest"},
    Row{"load/next-slice", "{of}: from {from} VA to {to} VA"},
    Row{"load/by-mca", "{reckoned}, by its least circuit ampacity"},
    Row{"load/by-mca-of-motor", "{reckoned}, by its least circuit ampacity, 125 % of its motor within it"},
    Row{"load/as-measured", "{reckoned}, as measured"},

    Row{"load/general-lighting", "General lighting and receptacles"},
    Row{"load/basement", "The same of the basement"},
    Row{"load/small-appliance", "Small appliance circuits", "of kitchen and dining room"},
    Row{"load/laundry", "Laundry circuits"},
    Row{"load/so-many", "{what}, {n}", "Laundry circuits, 1"},
    Row{"load/so-many-asked", "{what}, {n} that the code asks for"},
    Row{"load/general", "General load"},
    Row{"load/general-after", "General load after demand"},

    Row{"load/fixed-many", "Appliances fastened in place, {n} of them"},
    Row{"load/fixed-few", "Appliances fastened in place, fewer than {n}: in full"},
    Row{"load/dryers", "{n} dryers"},
    Row{"load/cooking", "Cooking"},
    Row{"load/cooking-one", "1 cooking appliance"},
    Row{"load/cooking-some", "{n} cooking appliances"},
    Row{"load/cooking-column", "{appliances}, column {letter}", "of the table of demand factors"},
    Row{"load/cooking-above-12", "{appliances}, column C, {kilowatts} kW above 12 kW"},
    Row{"load/cooking-outside", "1 cooking appliance above 27 kW, outside the table"},
    Row{"load/cooking-by-table", "by the table {va} VA"},
    Row{"load/cooking-in-full", "{nameplate} VA in full = {va} VA"},

    Row{"load/heat-by-room", "Electric heat controlled room by room"},
    Row{"load/electric-heat", "Electric heat"},
    Row{"load/backup-heat", "Backup heat"},
    Row{"load/backup-with-pump", "Backup heat with the heat pump"},
    Row{"load/pump-counts", "{load}, interlocked: less than the heat pump, left out"},
    Row{"load/backup-counts", "{load}, interlocked: less than its backup heat, left out"},
    Row{"load/blower-of", "Blower in {load}"},
    Row{"load/blower-unknown", "its own figure is not given: at most {va} VA, common practice"},
    Row{"load/heating-together", "Heating together"},
    Row{"load/cooling-together", "Cooling together"},
    Row{"load/heating", "Heating"},
    Row{"load/cooling", "Cooling"},
    Row{"load/larger-season", "The larger of heating and cooling"},
    Row{"load/one-or-other", "{heating} VA or {cooling} VA: {va} VA"},
    Row{"load/one-or-other-long", "{heating} VA or {cooling} VA: {va} VA, the larger with what it adds further "
                                  "down"},

    Row{"load/managed", "Energy management"},
    Row{"load/managed-all", "Energy management, all of it"},
    Row{"load/managed-limit", "Energy management, at its limit"},
    Row{"load/within-limit", "not more than the limit of {amps}"},
    Row{"load/largest-motor", "Largest motor, more: {load}", "a share on top of its figure"},
    Row{"load/largest-motor-left-out", "Largest motor, more: {load}, though left out"},

    Row{"load/all-of-this", "All of this"},
    Row{"load/all-with-climate", "All of this with heating or cooling"},
    Row{"load/peak", "Largest draw of {n} days"},
    Row{"load/new", "New: {load}"},

    Row{"load/basic-first", "Basic load, up to {area} m²"},
    Row{"load/basic-more", "Basic load, each {area} m² more or part of it"},
    Row{"load/floor-area", "floor area {area}"},
    Row{"load/in-metres-too", "{area} ({metric})"},
    Row{"load/blocks", "{area} − {first} m² = {more}: {n} × {each} VA = {va} VA"},
    Row{"load/range-up-to", "a range up to {va} VA"},
    Row{"load/range-above", "{first} VA + ({range} − {up}) VA × {percent} % = {va} VA"},
    Row{"load/others-above", "Other loads above {va} VA"},
    Row{"load/others-beside-range", "Other loads, beside a range"},
    Row{"load/others-no-range", "Other loads, without a range"},

    Row{"load/receptacles", "Receptacles"},
    Row{"load/receptacles-after", "Receptacles after demand"},
    Row{"load/outlets", "{n} outlets × {each} VA = {va} VA, at least"},
    Row{"load/continuous-more", "Continuous loads, more", "a share on top of their figures"},
    Row{"load/presumed-more", "Loads presumed continuous, more"},
    Row{"load/held-back-more", "What a device holds back, more"},
    Row{"load/as-reckoned", "as reckoned for what it feeds"},
    Row{"load/one-hot", "One hot and its neutral: all of the load"},
};

// Topics of the code book: what a section that nobody has read speaks of.
inline constexpr std::array kLoadTopicRows{
    Row{"load/topic-floor-area", "floor area"},
    Row{"load/topic-small-appliance", "small appliance"},
    Row{"load/topic-laundry", "laundry"},
    Row{"load/topic-lighting-demand", "lighting demand"},
    Row{"load/topic-fixed", "fixed"},
    Row{"load/topic-appliance", "appliance"},
    Row{"load/topic-dryer", "dryer"},
    Row{"load/topic-cooking", "cooking"},
    Row{"load/topic-heat", "heat"},
    Row{"load/topic-central-heat", "central heat"},
    Row{"load/topic-cooling", "cooling"},
    Row{"load/topic-never-together", "never together"},
    Row{"load/topic-motor", "motor"},
    Row{"load/topic-vehicle", "vehicle"},
    Row{"load/topic-in-full", "in full"},
    Row{"load/topic-managed", "managed"},
    Row{"load/topic-neutral", "neutral"},
    Row{"load/topic-neutral-wye", "neutral wye"},
    Row{"load/topic-optional", "optional"},
    Row{"load/topic-optional-heat", "optional heat"},
    Row{"load/topic-existing", "existing"},
    Row{"load/topic-existing-heat", "existing heat"},
    Row{"load/topic-measured", "measured"},
    Row{"load/topic-continuous", "continuous"},
    Row{"load/topic-presumed", "presumed"},
    Row{"load/topic-listed", "listed"},
    Row{"load/topic-outlets", "outlets"},
};

} // namespace legwork
