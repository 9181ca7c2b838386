// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// A job file and the verdict on it, as the program comes by it.
#pragma once

#include "job/job.h"
#include "rules/check.h"

#include <optional>
#include <string>

namespace made {

struct JudgedFile {
    int exit = 2; // 0, 1 with an error finding, 2 when it could not be understood
    legwork::Plan plan;
    legwork::Findings findings;
    std::string problems; // of a file that could not be understood
};

std::string bytes_of(std::string const& path); // from the top of the project
JudgedFile judge(std::string const& bytes);
std::optional<legwork::typed::Job> job_of(std::string const& bytes); // nothing when it could not be understood

} // namespace made
