// SPDX-FileCopyrightText: legwork contributors
// SPDX-License-Identifier: MIT

// What a person wrote a panel is fed from, where the panel above is not in the job.
#pragma once

#include <string_view>

namespace legwork {

// English, French or Spanish; common usage, no source. Any bytes.
enum class Above {
    panel,   // a panel, breaker, feeder or disconnect ("House panel, spaces 18 and 20"), or a building ("House")
    service, // a meter, or nothing that tells ("Meter, north wall")
    unclear, // both ("Meter, breaker 100 A"): its breaker may be ahead of this panel, or this panel's own main
};
Above named_above(std::string_view fed_from);

} // namespace legwork
