// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which way a breaker's handle points when it is on, as the panel hangs.
#pragma once

#include "job/job.h"

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

} // namespace legwork
