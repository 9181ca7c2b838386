// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Sheets of earlier prints that still lie in the folder: whoever finds them on the wall must not take them for today's.
#pragma once

#include "building/building.h"

#include <set>
#include <string>
#include <vector>

namespace legwork {

// What every sheet of a job carries inside, so that it is known again: made of the job's name or, when it has none, of
// its file's. Empty for a job without either. Two files that give their job one name are one job.
std::string job_mark(Building const& building, std::string const& file);

struct OldSheets {
    std::vector<std::string> beyond;  // pages of an earlier, longer print that now belong to nothing
    std::vector<std::string> gone;    // sheets of this job that this print would have written anew if they still were
    std::vector<std::string> unknown; // what could not be looked at: path and the system's reason
};

// Pages beyond the `pages` that were printed, though their names follow on ("directory-Main-3.svg") and are not those
// of another sheet that was `written` (file names).
void find_pages_beyond(std::string const& folder, std::string const& stem, std::string const& format, int pages,
                       std::set<std::string> const& written, OldSheets& found);

// Files in the folder that carry the mark and are named like one of these sheets in one of these formats, but are not
// `written` (file names) and not found yet. All sheets of that kind and format were printed anew, so their panel is
// gone or has another name, or nothing stands on that sheet any more. Of other jobs, of sheets and formats that were
// not asked for, and of a print before sheets carried a mark nothing can be known, so nothing is said. In alphabetical
// order.
void find_gone(std::string const& folder, std::string const& mark, std::set<std::string> const& sheets,
               std::set<std::string> const& formats, std::set<std::string> const& written, OldSheets& found);

} // namespace legwork
