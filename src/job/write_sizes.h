// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Which keys of a job file a circuit's breaker and cables are written to.
#pragma once

#include "job/write.h"
#include "units/quantity.h"

namespace legwork {

// What is to be written of one circuit. Of a pair both members have their shared cable here.
struct SizesToWrite {
    std::string mark;
    std::optional<Amps> breaker;
    std::vector<std::string> cables; // by piece of its run; empty text: left alone
};

// `fuse` where that is what the circuit has, else `breaker`; `segments` where it has them, else `cable`. The cable of a
// pair goes where one of them says something of it already, else beside the length, else to the first. `bytes` must be
// a job that read_job accepts.
std::vector<Edit> edits_for(std::string_view bytes, std::vector<SizesToWrite> const& sizes);

} // namespace legwork
