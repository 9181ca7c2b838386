// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The rules as they were agreed on, apart from the code: id, gravity, whether anybody may accept it. E error, W
// warning, N note, E/W an error on new work and a warning on existing, "-" silent; several by what it is about.
#pragma once

#include <string_view>

namespace agreed {

struct RuleId {
    std::string_view id, nec, ce;
    bool may_be_accepted = true;
};

inline constexpr RuleId kRules[] = {
    {"mw-one-panel", "E", "E", false},
    {"mw-same-space", "E", "E", false},
    {"mw-in-phase-supply", "E", "E", false},
    {"mw-opposite-legs", "E", "E", false},
    {"mw-not-adjacent", "E/W", "E/W"},
    {"mw-disconnect", "E/W", "E/W, W, N"}, // by what it feeds
    {"mw-line-to-line", "E", "E", false},
    {"mw-unequal", "W", "W"},
    {"mw-conductors", "E", "E", false},
    {"mw-neutral-current", "E", "E", false},
    {"mw-one-pole-gfci", "E", "E", false},
    {"mw-pigtail", "N", "N"},
    {"mw-grouping", "N", "-"},
    {"mw-open-neutral", "N", "N"},
    {"mw-unpaired", "W", "W"},
    {"mw-keep-on", "W", "W"},
    {"wire-breaker-fits", "E", "E", false},
    {"wire-load-fits", "E", "E"},
    {"wire-continuous", "E, W", "E, W"}, // W: presumed only; NEC from 2020 on, of a heating breaker
    {"wire-breaker-size", "W", "W"},
    {"wire-branch", "E/W, N", "E/W, N"},     // N: elsewhere than in a dwelling, the lampholders
    {"wire-place", "E, N", "W, N"},          // N: depth of burial, a cable to another building
    {"wire-outlet", "E, E/W", "E, E/W"},     // volts and poles (never accepted), amperes
    {"wire-conductors", "E/W, W", "E/W, W"}, // W: known only by use
    {"wire-drop", "N", "W"},
    {"wire-smaller-downstream", "N", "N"},
    {"wire-outlet-count", "-", "W"},
    {"panel-bus", "E/W", "E/W"},
    {"panel-240-on-120", "E, W", "E, W", false}, // W: listed under `off`
    {"panel-208-heat", "W", "W"},
    {"panel-dead-space", "E", "E", false},
    {"panel-two-legs", "E", "E", false},
    {"panel-no-tandem", "E", "E"},
    {"panel-circuits", "E", "E"},
    {"panel-no-room", "E", "E"},
    {"panel-main-overloaded", "W, N", "W, N"}, // in a named situation, with everything on
    {"panel-legs-uneven", "W", "W"},
    {"panel-backfeed", "E", "W"},
    {"panel-neutral-terminals", "E", "E"},
    {"panel-feeder-wires", "E/W", "E/W"},
    {"panel-not-joined", "W", "W"},
    {"panel-sub-neutral", "N", "N"},
    {"panel-spare-spaces", "-", "E/W, W"}, // positions, positions left free
    {"panel-sign", "N", "N"},
    {"panel-hang", "W", "-"},
    {"panel-outbuilding", "E", "W"},
    {"dir-unnamed", "E", "E"},
    {"dir-vague", "W", "W"},
    {"dir-duplicate", "W", "W"},
    {"dir-person", "E/W, W", "W"}, // W: a guess
    {"dir-name-too-long", "W", "W"},
    {"tape-white-as-hot", "N, E", "N, E"},     // cable, conduit
    {"tape-as-neutral", "E, N, W", "E, N, W"}, // never; large ones marked; readings differ
    {"tape-green", "E", "E", false},
    {"gfci-needed", "E/W, N", "E/W, N"}, // N: a relief still runs
    {"afci-needed", "E/W, N", "E/W, N"},
    {"need-kitchen", "W", "W"},
    {"need-laundry", "W", "W"},
    {"need-bath", "W", "W"},
    {"need-garage", "W", "W"},
    {"need-outdoor", "W", "W"},
    {"need-kitchen-share", "W", "W"},
    {"need-dedicated", "W", "W"},
    {"need-neutral-at-switch", "W", "W"},
    {"need-disconnect", "N", "N"},
    {"load-service", "E/W, W, N", "E/W, W, N"}, // N: another building, all of it at once
    {"job-assumed", "N", "N"},
    {"job-unknown", "W, N", "W, N"},
    {"dc-fuse", "E, W", "E, W"}, // W: by practice, not by the wire's row
    {"dc-drop", "W", "W"},
    {"dc-source", "W", "W"},
    {"tape-dc", "W", "W"},
    // Not in the first list: letters that no typeface has, acceptances that cover nothing, keys that do nothing yet.
    {"dir-no-letter", "W", "W"},
    {"job-accept-unused", "W", "W", false},
    {"job-no-effect", "N", "N"},
};

// Explained, not checked: with the rough-in sheets.
inline constexpr std::string_view kLater[] = {"box-full", "box-mixed", "run-hole", "run-support", "run-bundle"};

} // namespace agreed
