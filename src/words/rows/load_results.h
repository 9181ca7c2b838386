// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What comes of a load calculation, as a permit form asks for it, and the verdict on the present service.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLoadResultRows{
    Row{"load/the-main", "the main"},
    Row{"load/the-feeder", "the feeder {mark}"},
    Row{"load/the-supply", "the supply"},
    Row{"load/the-source", "\"{name}\"", "a source by the name that a person gave it"},
    Row{"load/calculated", "Calculated load"},
    Row{"load/without-missing", "without what is missing"},
    Row{"load/amperes", "Amperes"},
    Row{"load/amperes-of-leg", "Amperes of leg {leg}, the heavier"},
    Row{"load/amperes-of-leg-other", "Amperes of leg {leg}, the heavier, while the other of heating and cooling runs"},
    Row{"load/line-wye", "what both carry and what this leg carries alone: {even} VA ÷ {volts} + {alone} VA ÷ "
                         "{neutral} = {amps}"},
    Row{"load/line", "half of what both carry and what this leg carries alone: ({half} + {alone}) VA ÷ {volts} = "
                     "{amps}"},
    Row{"load/neutral", "Neutral"},
    Row{"load/neutral-above", "{above} + ({amps} − {above}) × {percent} % = {less}"},
    Row{"load/least", "Least for this dwelling"},
    Row{"load/whatever-load", "however small its load"},
    Row{"load/of-disconnect", "its main switch may be rated no lower"},
    Row{"load/smallest-service", "Smallest standard service"},
    Row{"load/smallest-feeder", "Smallest standard feeder"},
    Row{"load/not-known", "not known"},
    Row{"load/size-from", "the standard size at or above {amps}"},
    Row{"load/size-from-least", "the standard size at or above the least for this dwelling, {amps}"},
    Row{"load/size-by-method", "{size}, and the {amps} from which this method holds"},
    Row{"load/size-dropped", "{size}, the part of an ampere left out ({section})"},
    Row{"load/its-wire", "Its wire"},
    Row{"load/at-terminals", "at terminals of {celsius} °C"},
    Row{"load/of-dwelling", "of a whole dwelling"},
    Row{"load/copper", "{gauge} AWG copper"},
    Row{"load/copper-larger", "copper larger than 4/0 AWG"},
    Row{"load/aluminium", "{gauge} AWG aluminium"},
    Row{"load/aluminium-larger", "aluminium larger than 4/0 AWG"},
    Row{"load/present-service", "Present service"},
    Row{"load/present-feeder", "Present feeder"},
    Row{"load/no-rating", "no main, feeder or supply says its amperes"},
    Row{"load/present", "{what}: {reckoned}", "the main: 100 A × 240 V = 24000 VA"},
    Row{"load/left", "Left on it"},
    Row{"load/too-much-by", "Too much by"},
    Row{"load/heavier-for-both", "with what the heavier leg carries taken for both"},
    Row{"load/fraction-above", "nothing: only the left-out part of an ampere is above it"},
    Row{"load/largest-circuit", "Largest circuit that still fits"},
    Row{"load/filled", "{breaker} × {percent} % = {drawn}; {drawn} × {volts} = {va} VA"},
    Row{"load/more-than-left", "more than is left"},
    Row{"load/for-hours", "all of it for hours and counted in full; a motor, heat or cooling may count for more"},
    Row{"load/none", "none"},
    Row{"load/two-poles", "{amps}, two poles"},
    Row{"load/on-leg", "{amps} on leg {leg}"},
    Row{"load/verdict-at-once", "All of it at once would be more than {rating} carries: {amps}, {more} too much."},
    Row{"load/verdict-too-much", "Too much for {rating}: {amps}, {more} more than it is good for."},
    Row{"load/verdict-below-least",
        "Within {rating}: {amps}. But a dwelling like this must have {least} or more ({section})."},
    Row{"load/verdict-within", "Within {rating}: {amps}."},
};

} // namespace legwork
