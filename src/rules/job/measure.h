// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person has to go and find out: every "?" of the job file and every figure that is missing.
#pragma once

#include "building/building.h"
#include "rules/check.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Where the person stands, in the order of a walk that begins at the desk, where the sizes of new work are chosen.
enum class Station { desk, panel, run, outlet, appliance, building };
std::string_view name(Station at); // "desk", "panel", "run", "outlet", "appliance", "building"

// What has to be open, and whether it may be live.
enum class PanelCover { closed, off_dead, off_live };
std::string_view name(PanelCover cover); // "closed", "off and dead", "off and live"

// How one figure is found. Common practice, no source.
struct HowToMeasure {
    std::string_view key, what, how;
    std::string_view with;    // the tool
    std::string_view blank;   // what to write into the job file, with room for the figure; {m}: m or ft
    std::string_view decides; // what hangs on it
    std::string_view rules;   // ids, parted by blanks
    Station at;
    PanelCover cover;
};
// Of circuits and cables; of panels; of sources; of the dwelling. In the order of a walk.
std::vector<HowToMeasure> const& how_to_measure(Subject thing);
// The sizes of new work, which nobody can read anywhere: with a proposal, and where none is made (of sources, of direct
// current, of a feeder whose panel is not listed).
std::vector<HowToMeasure> const& how_to_choose(bool proposed);

struct ToMeasure {
    Subject thing = Subject::circuit; // circuit, panel, cable, supply, dwelling or job
    std::string id;                   // its mark or name; empty for dwelling and job
    std::string panel;                // empty where it is in no one panel
    HowToMeasure how{};               // key, how and blank stand for unknown keys too
    std::string key;
    bool noted = true;   // job-unknown tells of it; else another rule does, or only the list
    bool chosen = false; // a size of new work: it is chosen, not read
};

// In the order of the file, each thing's figures in the order of a walk.
std::vector<ToMeasure> to_measure(Case const& c);

} // namespace legwork
