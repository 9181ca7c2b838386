// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// The one place where the data flows: bytes -> job as typed -> building -> plan as filed -> findings. Commands only
// show what it holds.
#pragma once

#include "balance/plan.h"
#include "building/building.h"
#include "cli/files/late_fonts.h"
#include "cli/problems.h"
#include "codebook/code_book.h"
#include "job/read.h"
#include "rules/check.h"
#include "sheet/sheets.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// A job file of more bytes is not read.
inline constexpr std::size_t kLargestJob = std::size_t{1024} * 1024;

struct Session {
    std::string file;  // as typed
    std::string bytes; // as read
    Building building;
    Places places;
    CodeBook const* book = nullptr;
    Plan plan;                     // the panels as the file has them, rechecked
    std::optional<double> seconds; // the search for that plan had at most so long
    std::shared_ptr<LateFonts const> fonts;
    Findings findings;             // all, worst first; accepted ones marked
    std::vector<Outcome> outcomes; // of every rule that is checked
    SheetInput sheet_input() const { return {building, plan, findings, *book, *fonts, file}; }
};

struct Opened {
    std::optional<Session> session; // nothing: not understood, `problems` says why
    FileProblems problems;
};

// Reads and judges the job, its names on the default form of the directory. Throws Failure when legwork itself is
// broken: a plan that does not add up, missing fonts.
// `seconds`: a hard stop for the search that judging takes. `fonts`: those at hand, null where they are to be read.
Opened open_job(std::string const& file, std::optional<double> seconds = {});
Opened open_job(std::string const& file, std::string bytes, std::optional<double> seconds,
                std::shared_ptr<Fonts const> fonts = nullptr);

// Judges how the job's words stand on these sheets, instead of on the default directory.
void judge_on(Session& session, std::span<SheetOrder const> sheets);

// Throws Failure when the plan does not hold: nothing of it may then be shown.
void require_sound(Building const& building, Plan const& plan, bool filed);

int error_exit(Session const& session); // 1 while an error finding stands, else 0

} // namespace legwork
