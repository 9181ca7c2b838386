// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Reads a job file. Total: any bytes give a Job or problems, never an exception, a crash or a hang.
#pragma once

#include "job/job.h"
#include "job/places.h"
#include "toml/problem.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace legwork {

// Words that the tables of the code book know; handed in, since job/ lies below codebook/.
struct Vocabulary {
    std::vector<std::string> editions, uses, cable_kinds, receptacles; // cable_kinds: the named ones, besides G/N
    // The use that a circuit's name proposes, or empty. Called for circuits that do not say one.
    std::function<std::string(typed::Circuit const&)> guess_use;
    std::vector<std::string> rules{}; // that [[accept]] may name; empty: any
};

struct ReadJob {
    std::optional<typed::Job> job; // only when there is no problem
    Places places;
    std::vector<Problem> problems; // in the order of the file
};

ReadJob read_job(std::string_view bytes, Vocabulary const& words);

} // namespace legwork
