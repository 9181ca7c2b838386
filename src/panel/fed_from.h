// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person wrote a panel is fed from, where the panel above is not in the job.
#pragma once

#include <string_view>

namespace legwork {

// True when the words name a panel, breaker, feeder or disconnect ("House panel, spaces 18 and 20"), or a building and
// no meter ("House"), in English, French or Spanish: what they feed is then no service. "Meter, north wall" names none.
// Common usage, no source. Any bytes.
bool names_a_panel_above(std::string_view fed_from);

} // namespace legwork
