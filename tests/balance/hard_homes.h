// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// Jobs that no search finishes in the time a person waits: what a stop is tried on, here and in tests/bench.
#pragma once

#include "job/job.h"

namespace legwork::oracle {

// So many panels of 84 spaces, each with 76 one-pole circuits in eight patterns of use, all alike but for the marks.
typed::Job hard_homes(int panels);

// A panel of 84 spaces on which two thirds of the wires reach few spaces, so that hardly any choice of legs has a
// layout.
typed::Job short_wires();

// As many circuits on as many panels as a job may have, half of the wires short, a fifth of the
// circuits new.
typed::Job full_job();

} // namespace legwork::oracle
