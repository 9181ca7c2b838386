// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What hangs on how the panel is mounted: which way a handle points when it is on, and which spaces lie to the left.
#pragma once

#include "job/job.h"

#include <vector>

namespace legwork {

// Upright, handles move sideways and are on towards the middle of the panel (common practice, no source). A quarter
// turn either way lays the two columns one above the other: the lower one is then on when up, the upper one when down.
//
//        upright             turned left          turned right
//      1 [->|<-] 2           2 4 6   on: down     5 3 1   on: down
//      3 [->|<-] 4          --------             --------
//      5 [->|<-] 6           1 3 5   on: up       6 4 2   on: up
enum class OnIs { sideways, up, down };

// Of a space on the panel.
OnIs on_is(typed::Panel const& panel, int space);

// Indexed by space (0 is not used). `reach = "left"` means the left half of the panel as it hangs: one column of an
// upright or upside-down panel; of a turned one the rows of that end (the middle row of an odd number is in both).
std::vector<bool> reachable(typed::Panel const& panel, typed::Circuit const& c);

// "left", "right" or a list is given, and leaves out some space of the panel.
bool is_reach_limited(typed::Panel const& panel, typed::Circuit const& c);

} // namespace legwork
