// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What differs between two states of a building, by values: the order of a file's tables, its spelling of a quantity
// and its comments are no difference. Circuits, panels and cables are known again by mark or name, the second of a
// mark that stands twice by being the second.
#pragma once

#include "building/building.h"

#include <string>
#include <string_view>
#include <vector>

namespace legwork {

enum class ChangeKind { added, gone, re_marked, moved, resized, renamed, re_cabled, other };
std::string_view word(ChangeKind kind); // "added", "re-marked", ...

enum class Changed { job, panel, circuit, cable };
std::string_view word(Changed thing);

struct Change {
    ChangeKind kind = ChangeKind::other;
    Changed thing = Changed::circuit;
    std::string mark;          // or name of a panel; as it is now, of what is gone as it was; empty for the job
    std::string what;          // what differs: "space", "breaker"; empty for what was added or is gone
    std::string before, after; // as words, lengths in the units of the new job; empty for what is not said
};

// The job first, then panels, circuits and cables, each in the new file's order with those that are gone behind it.
// Looked at: of the job its name, code, revision, date; of the rest whatever `facts_of` in changes.cpp lists. A circuit
// or cable that is gone is told as re-marked when exactly one new one has all of its values, and no other gone one has.
std::vector<Change> changes(Building const& before, Building const& now);

} // namespace legwork
