// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

#pragma once

namespace legwork {

// What each of two loads in series sees when their shared neutral opens: V RB / (RA + RB) with R as 1 / VA. The
// lighter load sees the higher voltage. Both loads above 0.
struct OpenNeutral {
    double first, second; // volts
};
OpenNeutral open_neutral(double first_va, double second_va, double volts_between);

} // namespace legwork
