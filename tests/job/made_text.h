// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Job files made in a few lines, and what the reader says of them in short.
#pragma once

#include "job/job.h"
#include "job/read.h"

#include <string>
#include <string_view>
#include <vector>

namespace made {

using namespace legwork;

// A small code book: three editions, a dozen uses, a named cable, some receptacle types. Guesses no use.
Vocabulary const& words();

// [job] with a code, the panel "Main" of 24 spaces in lines 3 to 6; `rest` begins in line 7.
std::string job_with(std::string_view rest);

// "7:1 circuit K1: there is no key "lenght" | did you mean "length"?", one a problem.
std::vector<std::string> complaints(std::string_view bytes);
// The job, which must have been read.
typed::Job good(std::string_view bytes);

std::string file(std::string const& path); // of the source folder

} // namespace made
