// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The wire labels.
#pragma once

#include "words/row.h"

#include <array>

namespace legwork {

inline constexpr std::array kLabelRows{
    Row{"label/title", "Wire labels"},
    Row{"label/panel-end", "Panel end: {name}"},
    Row{"label/panel-end-unnamed", "Panel end"},
    Row{"label/this-end", "This end: {name}"},
    Row{"label/this-end-unnamed", "This end"},
    Row{"label/box-end", "Box end: {name}"},
    Row{"label/box-end-unnamed", "Box end"},
    Row{"label/other-panel", "other end: panel {name}"},
    Row{"label/other-panel-unnamed", "other end: panel"},
    Row{"label/other-end", "other end: {name}"},
    Row{"label/other-end-unnamed", "other end"},
    Row{"label/other-box", "other end: box {name}"},
    Row{"label/other-box-unnamed", "other end: box"},
    Row{"label/tip", "tip", "this label is at the cut end"},
    Row{"label/keep", "keep", "this label is set back on the jacket"},
    Row{"label/fuse", "{amps} fuse"},
    Row{"label/dc", "DC {volts}", "direct current"},
    Row{"label/spaces", "{spaces}, rev {revision}"},
    Row{"label/marker-panel-end", "panel end"},
    Row{"label/marker-box-end", "box end"},
    Row{"label/neutral", "N {mark}", "marker of the neutral of a cable"},
    Row{"label/hot", "hot", "where the colour is not known"},
    Row{"label/none-for", "No label for {marks}: the job file names no cable there."},
    Row{"label/which", "tip: at the cut end. keep: on the jacket, set back where trimming will not take it."},
    Row{"label/care",
        "A planning aid: the local code and the authority having jurisdiction decide. For people licensed or permitted "
        "to do it. Switch off, lock out, prove dead on both legs; the line side may stay live with the main off.",
        "the full caution is longer than a margin"},
    Row{"label/care-dc",
        "A planning aid: the local code and the authority having jurisdiction decide. For people licensed or permitted "
        "to do it. Disconnect battery and supply, prove dead; up to its first fuse a battery is always live."},
    Row{"label/short-care-dc", "A planning aid: local code and authority decide. For people licensed or permitted. "
                               "Disconnect, prove dead; a battery is always live."},
    Row{"label/short-care", "A planning aid: local code and authority decide. For people licensed or permitted. Switch "
                            "off, lock out, prove "
                            "dead on both legs; the line side may stay live."},
};

} // namespace legwork
